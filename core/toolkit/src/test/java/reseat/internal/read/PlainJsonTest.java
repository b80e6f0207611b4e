package reseat.internal.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.device.DeviceFiles;
import reseat.device.ResolvedJson;

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
            })
    void sameTreeAtTheSamePlaces(String text) throws TreeException {
        assertEquals(byEvents(text), plain(text));
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
}
