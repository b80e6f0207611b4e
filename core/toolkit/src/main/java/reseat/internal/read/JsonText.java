package reseat.internal.read;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectWriter;

/** Writes JSON the same way on every system: two blanks of indent, line feeds, one at the end. */
final class JsonText {

    private static final ObjectWriter WRITER = new ObjectMapper()
            .writer(new DefaultPrettyPrinter(Separators.createDefaultInstance()
                            .withObjectFieldValueSpacing(Separators.Spacing.AFTER))
                    .withObjectIndenter(new DefaultIndenter("  ", "\n")));

    private JsonText() {}

    static String of(JsonNode node) {
        try {
            return WRITER.writeValueAsString(node) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree in memory cannot be written", e);
        }
    }
}
