package reseat.console.prompt;

import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.List;

/** What can be called on a type. */
final class Members {

    private Members() {}

    /** Returns the names of its methods, sorted; none if there is no such type. */
    static List<String> of(String type) {
        try {
            return Arrays.stream(Class.forName(type).getMethods())
                    .map(Method::getName)
                    .distinct()
                    .sorted()
                    .toList();
        } catch (ClassNotFoundException | LinkageError e) {
            return List.of();
        }
    }
}
