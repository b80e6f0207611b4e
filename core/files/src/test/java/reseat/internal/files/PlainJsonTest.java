package reseat.internal.files;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.files.DeviceFiles;
import reseat.files.ResolvedJson;

/** What {@link PlainJson} makes is what {@link JsonEvents} makes; else it makes nothing. */
final class PlainJsonTest {

    private static Node plain(String text) {
        return PlainJson.parse("a.json", text.getBytes(StandardCharsets.UTF_8));
    }

    private static Node byEvents(String text) throws TreeException {
        TreeBuilder builder = new TreeBuilder(new Problems("a.json"));
        JsonEvents.feed("a.json", text, builder);
        return builder.root();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{}",
                " {\r\n\t\"a\" : [ ] ,\n\n  \"b\":{\"c\":null}}\n",
                "{\"a\":-0.5e+3,\"b\":[0,10,1E9,-0],\"c\":[true,false,null]}",
                "{\"µm\":\"5 µm – 😀\" , \"later\": 1}",
                "{\"e\":\"\\\"\\\\\\/\\b\\f\\n\\r\\t µ\" , \"later\": 1}",
                "{\"\":\"\",\"exactly8\":\"exactly8\",\"exactly16bytes..\":\"a text of twenty-five in it\"}",
                "{\"a\":1,\"b\":2,\"c\":3,\"d\":4,\"e\":5,\"f\":6,\"g\":7,\"h\":8,\"i\":9,\"j\":1,\"k\":2,\"l\":3,\"m\":4}",
                // keys as in the map before, longer, shorter, in another order, or with escapes
                "[{\"ab\":1,\"c\":2},{\"ab\":1,\"c\":2},{\"abc\":1},{\"a\":1,\"c\":2},{\"c\":1,\"ab\":2},{}]",
                "[{\"sixletters\":1},{\"sixletters\":2},{\"sixletterz\":3},{\"sixlettersandmore\":4}]",
                "[{\"ten\\\"quoted\":1},{\"ten\\\"quoted\":2},{\"µ\":3},{\"µ\":4},{\"eight678\":5}]",
            })
    void sameTreeAtTheSamePlaces(String text) throws TreeException {
        String inMap = text.startsWith("[") ? "{\"list\":" + text + "}" : text;
        assertEquals(byEvents(inMap), plain(inMap));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "[]",
                "{",
                "{}}",
                "{} x",
                "{a: 1}",
                "{\"a\"}",
                "{\"a\":}",
                "{\"a\":1,}",
                "{\"a\":[1,]}",
                "{\"a\":01}",
                "{\"a\":1.}",
                "{\"a\":.5}",
                "{\"a\":+1}",
                "{\"a\":1e}",
                "{\"a\":1x}",
                "{\"a\":NaN}",
                "{\"a\":nul}",
                "{\"a\":truefalse}",
                "{\"a\":\"b}",
                "{\"a\":\"\\u0041\"}",
                "{\"a\":\"\\x\"}",
                "{\"a\":\"b\tc\"}",
                "{\"a\":\"\u007f\"}",
                "{\"a\":\"\u0081\"}",
                "{\"a\":1,\"a\":2}",
                "{\"a\":1,\"b\":2,\"c\":3,\"d\":4,\"e\":5,\"f\":6,\"g\":7,\"h\":8,\"i\":9,\"j\":1,\"k\":2,\"l\":3,\"a\":4}",
                "{\r\"a\":1}",
                "\uFEFF{}",
                "{'a':1}",
                "{/**/}",
                "{\"a\":{\"b\\\"c\":1},\"d\":{\"b\"c\":1}}",
                "{\"a\":{\"b\":1},\"d\":{\"b:1}}",
            })
    void makesNothingOfTheRest(String text) {
        assertNull(plain(text));
    }

    @Test
    void leavesWhatIsOutOfBoundsToTheOther() {
        String deep =
                "{\"a\":".repeat(TreeBuilder.DEPTH + 1) + "1" + "}".repeat(TreeBuilder.DEPTH + 1);
        assertNull(plain(deep));
        assertNotNull(plain(deep.substring(5, deep.length() - 1)));
        assertNull(plain("{\"a\":[" + "1,".repeat((int) TreeBuilder.VALUES) + "1]}"));
    }

    @Test
    void sameTreeOfEverySample() throws Exception {
        List<String> texts = new ArrayList<>();
        try (Stream<Path> files = Files.walk(Path.of("../../samples"))) {
            for (Path file : (Iterable<Path>) files.sorted()::iterator) {
                if (file.toString().endsWith(".yaml")) {
                    DeviceFiles.read(file, Optional.empty(), List.of())
                            .device()
                            .ifPresent(device -> texts.add(ResolvedJson.write(device)));
                }
            }
        }
        assertNotNull(texts.get(0));
        for (String text : texts) {
            assertEquals(byEvents(text), plain(text));
            String windows = text.replace("\n", "\r\n");
            assertEquals(byEvents(windows), plain(windows));
        }
    }

    private static final String SOUND =
            """
            {
              "id" : "a-device", "resolved" : true,
              "parts" : { "base" : {}, "lid" : { "name" : "Lid – µ", "under" : [ ] } },
              "joints" : {
                "one" : { "kind" : "screw", "holds" : [ "lid", "base" ], "restoreMs" : 1200 },
                "two" : { "kind" : "screw", "holds" : [ "lid", "base" ], "restoreMs" : 12e2 },
                "three" : { "kind" : "clip", "holds" : [ "lid" ], "restoreMs" : -0.5 }
              }
            }
            """;

    private static final List<String> INSTEAD =
            List.of(
                    "\"",
                    "\\",
                    "\\\"",
                    "\\u0041",
                    "\\n",
                    "{",
                    "}",
                    "[",
                    "]",
                    ",",
                    ":",
                    " ",
                    "\n",
                    "\r",
                    "\r\n",
                    "\t",
                    "null",
                    "true",
                    "-1",
                    "0",
                    "01",
                    "1e5",
                    "é",
                    "😀",
                    "\u0000",
                    "\u007F",
                    "\u0085",
                    "\uFEFF",
                    "\"holds\"",
                    "\"kind\" : 1,",
                    "{}, ",
                    "[[]]",
                    "\"a long key of it\" : {},");

    /** Cuts, puts in, doubles and moves pieces; a seed makes the same again. */
    private static String changed(long seed) {
        Random random = new Random(seed * 0x9E3779B97F4A7C15L);
        StringBuilder text = new StringBuilder(SOUND);
        do {
            int at = random.nextInt(text.length());
            int end = Math.min(text.length(), at + 1 + random.nextInt(12));
            switch (random.nextInt(4)) {
                case 0 -> text.delete(at, end);
                case 1 -> text.insert(at, INSTEAD.get(random.nextInt(INSTEAD.size())));
                case 2 -> text.replace(at, end, INSTEAD.get(random.nextInt(INSTEAD.size())));
                default -> text.insert(random.nextInt(text.length()), text.substring(at, end));
            }
        } while (random.nextInt(3) == 0);
        return text.toString();
    }

    @Test
    void sameTreeOfChangedTextsOrNone() {
        int trees = 0;
        for (long seed = 1; seed <= 5000; seed++) {
            String text = changed(seed);
            Node plain = plain(text);
            if (plain != null) {
                Problems problems = new Problems("a.json");
                TreeBuilder builder = new TreeBuilder(problems);
                String which = "seed " + seed + ":\n" + text;
                assertDoesNotThrow(
                        () ->
                                JsonEvents.feed(
                                        "a.json",
                                        Trees.decode(
                                                "a.json", text.getBytes(StandardCharsets.UTF_8)),
                                        builder),
                        which);
                assertEquals(builder.root(), plain, which);
                assertTrue(problems.isEmpty(), which);
                trees++;
            }
        }
        assertTrue(trees > 500 && trees < 4500, trees + " of 5,000 texts were plain");
    }
}
