package reseat.spi;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Objects;
import reseat.plan.Plan;
import reseat.sheet.Sheet;

/** A way to write a plan: a sheet, drawings, or an export for another program. */
public interface Output {

    /** Returns the id by which users select it; lower case with hyphens. */
    String id();

    /** Returns a short description. */
    String title();

    /** Returns the media type of its files, such as {@code text/html}. */
    String mediaType();

    /** Returns whether it writes one file or several; one by default. */
    default Files files() {
        return Files.ONE;
    }

    /**
     * Returns the name that its one file gets in a folder, such as {@code sheet.html}. Not called
     * for an output of several files.
     */
    default String fileName() {
        return id();
    }

    /**
     * Writes a plan. The same content gives the same files, byte for byte.
     *
     * @param content the sheet and the plan
     * @param place takes the files
     * @throws IOException if the place fails; an output propagates what the place throws
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
     * The content to write.
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
     * The destination of an output's files. Written data may be buffered until the output has
     * returned, so that a file appears complete or not at all.
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
         * @throws IllegalArgumentException if the name is not of this form, is reserved on some
         *     system, or was opened before, ignoring case
         * @throws IllegalStateException if the output writes one file
         */
        OutputStream file(String name) throws IOException;
    }
}
