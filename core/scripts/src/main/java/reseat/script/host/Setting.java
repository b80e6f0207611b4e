package reseat.script.host;

import reseat.check.CheckInput;

/**
 * A parameter of a check with its value.
 *
 * @param check id of the check
 * @param name name of the parameter
 * @param value its value
 */
public record Setting(String check, String name, String value) {

    /**
     * Reads CHECK.NAME=VALUE.
     *
     * @throws IllegalArgumentException if the format is invalid; the message says what was expected
     */
    public static Setting of(String text) {
        int sign = text.indexOf('=');
        if (sign < 0) {
            throw unlike(text);
        }
        return of(text.substring(0, sign), text.substring(sign + 1));
    }

    /**
     * Reads the value of CHECK.NAME.
     *
     * @throws IllegalArgumentException if the format of the key is invalid
     */
    static Setting of(String key, String value) {
        int dot = key.indexOf('.');
        if (dot < 1 || dot == key.length() - 1) {
            throw unlike(key + "=" + value);
        }
        return new Setting(key.substring(0, dot), key.substring(dot + 1), value);
    }

    private static IllegalArgumentException unlike(String text) {
        return new IllegalArgumentException(
                "found \""
                        + text
                        + "\", expected CHECK.NAME=VALUE, such as"
                        + " protrusion-into-hazard.nearMm=0.3");
    }

    /** Returns an input in which it is set. */
    public CheckInput on(CheckInput input) {
        return input.set(check, name, value);
    }
}
