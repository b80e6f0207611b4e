package reseat.bench;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.parser.ParserImpl;
import org.snakeyaml.engine.v2.scanner.StreamReader;
import reseat.files.DeviceFiles;
import reseat.files.Reading;
import reseat.files.ResolvedJson;
import reseat.model.Device;
import reseat.testkit.DeviceShape;
import reseat.testkit.GeneratedDevice;

/**
 * Reads and checks generated device files and compares the time with that of a bare parse of the same bytes, the two in
 * turn in one process.
 */
public final class ReadBench {

    private static final DeviceShape SHAPE = DeviceShape.NOTEBOOK.sized(35, 100);

    private final JsonFactory jackson = new JsonFactory();
    private final PrintStream out;
    private final int count;
    private final int rounds;

    /** Takes the results of parses, so that none of them is optimised away. */
    private long sink;

    private ReadBench(PrintStream out, int count, int rounds) {
        this.out = out;
        this.count = count;
        this.rounds = rounds;
    }

    /** One pass over all files. */
    private interface Pass {
        void run() throws Exception;
    }

    /**
     * Runs the bench.
     *
     * @param args folder for the files, number of files, number of rounds
     * @throws Exception when a file cannot be written or is not read as a device
     */
    public static void main(String[] args) throws Exception {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        if (args.length != 3) {
            out.println("usage: ReadBench FOLDER FILES ROUNDS");
            return;
        }
        new ReadBench(out, Integer.parseInt(args[1]), Integer.parseInt(args[2])).run(Path.of(args[0]));
    }

