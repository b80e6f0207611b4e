package reseat.spi;

import java.util.List;
import java.util.Map;
import reseat.model.Device;
import reseat.plan.Plans;

/** A published method that says how well a device can be taken apart. */
public interface Assessment {

    /** Returns the id that people choose it by; lower case with hyphens. */
    String id();

    /** Returns what it is, in a few words. */
    String title();

    /** Returns where the method was published. */
    String source();

    /**
     * Returns what the method must be told besides the device, for help texts and for messages;
     * empty where the device says it all.
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
     * Something that a method must be told.
     *
     * @param name its name, such as {@code updates-years}; {@code NAME} in it stands for any name
     * @param says what it means, as a sentence
     * @param required whether the method can do nothing without it
     */
    record Statement(String name, String says, boolean required) {}

    /**
     * What came out.
     *
     * @param criteria what was looked at, in order
     * @param remarks what the reader must know about the whole, one sentence each
     */
    record Result(List<Criterion> criteria, List<String> remarks) {

        public Result {
            criteria = List.copyOf(criteria);
            remarks = List.copyOf(remarks);
        }
    }

    /**
     * One thing that was looked at.
     *
     * @param id lower case with hyphens
     * @param title what was looked at
     * @param value what came out, with its unit ("4 steps", "3 points of 5")
     * @param evidence the facts that it rests on, one each
     * @param source where in the method it stands
     */
    record Criterion(String id, String title, String value, List<String> evidence, String source) {

        public Criterion {
            evidence = List.copyOf(evidence);
        }
    }
}
