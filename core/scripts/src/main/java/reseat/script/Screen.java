package reseat.script;

import org.jspecify.annotations.Nullable;

/** Where a bench shows things. Called from the thread that runs the script. */
public interface Screen {

    /** Shows nothing to nobody. */
    Screen NONE =
            new Screen() {
                @Override
                public void show(@Nullable Object thing) {}

                @Override
                public void note(String line) {}

                @Override
                public void explain(@Nullable Object thing) {}
            };

    /** Shows a thing as a table, a tree or a text. */
    void show(@Nullable Object thing);

    /**
     * Says something aside, such as a warning about a file.
     *
     * @param line one line
     */
    void note(String line);

    /**
     * Shows what is known of a name, a type or the type of a thing.
     *
     * @param thing a name such as {@code plan} or {@code Device.parts}, or any other thing
     */
    void explain(@Nullable Object thing);
}
