package reseat.spi;

import java.util.List;
import java.util.Map;
import reseat.model.Device;
import reseat.plan.Plans;

/** A published method of rating how well a device can be taken apart. */
public interface Assessment {

    /** Returns the id by which users select it; lower case with hyphens. */
    String id();

    /** Returns a short description. */
    String title();

    /** Returns where the method was published. */
    String source();

    /**
     * Returns the statements that the method needs besides the device, for help texts and messages;
     * empty if the device is enough.
     */
    default List<Statement> statements() {
        return List.of();
    }

    /**
     * Assesses a device. The same device, statements and plans give the same result.
     *
     * @param stated what the method was told, by name
     * @param plans makes the plans that the method asks for
     * @throws IllegalArgumentException if a statement is missing or wrong; the message says which
     *     and what is right
     */
    Result assess(Device device, Map<String, String> stated, Plans plans);

    /**
     * A statement that a method needs.
     *
     * @param name its name, such as {@code updates-years}; {@code NAME} in it stands for any name
     * @param says description, as a sentence
     * @param required whether the method requires it
     */
    record Statement(String name, String says, boolean required) {}

    /**
     * The result of an assessment.
     *
     * @param criteria the criteria, in order
     * @param remarks remarks on the whole result, one sentence each
     */
    record Result(List<Criterion> criteria, List<String> remarks) {

        public Result {
            criteria = List.copyOf(criteria);
            remarks = List.copyOf(remarks);
        }
    }

    /**
     * One criterion.
     *
     * @param id lower case with hyphens
     * @param title title of the criterion
     * @param value the result, with its unit ("4 steps", "3 points of 5")
     * @param evidence the facts that support it, one each
     * @param source the place in the method that defines it
     */
    record Criterion(String id, String title, String value, List<String> evidence, String source) {

        public Criterion {
            evidence = List.copyOf(evidence);
        }
    }
}
