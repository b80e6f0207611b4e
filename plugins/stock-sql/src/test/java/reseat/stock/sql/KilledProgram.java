package reseat.stock.sql;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import reseat.stock.FillableStock;
import reseat.stock.Reservation;
import reseat.stock.Stock;
import reseat.stock.StockException;
import reseat.testkit.StockLoad;

/**
 * A program of its own that works on a database in a file until somebody kills it. It says what it
 * does, one line each; a line counts if it came out whole.
 */
final class KilledProgram implements AutoCloseable {

    static final int THREADS = 4;
    static final int ON_HAND = 1_000_000;

    private static final String WHOLE = ";";

    private static CountDownLatch toClose = new CountDownLatch(0);

    private final Process process;
    private final BufferedReader out;

    private KilledProgram(Process process) {
        this.process = process;
        this.out = process.inputReader(UTF_8);
    }

    /**
     * Opens a file, fills it if it is empty, then reserves, uses and releases with several threads.
     *
     * @param args the folder; the file; what the ids begin with; wishes of each thread; after how
     *     many lines of what it says it closes the stock under its own threads, or -1
     */
    public static void main(String[] args) throws Exception {
        toClose = new CountDownLatch(Math.max(0, Integer.parseInt(args[4])));
        say("started");
        Stock stock =
                new SqlStockSource().open(Map.of("file", args[1], "wait", "60"), Path.of(args[0]));
        say("opened");
        int wishes = Integer.parseInt(args[3]);
        if (stock.items().isEmpty()) {
            ((FillableStock) stock).put(StockLoad.lines(ON_HAND));
        }
        List<Thread> threads = new ArrayList<>();
        for (int thread = 0; thread < THREADS; thread++) {
            String ids = args[2] + "-" + thread + "-";
            threads.add(new Thread(() -> work(stock, ids, wishes)));
        }
        threads.forEach(Thread::start);
        if (Integer.parseInt(args[4]) < 0) {
            for (Thread each : threads) {
                each.join();
            }
        } else {
            toClose.await();
        }
        say("closing");
        stock.close();
        say("closed");
    }

    private static void work(Stock stock, String ids, int wishes) {
        try {
            for (int n = 0; n < wishes; n++) {
                String id = ids + n;
                stock.reserve(Wish.of(id));
                say("RESERVED " + id);
                if (Wish.end(id) == Reservation.State.USED) {
                    stock.use(id);
                    say("USED " + id);
                } else if (Wish.end(id) == Reservation.State.RELEASED) {
                    stock.release(id);
                    say("RELEASED " + id);
                }
            }
        } catch (StockException e) {
            say("stopped: " + e.getMessage());
        }
    }

    private static synchronized void say(String line) {
        byte[] bytes = (line + WHOLE + "\n").getBytes(UTF_8);
        System.out.write(bytes, 0, bytes.length);
        System.out.flush();
        toClose.countDown();
    }

    static KilledProgram start(Path folder, String name, String ids, int wishes, int closeAfter)
            throws IOException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
        if (Runtime.version().feature() >= 24) {
            command.add("--enable-native-access=ALL-UNNAMED");
        }
        command.addAll(List.of("-cp", classPath(), KilledProgram.class.getName()));
        command.addAll(
                List.of(
                        folder.toString(),
                        name,
                        ids,
                        String.valueOf(wishes),
                        String.valueOf(closeAfter)));
        return new KilledProgram(
                new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start());
    }

    /** Reads on until it says something that begins so, or ends; returns all that it said. */
    List<String> readUntil(String start) throws IOException {
        List<String> said = new ArrayList<>();
        for (String line = out.readLine(); line != null; line = out.readLine()) {
            if (line.endsWith(WHOLE)) {
                said.add(line.substring(0, line.length() - WHOLE.length()));
                if (line.startsWith(start)) {
                    return said;
                }
            }
        }
        return said;
    }

    /** Kills it; returns what it had said before it died. */
    List<String> kill() throws Exception {
        // by its handle: the process itself would throw away what was not read yet
        process.toHandle().destroyForcibly();
        return rest();
    }

    /** Lets it come to its end; returns what it said until then. */
    List<String> rest() throws Exception {
        try {
            List<String> said = readUntil("nothing it ever says");
            process.waitFor();
            return said;
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private static String classPath() {
        return Stream.concat(
                        Stream.of("target/classes", "target/test-classes")
                                .map(each -> Path.of(each).toAbsolutePath().toString()),
                        Stream.of("java.class.path", "jdk.module.path")
                                .map(name -> System.getProperty(name, ""))
                                .flatMap(path -> Stream.of(path.split(File.pathSeparator)))
                                .filter(path -> !path.isEmpty()))
                .collect(Collectors.joining(File.pathSeparator));
    }

    @Override
    public void close() {
        process.destroyForcibly().onExit().join();
    }
}