    private void run(Path folder) throws Exception {
        List<String> resolved = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            resolved.add(ResolvedJson.write(GeneratedDevice.of(SHAPE, i)));
        }
        out.println("format,kilobytes,baseline,bare_ms,texts_ms,read_ms,to_bare,to_texts,two_threads_gain");
        StringBuilder tools = new StringBuilder();
        for (int k = 1; k <= SHAPE.tools(); k++) {
            tools.append(k == 1 ? "{" : ", ").append("\"tool-").append(k).append("\": {}");
        }
        String known = tools.append("}").toString();
        List<String> stated =
                resolved.stream()
                        .map(text -> text.replaceFirst("\"resolved\": true,", ""))
                        .map(text -> text.replace("\"tools\": { }", "\"tools\": " + known))
                        .toList();
        List<String> yaml = new ArrayList<>();
        for (String text : stated) {
            yaml.add(Block.of(text));
        }
        row(folder, "resolved JSON", "resolved.json", resolved);
        row(folder, "device JSON", "json", stated);
        row(folder, "device YAML", "yaml", yaml);
        out.println("# " + sink % 10);
    }

    private void row(Path folder, String format, String ending, List<String> texts) throws Exception {
        Files.createDirectories(folder);
        List<Path> files = new ArrayList<>();
        List<byte[]> contents = new ArrayList<>();
        long bytes = 0;
        for (int i = 0; i < texts.size(); i++) {
            Path file = folder.resolve("generated-" + i + "." + ending);
            byte[] content = texts.get(i).getBytes(StandardCharsets.UTF_8);
            Files.write(file, content);
            files.add(file);
            contents.add(content);
            bytes += content.length;
        }
        boolean yaml = ending.equals("yaml");
        Pass bare = yaml ? () -> events(texts) : () -> tokens(contents, false);
        Pass bareWithTexts = yaml ? bare : () -> tokens(contents, true);
        Pass reading = () -> read(files);
        Pass twofold = () -> readByTwo(files);
        double[] bareMs = new double[rounds];
        double[] textMs = new double[rounds];
        double[] readMs = new double[rounds];
        double[] oneWallMs = new double[rounds];
        double[] twoWallMs = new double[rounds];
        for (int warm = 0; warm < Math.max(4, 8000 / count); warm++) {
            bare.run();
            bareWithTexts.run();
            reading.run();
        }
        for (int round = 0; round < rounds; round++) {
            bareMs[round] = cpuMs(bare);
            textMs[round] = cpuMs(bareWithTexts);
            readMs[round] = cpuMs(reading);
            oneWallMs[round] = wallMs(reading);
            twoWallMs[round] = wallMs(twofold);
        }
        out.printf(
                Locale.ROOT,
                "%s,%d,%s,%.1f,%.1f,%.1f,%.2f,%.2f,%.2f%n",
                format,
                bytes / 1000,
                yaml ? "snakeyaml-engine" : "Jackson",
                median(bareMs),
                median(textMs),
                median(readMs),
                median(readMs) / median(bareMs),
                median(readMs) / median(textMs),
                median(oneWallMs) / median(twoWallMs));
    }

    private void tokens(List<byte[]> contents, boolean texts) throws IOException {
        for (byte[] content : contents) {
            try (JsonParser parser = jackson.createParser(content)) {
                for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                    sink += texts ? parser.getText().length() : token.id();
                }
            }
        }
    }

    private void events(List<String> texts) {
        LoadSettings settings = LoadSettings.builder().build();
        for (String text : texts) {
            ParserImpl parser = new ParserImpl(settings, new StreamReader(settings, text));
            while (parser.hasNext()) {
                sink += parser.next().getEventId().ordinal();
            }
        }
    }

    private void read(List<Path> files) {
        for (Path file : files) {
            sink += joints(file);
        }
    }

    private void readByTwo(List<Path> files) throws Exception {
        ExecutorService two = Executors.newFixedThreadPool(2);
        try {
            List<Callable<Integer>> tasks = new ArrayList<>();
            files.forEach(file -> tasks.add(() -> joints(file)));
            for (Future<Integer> joints : two.invokeAll(tasks)) {
                sink += joints.get();
            }
        } finally {
            two.shutdown();
        }
    }

    private static int joints(Path file) {
        Reading reading = DeviceFiles.read(file, Optional.empty(), List.of());
        Device device =
                reading.device()
                        .orElseThrow(() -> new IllegalStateException(reading.problems().get(0).toString()));
        return device.joints().size();
    }

    private static double wallMs(Pass pass) throws Exception {
        long from = System.nanoTime();
        pass.run();
        return (System.nanoTime() - from) / 1e6;
    }

    /** Processor time of this thread: what others do on the machine meanwhile counts less. */
    private static double cpuMs(Pass pass) throws Exception {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        long from = threads.getCurrentThreadCpuTime();
        pass.run();
        return (threads.getCurrentThreadCpuTime() - from) / 1e6;
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }

    /** Writes JSON anew as YAML in blocks, as people write it. */
    private static final class Block {
        private final StringBuilder out = new StringBuilder();
        private final JsonParser parser;

        private Block(JsonParser parser) {
            this.parser = parser;
        }

        static String of(String json) throws IOException {
            try (JsonParser parser = new JsonFactory().createParser(json)) {
                Block block = new Block(parser);
                parser.nextToken();
                block.map("");
                return block.out.toString();
            }
        }

        private void map(String indent) throws IOException {
            while (parser.nextToken() != JsonToken.END_OBJECT) {
                out.append(indent).append(parser.currentName()).append(':');
                JsonToken value = parser.nextToken();
                if (value == JsonToken.START_ARRAY) {
                    out.append(" [");
                    String gap = "";
                    while (parser.nextToken() != JsonToken.END_ARRAY) {
                        out.append(gap).append(scalar());
                        gap = ", ";
                    }
                    out.append("]\n");
                } else if (value != JsonToken.START_OBJECT) {
                    out.append(' ').append(scalar()).append('\n');
                } else {
                    int before = out.length();
                    out.append('\n');
                    int begin = out.length();
                    map(indent + "  ");
                    if (out.length() == begin) {
                        out.setLength(before);
                        out.append(" {}\n");
                    }
                }
            }
        }

        private String scalar() throws IOException {
            boolean text = parser.currentToken() == JsonToken.VALUE_STRING;
            boolean plain = !text || parser.getText().matches("[A-Za-z][A-Za-z0-9 _/.-]*");
            return plain ? parser.getText() : '"' + parser.getText() + '"';
        }
    }
}
