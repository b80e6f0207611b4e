package reseat.console.house;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The main classes of every module that lies in core or plugins, as the build left them. */
final class BuiltClasses {

    private static final Path TOP = Path.of("").toAbsolutePath().resolve("../..").normalize();

    private BuiltClasses() {}

    static JavaClasses all() {
        return new ClassFileImporter().importPaths(folders());
    }

    static boolean isOfPlugin(JavaClass type) {
        return type.getSource()
                .map(source -> source.getUri().getPath())
                .filter(path -> path.startsWith(TOP.resolve("plugins").toUri().getPath()))
                .isPresent();
    }

    static List<Path> folders() {
        List<Path> folders = new ArrayList<>();
        for (String part : List.of("core", "plugins")) {
            try (Stream<Path> poms =
                    Files.find(TOP.resolve(part), 3, (p, a) -> p.endsWith("pom.xml"))) {
                poms.map(pom -> pom.resolveSibling("target/classes"))
                        .filter(Files::isDirectory)
                        .sorted()
                        .forEach(folders::add);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return folders;
    }
}
