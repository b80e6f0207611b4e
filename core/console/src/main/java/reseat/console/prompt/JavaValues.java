package reseat.console.prompt;

import java.lang.reflect.Field;
import java.util.Optional;
import jdk.jshell.JShell;
import jdk.jshell.VarSnippet;
import org.jspecify.annotations.Nullable;

/**
 * The live values of Java variables: each is a static field of the class that its snippet became.
 */
final class JavaValues {

    private final JShell shell;
    private final LiveControl control;

    JavaValues(JShell shell, LiveControl control) {
        this.shell = shell;
        this.control = control;
    }

    /** Returns the value of a variable; null if there is none. */
    @Nullable Object get(String name) {
        return variable(name).map(this::read).orElse(null);
    }

    private @Nullable Object read(VarSnippet variable) {
        try {
            return field(variable).get(null);
        } catch (ReflectiveOperationException | LinkageError e) {
            return null;
        }
    }

    /** Sets the value of a declared variable. */
    void put(String name, Object value) {
        try {
            field(variable(name).orElseThrow()).set(null, value);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot hand over " + name, e);
        }
    }

    private Optional<VarSnippet> variable(String name) {
        return shell.variables().filter(each -> each.name().equals(name)).findFirst();
    }

    /** The class is not accessible; the field is. */
    private Field field(VarSnippet variable) throws ReflectiveOperationException {
        Field field =
                control.classNamed(shell.sourceCodeAnalysis().wrapper(variable).fullClassName())
                        .getField(variable.name());
        field.setAccessible(true);
        return field;
    }
}
