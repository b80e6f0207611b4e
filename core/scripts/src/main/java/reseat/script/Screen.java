package reseat.script;

import org.jspecify.annotations.Nullable;

/** Where a bench shows values. Called from the thread that runs the script. */
public interface Screen {

    /** Shows nothing. */
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
     * Shows a side note, such as a warning about a file.
     *
     * @param line one line
     */
    void note(String line);

    /**
     * Shows help on a name, a type or the type of a value.
     *
     * @param thing a name such as {@code plan} or {@code Device.parts}, or any other thing
     */
    void explain(@Nullable Object thing);
}
