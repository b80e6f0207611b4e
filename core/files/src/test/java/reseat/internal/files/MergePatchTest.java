package reseat.internal.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import reseat.model.Origin;

class MergePatchTest {

    /** The fifteen examples of RFC 7396, appendix A, in its order. */
    @ParameterizedTest(name = "{0} patched with {1}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "{\"a\":\"b\"} | {\"a\":\"c\"} | {\"a\":\"c\"}",
                "{\"a\":\"b\"} | {\"b\":\"c\"} | {\"a\":\"b\",\"b\":\"c\"}",
                "{\"a\":\"b\"} | {\"a\":null} | {}",
                "{\"a\":\"b\",\"b\":\"c\"} | {\"a\":null} | {\"b\":\"c\"}",
                "{\"a\":[\"b\"]} | {\"a\":\"c\"} | {\"a\":\"c\"}",
                "{\"a\":\"c\"} | {\"a\":[\"b\"]} | {\"a\":[\"b\"]}",
                "{\"a\":{\"b\":\"c\"}} | {\"a\":{\"b\":\"d\",\"c\":null}} | {\"a\":{\"b\":\"d\"}}",
                "{\"a\":[{\"b\":\"c\"}]} | {\"a\":[1]} | {\"a\":[1]}",
                "[\"a\",\"b\"] | [\"c\",\"d\"] | [\"c\",\"d\"]",
                "{\"a\":\"b\"} | [\"c\"] | [\"c\"]",
                "{\"a\":\"foo\"} | null | null",
                "{\"a\":\"foo\"} | \"bar\" | \"bar\"",
                "{\"e\":null} | {\"a\":1} | {\"e\":null,\"a\":1}",
                "[1,2] | {\"a\":\"b\",\"c\":null} | {\"a\":\"b\"}",
                "{} | {\"a\":{\"bb\":{\"ccc\":null}}} | {\"a\":{\"bb\":{}}}",
            })
    void patchesAsTheRfcDoes(String target, String patch, String result) {
        assertEquals(result, Trays.json(MergePatch.apply(Trays.tree(target), Trays.tree(patch))));
    }

    @Test
    void aFactFromThePatchHasThePlaceOfThePatch() {
        Node.Fields base = (Node.Fields) Trays.tree("lid:\n  name: Lid\n  spare: A-1\n");
        Node.Fields patch = (Node.Fields) Trays.tree("# variant\n\nlid:\n    spare: A-2\n");

        Node.Fields lid = ((Node.Fields) MergePatch.apply(base, patch)).fields("lid");

        assertEquals(new Origin("f", 2, 9), lid.get("name").at());
        assertEquals(new Origin("f", 4, 12), lid.get("spare").at());
    }
}
