package reseat.script.host;

import java.lang.reflect.Method;
import java.util.HashMap;
import java.util.Map;
import jdk.jshell.execution.DirectExecutionControl;
import jdk.jshell.execution.LoaderDelegate;
import jdk.jshell.spi.ExecutionControl.ClassBytecodes;
import jdk.jshell.spi.ExecutionControl.ClassInstallException;
import jdk.jshell.spi.ExecutionControl.NotImplementedException;
import jdk.jshell.spi.ExecutionControlProvider;
import jdk.jshell.spi.ExecutionEnv;
import reseat.check.CheckInput;

/**
 * Holds the classes that a shell compiles from snippets, so that their methods can be called with
 * our objects.
 */
final class SnippetClasses implements LoaderDelegate {

    private final Loader loader = new Loader();
    private final Map<String, Class<?>> loaded = new HashMap<>();

    private static final class Loader extends ClassLoader {

        private final Map<String, byte[]> bytes = new HashMap<>();

        Loader() {
            super(CheckInput.class.getClassLoader());
        }

        @Override
        protected Class<?> findClass(String name) throws ClassNotFoundException {
            byte[] code = bytes.get(name);
            if (code == null) {
                throw new ClassNotFoundException(name);
            }
            return defineClass(name, code, 0, code.length);
        }
    }

    /** Returns the execution control of the shell. */
    ExecutionControlProvider control() {
        LoaderDelegate own = this;
        return new ExecutionControlProvider() {
            @Override
            public String name() {
                return "script";
            }

            @Override
            public DirectExecutionControl generate(
                    ExecutionEnv env, Map<String, String> parameters) {
                // not the local one, which instruments the code to stop it: here the
                // process is killed
                return new DirectExecutionControl(own);
            }
        };
    }

    /** Returns a method that takes the input of a check. */
    Method method(String type, String name) throws ReflectiveOperationException {
        Method method = findClass(type).getDeclaredMethod(name, CheckInput.class);
        method.setAccessible(true);
        return method;
    }

    @Override
    public void load(ClassBytecodes[] classes) throws ClassInstallException {
        boolean[] done = new boolean[classes.length];
        try {
            for (ClassBytecodes each : classes) {
                loader.bytes.put(each.name(), each.bytecodes());
            }
            for (int i = 0; i < classes.length; i++) {
                loaded.put(classes[i].name(), loader.loadClass(classes[i].name()));
                done[i] = true;
            }
        } catch (ClassNotFoundException | LinkageError e) {
            throw new ClassInstallException(String.valueOf(e), done);
        }
    }

    @Override
    public void classesRedefined(ClassBytecodes[] classes) {
        for (ClassBytecodes each : classes) {
            loader.bytes.put(each.name(), each.bytecodes());
        }
    }

    @Override
    public void addToClasspath(String path) throws NotImplementedException {
        throw new NotImplementedException("the class path is fixed");
    }

    @Override
    public Class<?> findClass(String name) throws ClassNotFoundException {
        Class<?> known = loaded.get(name);
        if (known == null) {
            throw new ClassNotFoundException(name);
        }
        return known;
    }
}
