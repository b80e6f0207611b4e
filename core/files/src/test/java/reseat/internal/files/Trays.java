package reseat.internal.files;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import reseat.model.Problem;

/** What the tests of trees share. */
final class Trays {

    private Trays() {}

    /** Parses a text that must be sound. */
    static Node tree(String text) {
        Problems problems = new Problems("f");
        Node node = Trees.parse("f", text.getBytes(StandardCharsets.UTF_8), problems).orElse(null);
        if (node == null || problems.hasErrors()) {
            throw new AssertionError(problems.sorted().toString());
        }
        return node;
    }

    /** Returns the problems of a text, a line each. */
    static String problems(byte[] content) {
        Problems problems = new Problems("f");
        Trees.parse("f", content, problems);
        List<Problem> all = problems.sorted();
        return all.stream().map(Problem::toString).collect(Collectors.joining("\n"));
    }

    static String problems(String text) {
        return problems(text.getBytes(StandardCharsets.UTF_8));
    }

    /** Writes a tree as short JSON, places left out. */
    static String json(@Nullable Node node) {
        if (node instanceof Node.Fields fields) {
            return fields.entries().entrySet().stream()
                    .map(each -> '"' + each.getKey() + "\":" + json(each.getValue().value()))
                    .collect(Collectors.joining(",", "{", "}"));
        }
        if (node instanceof Node.Items items) {
            return items.items().stream()
                    .map(Trays::json)
                    .collect(Collectors.joining(",", "[", "]"));
        }
        if (node instanceof Node.Scalar scalar) {
            return switch (scalar.kind()) {
                case TEXT -> '"' + scalar.text() + '"';
                case NULL -> "null";
                case NUMBER, BOOL -> scalar.text();
            };
        }
        throw new AssertionError("no node");
    }
}
