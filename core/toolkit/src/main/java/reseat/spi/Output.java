package reseat.spi;

import java.io.IOException;
import java.io.OutputStream;
import reseat.plan.Plan;

/** A way to write a plan: a sheet, or an export for another program. */
public interface Output {

    /** Returns the id that people choose it by; lower case with hyphens. */
    String id();

    /** Returns what it is, in a few words. */
    String title();

    /** Returns the media type of what it writes, such as {@code text/html}. */
    String mediaType();

    /**
     * Writes a plan. The same plan gives the same bytes.
     *
     * @param plan the plan, which has passed the simulator
     * @param to takes the bytes; the caller closes it
     * @throws IOException if {@code to} takes no more
     */
    void write(Plan plan, OutputStream to) throws IOException;
}
