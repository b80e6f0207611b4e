package reseat.script.host;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import reseat.check.Finding;
import reseat.files.ScriptFile;
import reseat.model.Device;
import reseat.model.Severity;

/**
 * Validates the result of a script: its own findings, about facts of the device, with texts of
 * reasonable length that are safe for a terminal.
 */
final class Validation {

    private static final int SHORT = 200;

    private static final int LONG = 2000;

    private static final int FACTS = 50;

    private final ScriptFile script;
    private final Device device;
    private final int most;

    Validation(ScriptFile script, Device device, int most) {
        this.script = script;
        this.device = device;
        this.most = most;
    }

    /** Thrown for an invalid result; the message is a sentence for the user. */
    static final class Unsound extends Exception {
        private static final long serialVersionUID = 1L;

        Unsound(String message) {
            super(message);
        }
    }

    /** Returns the findings, located in our own device. */
    List<Finding> findings(List<Reply.Raw> found) throws Unsound {
        if (found.size() > most) {
            throw new Unsound("it returned " + found.size() + " findings; the limit is " + most);
        }
        List<Finding> sound = new ArrayList<>();
        for (Reply.Raw raw : found) {
            sound.add(finding(raw));
        }
        return sound;
    }

    private Finding finding(Reply.Raw raw) throws Unsound {
        if (!raw.check().equals(script.info().id())) {
            throw new Unsound("it returned a finding of another check");
        }
        Severity severity =
                Arrays.stream(Severity.values())
                        .filter(each -> each.name().equals(raw.severity()))
                        .findFirst()
                        .orElseThrow(() -> new Unsound("it returned an invalid severity"));
        if (!has(device, raw.subject())) {
            throw new Unsound(
                    "it returned a finding about "
                            + JsTrouble.shown(raw.subject())
                            + ", which the device does not have");
        }
        text("title", raw.title(), SHORT);
        text("message", raw.message(), LONG);
        text("remedy", raw.remedy(), LONG);
        if (raw.evidence().size() > FACTS) {
            throw new Unsound("it returned a finding with more than " + FACTS + " facts");
        }
        for (String fact : raw.evidence()) {
            text("fact", fact, SHORT * 2);
        }
        return new Finding(
                script.info().id(),
                severity,
                device.origin(raw.subject()),
                raw.subject(),
                raw.title(),
                raw.message(),
                raw.evidence(),
                raw.remedy());
    }

    private static void text(String what, String text, int most) throws Unsound {
        if (text.isBlank()) {
            throw new Unsound("it returned a finding with an empty " + what);
        }
        if (text.length() > most) {
            throw new Unsound(
                    "it returned a "
                            + what
                            + " of "
                            + text.length()
                            + " characters; at most "
                            + most
                            + " count");
        }
        if (text.codePoints().anyMatch(Validation::isControl)) {
            throw new Unsound("it returned a " + what + " with control characters");
        }
    }

    private static boolean isControl(int c) {
        int type = Character.getType(c);
        return Character.isISOControl(c)
                || type == Character.FORMAT
                || type == Character.LINE_SEPARATOR
                || type == Character.PARAGRAPH_SEPARATOR;
    }

    /** Returns whether a JSON Pointer leads to a fact of a device, or into one. */
    static boolean has(Device device, String pointer) {
        if (device.origins().containsKey(pointer)) {
            return true;
        }
        String[] steps = pointer.split("/", -1);
        if (steps.length < 3 || !steps[0].isEmpty()) {
            return false;
        }
        Map<String, Set<String>> known =
                Map.of(
                        "parts", device.parts().keySet(),
                        "joints", device.joints().keySet(),
                        "supplies", device.supplies().keySet(),
                        "tools", device.tools().keySet(),
                        "screwTypes", device.screwTypes().keySet(),
                        "consumables", device.consumables().keySet(),
                        "hazards", device.hazards().keySet(),
                        "prepare", device.prepares().keySet(),
                        "tests", device.tests().keySet());
        Set<String> ids = known.get(steps[1]);
        return ids != null && ids.contains(steps[2]);
    }
}
