package reseat.internal.files;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import reseat.model.Origin;

/** Feeds a {@link TreeBuilder} from JSON. */
final class JsonEvents {

    // the builder has its own limits with its own messages; these only have to be wider
    private static final JsonFactory FACTORY =
            JsonFactory.builder()
                    .streamReadConstraints(
                            StreamReadConstraints.builder()
                                    .maxNestingDepth(2 * TreeBuilder.DEPTH)
                                    .maxStringLength(Sources.MAX_BYTES)
                                    .maxNameLength(Sources.MAX_BYTES)
                                    .maxNumberLength(1000)
                                    .build())
                    .disable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION)
                    .build();

    private JsonEvents() {}

    static void feed(String name, String text, TreeBuilder builder) throws TreeException {
        try (JsonParser parser = FACTORY.createParser(text)) {
            int depth = 0;
            boolean done = false;
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                Origin at = place(name, parser.currentTokenLocation());
                if (done) {
                    throw new TreeException(
                            at, "unexpected text after the outermost closing brace");
                }
                switch (token) {
                    case START_OBJECT, START_ARRAY -> {
                        builder.begin(at, token == JsonToken.START_OBJECT);
                        depth++;
                    }
                    case END_OBJECT, END_ARRAY -> {
                        builder.end();
                        depth--;
                    }
                    default -> builder.scalar(new Node.Scalar(at, kind(token), parser.getText()));
                }
                done = depth == 0;
            }
        } catch (JsonProcessingException e) {
            throw new TreeException(
                    e.getLocation() == null ? new Origin(name, 0, 0) : place(name, e.getLocation()),
                    "this is not JSON: " + words(e.getOriginalMessage()));
        } catch (IOException e) {
            throw new IllegalStateException("reading from memory failed", e);
        }
    }

    /**
     * Removes what is useful only to programmers: hints about lenient parsing, and the name of the
     * source.
     */
    private static String words(String message) {
        String[] useless = {": enable `", " (start marker at [", " at [Source"};
        String left = message;
        for (String each : useless) {
            int from = left.indexOf(each);
            left = from < 0 ? left : left.substring(0, from);
        }
        return left;
    }

    private static Node.ScalarKind kind(JsonToken token) {
        return switch (token) {
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> Node.ScalarKind.NUMBER;
            case VALUE_TRUE, VALUE_FALSE -> Node.ScalarKind.BOOL;
            case VALUE_NULL -> Node.ScalarKind.NULL;
            default -> Node.ScalarKind.TEXT;
        };
    }

    private static Origin place(String name, JsonLocation location) {
        return new Origin(
                name, Math.max(1, location.getLineNr()), Math.max(1, location.getColumnNr()));
    }
}
