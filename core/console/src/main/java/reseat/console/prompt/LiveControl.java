package reseat.console.prompt;

import java.util.HashMap;
import java.util.Map;
import jdk.jshell.execution.LoaderDelegate;
import jdk.jshell.execution.LocalExecutionControl;
import jdk.jshell.spi.ExecutionControl;
import jdk.jshell.spi.ExecutionControl.ClassBytecodes;
import jdk.jshell.spi.ExecutionControlProvider;
import jdk.jshell.spi.ExecutionEnv;
import org.jspecify.annotations.Nullable;

/** Runs Java snippets in this process, so that their values are our own live objects. */
final class LiveControl implements ExecutionControlProvider {

    private final Loader loader;
    private volatile @Nullable Throwable thrown;

    LiveControl(ClassLoader parent) {
        loader = new Loader(parent);
    }

    @Override
    public String name() {
        return "reseat";
    }

    @Override
    public ExecutionControl generate(ExecutionEnv env, Map<String, String> parameters) {
        return new LocalExecutionControl(loader) {
            @Override
            protected String throwConvertedInvocationException(Throwable cause)
                    throws ExecutionControl.RunException, ExecutionControl.InternalException {
                thrown = cause;
                return super.throwConvertedInvocationException(cause);
            }
        };
    }

    /** Returns the class of a snippet. */
    Class<?> classNamed(String name) throws ClassNotFoundException {
        return loader.findClass(name);
    }

    /**
     * Returns the exception of the last snippet, the original instead of a copy, and forgets it.
     */
    @Nullable Throwable takeThrown() {
        Throwable last = thrown;
        thrown = null;
        return last;
    }

    private static final class Loader implements LoaderDelegate {

        private final Memory memory;
        private final Map<String, Class<?>> classes = new HashMap<>();

        Loader(ClassLoader parent) {
            memory = new Memory(parent);
        }

        @Override
        public void load(ClassBytecodes[] codes) throws ExecutionControl.ClassInstallException {
            boolean[] loaded = new boolean[codes.length];
            for (ClassBytecodes code : codes) {
                memory.declare(code);
            }
            for (int i = 0; i < codes.length; i++) {
                try {
                    Class<?> type = memory.loadClass(codes[i].name());
                    classes.put(codes[i].name(), type);
                    loaded[i] = true;
                } catch (ClassNotFoundException | LinkageError e) {
                    throw new ExecutionControl.ClassInstallException("load: " + e, loaded);
                }
            }
        }

        @Override
        public void classesRedefined(ClassBytecodes[] codes) {
            for (ClassBytecodes code : codes) {
                memory.declare(code);
            }
        }

        @Override
        public void addToClasspath(String path) throws ExecutionControl.InternalException {
            throw new ExecutionControl.InternalException("a class path is not supported");
        }

        @Override
        public Class<?> findClass(String name) throws ClassNotFoundException {
            Class<?> type = classes.get(name);
            if (type == null) {
                throw new ClassNotFoundException(name + " not found");
            }
            return type;
        }
    }

    /** Defines classes from bytes; everything else comes from our own modules. */
    private static final class Memory extends ClassLoader {

        private final Map<String, byte[]> codes = new HashMap<>();

        Memory(ClassLoader parent) {
            super(parent);
        }

        synchronized void declare(ClassBytecodes code) {
            codes.put(code.name(), code.bytecodes());
        }

        @Override
        protected synchronized Class<?> findClass(String name) throws ClassNotFoundException {
            byte[] code = codes.get(name);
            if (code == null) {
                throw new ClassNotFoundException(name);
            }
            return defineClass(name, code, 0, code.length);
        }
    }
}
