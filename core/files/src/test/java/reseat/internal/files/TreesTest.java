package reseat.internal.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import reseat.model.Origin;

class TreesTest {

    @Test
    void everyValueKnowsItsPlace() {
        Node.Fields root = (Node.Fields) Trays.tree("a: 1\nb:\n  - x\n  - {c: µ, d: y}\n");

        Node.Items list = (Node.Items) root.get("b");
        Node.Fields last = (Node.Fields) list.items().get(1);

        assertEquals(new Origin("f", 1, 4), root.get("a").at());
        assertEquals(new Origin("f", 4, 5), last.at());
        assertEquals(new Origin("f", 4, 15), last.get("d").at());
        assertEquals(new Origin("f", 4, 12), last.entries().get("d").keyAt());
    }

    @Test
    void jsonHasThePlacesOfYaml() {
        String json = "{\n  \"a\": [\n    {\"b\": 7, \"c\": true}\n  ]\n}\n";
        Node.Fields root = (Node.Fields) Trays.tree(json);
        Node.Fields inner = (Node.Fields) ((Node.Items) root.get("a")).items().get(0);

        assertEquals("{\"a\":[{\"b\":7,\"c\":true}]}", Trays.json(root));
        assertEquals(new Origin("f", 3, 6), inner.entries().get("b").keyAt());
        assertEquals(new Origin("f", 3, 11), inner.get("b").at());
        assertEquals(new Origin("f", 3, 19), inner.get("c").at());
    }

    @Test
    void plainWordsAreWhatTheyAreInYaml12() {
        assertEquals(
                "{\"a\":\"no\",\"b\":true,\"c\":null,\"d\":1e3,\"e\":\"8.8\",\"f\":\".nan\",\"g\":\"1:30\"}",
                Trays.json(
                        Trays.tree("{a: no, b: true, c: , d: 1e3, e: '8.8', f: .nan, g: 1:30}")));
    }

    @Test
    void aByteOrderMarkIsNoContent() {
        assertEquals("{\"a\":1}", Trays.json(Trays.tree("\uFEFFa: 1")));
        assertEquals("{\"a\":1}", Trays.json(Trays.tree("\uFEFF{\"a\": 1}")));
    }

    @Test
    void anAliasStandsForItsAnchor() {
        assertEquals("{\"a\":[1],\"b\":[1]}", Trays.json(Trays.tree("a: &x [1]\nb: *x\n")));
    }

    @Test
    void saysWhereAKeyStandsTwice() {
        assertEquals(
                "f:3:1: error: key \"a\" is repeated; it first occurs in line 1",
                Trays.problems("a: 1\nb: 2\na: 3\n"));
        assertEquals(
                "f:2:2: error: key \"a\" is repeated; it first occurs in line 1",
                Trays.problems("{\"a\": 1,\n \"a\": 2}"));
    }

    @Test
    void refusesAnchorsThatExplode() {
        StringBuilder bomb = new StringBuilder("a: &a [x, x, x, x, x, x, x, x, x, x]\n");
        for (char c = 'b'; c <= 'j'; c++) {
            char p = (char) (c - 1);
            bomb.append(c).append(": &").append(c).append(" [");
            bomb.append(("*" + p + ", ").repeat(9)).append('*').append(p).append("]\n");
        }
        String problems = Trays.problems(bomb.toString());
        assertTrue(problems.startsWith("f:6:"), problems);
        assertTrue(
                problems.endsWith(
                        "the file has more than 500000 values, aliases counted each time"),
                problems);
    }

    @Test
    void refusesAnAliasWithinItself() {
        assertEquals("f:1:8: error: alias *a contains itself", Trays.problems("a: &a [*a]"));
        assertEquals(
                "f:2:4: error: alias *lip has no anchor &lip before it. Did you mean \"lid\"?",
                Trays.problems("a: &lid 1\nb: *lip"));
    }

    @Test
    void refusesWhatLiesTooDeep() {
        String yaml = "[".repeat(100_000);
        assertEquals(
                "f:1:65: error: maps and lists are nested more than 64 levels deep",
                Trays.problems(yaml));
        String json = "{\"a\":".repeat(100_000);
        assertEquals(
                "f:1:321: error: maps and lists are nested more than 64 levels deep",
                Trays.problems(json));
        assertTrue(Trays.problems("- ".repeat(100_000)).contains("more than 64 levels deep"));
        assertTrue(
                Trays.problems("a: &a [[[[]]]]\nb: " + "[".repeat(60) + "*a")
                        .contains("with this alias"));
    }

    @Test
    void refusesWhatIsNoText() {
        assertEquals(
                "f:2:4: error: found the control character U+0000: a device file is text in UTF-8",
                Trays.problems(new byte[] {'a', '\n', 'b', ':', ' ', 0, 'c'}));
        assertEquals(
                "f:1:4: error: found the byte 0xFF, which is not valid UTF-8: save the"
                        + " file as UTF-8",
                Trays.problems(new byte[] {'a', ':', ' ', (byte) 0xFF}));
        assertEquals(
                "f:1:4: error: found the byte 0xB5, which is not valid UTF-8: save the"
                        + " file as UTF-8",
                Trays.problems("a: µm".getBytes(StandardCharsets.ISO_8859_1)));
    }

    @Test
    void saysWhereAFileBreaksOff() {
        assertTrue(Trays.problems("a: [1, 2").startsWith("f:1:9: error: this is not YAML: "));
        assertTrue(Trays.problems("a: \"x").startsWith("f:1:6: error: this is not YAML: "));
        assertTrue(Trays.problems("{\"a\": [1,\n").startsWith("f:2:1: error: this is not JSON: "));
        assertEquals(
                "f:1:9: error: this is not JSON: Unexpected end-of-input: expected"
                        + " close marker for Object",
                Trays.problems("{\"a\": 1 "));
        assertTrue(Trays.problems("{\"a\": NaN}").startsWith("f:1:10: error: this is not JSON: "));
        assertEquals("f:1:1: error: the file is empty", Trays.problems("# nothing\n"));
        assertEquals("f:1:1: error: the file is empty", Trays.problems(""));
    }

    @Test
    void refusesWhatADeviceFileHasNoUseFor() {
        assertEquals(
                "f:2:1: error: a second document begins here; a file holds one device",
                Trays.problems("a: 1\n---\nb: 2"));
        assertEquals(
                "f:1:4: error: tag \"!java.lang.Runtime\" is not supported in a device file",
                Trays.problems("a: !java.lang.Runtime x"));
        assertEquals(
                "f:1:3: error: a key must be plain text, not a map or a list",
                Trays.problems("? [a]\n: b"));
        assertTrue(Trays.problems("{\"a\": 1} x").startsWith("f:1:10: error: "));
    }
}
