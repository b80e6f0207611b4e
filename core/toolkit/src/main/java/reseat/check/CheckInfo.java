package reseat.check;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import reseat.model.Severity;

/**
 * The description of a check.
 *
 * @param id id in lower case with hyphens
 * @param title what it looks for, in a few words
 * @param finds what it finds, as a sentence
 * @param matters why that matters, as a sentence
 * @param severity the severity of its findings unless a finding sets its own
 * @param tags words by which checks can be selected
 * @param parameters what can be set
 * @param needs what it requires besides a device; it is skipped where that is missing
 * @param api the version of the check interface that it was written for
 */
public record CheckInfo(
        String id,
        String title,
        String finds,
        String matters,
        Severity severity,
        List<String> tags,
        List<Parameter> parameters,
        Set<Need> needs,
        int api) {

    /** The version of the check interface. */
    public static final int API = 1;

    private static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

    public CheckInfo {
        tags = List.copyOf(tags);
        parameters = List.copyOf(parameters);
        needs = Collections.unmodifiableSet(new TreeSet<>(needs));
        if (!ID.matcher(id).matches() || id.length() > 64) {
            throw new IllegalArgumentException(
                    "a check id must be lower case with hyphens, at most 64 characters: " + id);
        }
        if (title.isBlank() || finds.isBlank() || matters.isBlank()) {
            throw new IllegalArgumentException(
                    id
                            + ": a check must have a title and state what it finds and"
                            + " why that matters");
        }
        if (parameters.stream().map(Parameter::name).distinct().count() < parameters.size()) {
            throw new IllegalArgumentException(id + " has two parameters with the same name");
        }
        if (api < 1 || api > API) {
            throw new IllegalArgumentException(
                    id
                            + " is written for version "
                            + api
                            + " of the check interface; this is version "
                            + API);
        }
    }

    /**
     * Describes a check that needs only a device, for the current version of the check interface.
     */
    public CheckInfo(
            String id,
            String title,
            String finds,
            String matters,
            Severity severity,
            List<String> tags,
            List<Parameter> parameters) {
        this(id, title, finds, matters, severity, tags, parameters, Set.of(), API);
    }

    /**
     * Returns a parameter.
     *
     * @throws IllegalArgumentException if no parameter has this name
     */
    public Parameter parameter(String name) {
        return parameters.stream()
                .filter(p -> p.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(id + " has no parameter " + name));
    }

    /** What a check may need besides a device. */
    public enum Need {
        /** A plan. */
        PLAN,
        /** What the shop has in stock. */
        STOCK,
        /** The drives that the shop has drivers for. */
        DRIVES,
        /** A job. */
        JOB,
        /** The day on which expiry is judged. */
        TODAY
    }

    /**
     * A setting.
     *
     * @param name its name
     * @param says description
     * @param unit the unit of a number ("mm", "%", "1" for a bare number); empty for text
     * @param usual default value
     */
    public record Parameter(String name, String says, String unit, String usual) {

        public Parameter {
            if (!unit.isEmpty()) {
                parse(name, usual);
            }
        }

        /**
         * Returns a value as a number in the unit of the parameter.
         *
         * @throws IllegalArgumentException if it is not a number, or the parameter is text
         */
        public double number(String value) {
            if (unit.isEmpty()) {
                throw new IllegalArgumentException(name + " is text, not a number");
            }
            return parse(name, value);
        }

        private static double parse(String name, String value) {
            try {
                double number = Double.parseDouble(value.strip());
                if (Double.isFinite(number)) {
                    return number;
                }
            } catch (NumberFormatException e) {
                // reported below
            }
            throw new IllegalArgumentException(name + " must be a number, not \"" + value + "\"");
        }
    }
}
