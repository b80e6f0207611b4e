package reseat.console;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The two documents that we print are enough for a program that knows nothing else of us. */
class OutsideJudgeTest {

    private static final Path SAMPLES = Path.of("../../samples");
    private static final String EFFORT = "1500";

    @Test
    void everyTargetOfEverySampleHoldsAndAddsUp() throws IOException {
        List<Path> devices;
        try (Stream<Path> files = Files.list(SAMPLES)) {
            devices =
                    files.map(dir -> dir.resolve(dir.getFileName() + ".yaml"))
                            .filter(Files::exists)
                            .sorted()
                            .toList();
        }
        for (Path device : devices) {
            String facts = Ran.reseat("facts", device.toString(), "--json").out();
            Map<String, Object> all = PlainJson.object(facts);
            List<String> goals = new ArrayList<>(((Map<?, ?>) all.get("parts")).size());
            ((Map<?, ?>) all.get("parts")).keySet().forEach(part -> goals.add(part.toString()));
            goals.remove(String.valueOf(all.get("base")));
            for (String part : goals) {
                Ran plan = plan(device, "--free", part);
                if (plan.code() == 0) {
                    OutsideJudge.judge(facts, plan.out());
                } else {
                    assertEquals(2, plan.code(), plan.err());
                }
            }
            OutsideJudge.judge(facts, plan(device, "--all").out());
        }
    }

    @Test
    void noticesWhatWasBentOrLeftOut() {
        Path device = SAMPLES.resolve("quill/quill.yaml");
        String facts = Ran.reseat("facts", device.toString(), "--json").out();
        String plan = plan(device, "--free", "fan").out();

        for (String key : List.of("ms", "restoreMs", "setupMs", "totalMs")) {
            String bent = plan.replaceFirst("\"" + key + "\": (\\d+)", "\"" + key + "\": 1$1");
            assertThrows(AssertionError.class, () -> OutsideJudge.judge(facts, bent), key);
        }
        String joint = plan.replaceFirst("\"kind\": \"move\"", "\"kind\": \"wait\"");
        assertThrows(AssertionError.class, () -> OutsideJudge.judge(facts, joint));
    }

    private static Ran plan(Path device, String... goal) {
        List<String> words = new ArrayList<>(List.of("plan", device.toString()));
        words.addAll(List.of(goal));
        words.addAll(List.of("--json", "--effort", EFFORT));
        return Ran.reseat(words.toArray(String[]::new));
    }
}
