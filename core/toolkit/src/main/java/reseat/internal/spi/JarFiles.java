package reseat.internal.spi;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.util.Collections;
import org.jspecify.annotations.Nullable;

/** Finds files in the jar of a class. */
public final class JarFiles {

    private JarFiles() {}

    /**
     * Opens a file in the jar of a class.
     *
     * @param name its name in the jar, in a folder whose name cannot be that of a package: a module
     *     keeps the files in its packages to itself
     * @return the file; null if there is none
     */
    public static @Nullable InputStream open(Class<?> type, String name) throws IOException {
        Module module = type.getModule();
        if (module.isNamed()) {
            return module.getResourceAsStream(name);
        }
        // on a class path several jars may have the file: take the one beside the class
        String at = String.valueOf(type.getProtectionDomain().getCodeSource().getLocation());
        for (URL url : Collections.list(type.getClassLoader().getResources(name))) {
            if (url.toString().contains(at)) {
                return url.openStream();
            }
        }
        return null;
    }
}
