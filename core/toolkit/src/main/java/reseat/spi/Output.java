package reseat.spi;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Objects;
import reseat.plan.Plan;
import reseat.sheet.Sheet;

/** A way to write a plan: a sheet, drawings, or an export for another program. */
public interface Output {

    /** Returns the id that people choose it by; lower case with hyphens. */
    String id();

    /** Returns what it is, in a few words. */
    String title();

    /** Returns the media type of its files, such as {@code text/html}. */
    String mediaType();

    /** Returns whether it writes one file or several; one, unless it says otherwise. */
    default Files files() {
        return Files.ONE;
    }

    /**
     * Returns the name that its one file gets in a folder, such as {@code sheet.html}. An output of
     * several files is not asked.
     */
    default String fileName() {
        return id();
    }

    /**
     * Writes a plan. The same content gives the same files, byte for byte.
     *
     * @param content the sheet and the plan
     * @param place takes the files
     * @throws IOException if the place fails; an output passes on what the place throws
     */
    void write(Content content, Place place) throws IOException;

    /** How many files an output writes. */
    enum Files {
        /** Exactly one, by {@link Place#single()}. */
        ONE,
        /** One or more, each by {@link Place#file}. */
        SEVERAL
    }

    /**
     * What is written.
     *
     * @param sheet the whole sheet of the plan: everything that people read, already computed
     * @param plan the plan, which has passed the simulator
     */
    record Content(Sheet sheet, Plan plan) {

        public Content {
            Objects.requireNonNull(sheet, "sheet");
            Objects.requireNonNull(plan, "plan");
        }

        /** Returns a plan with its whole sheet. */
        public static Content of(Plan plan) {
            return new Content(Sheet.of(plan), plan);
        }
    }

    /**
     * Where the files of an output go. What is written may be held back until the output has
     * returned, so that a file appears whole or not at all.
     */
    interface Place {

        /**
         * Opens the one file of an output that writes one. The output closes it.
         *
         * @throws IOException if it cannot be opened
         * @throws IllegalStateException if the output writes several, or has opened it before
         */
        OutputStream single() throws IOException;

        /**
         * Opens one of several files. The output closes it.
         *
         * @param name a plain file name: letters, digits, hyphens, underscores and dots, at most
         *     100, beginning with a letter or digit, without two dots in a row or a dot at the end
         * @throws IOException if it cannot be opened
         * @throws IllegalArgumentException if the name is not such a name, is reserved on some
         *     system, or was opened before; upper and lower case do not make a difference
         * @throws IllegalStateException if the output writes one file
         */
        OutputStream file(String name) throws IOException;
    }
}
