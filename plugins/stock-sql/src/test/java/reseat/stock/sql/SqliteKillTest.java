package reseat.stock.sql;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.stock.Reservation;

/**
 * Programs with four threads that write to a file are killed (SIGKILL) at random moments: while
 * they make the file, while they write, while they close. {@code -Dreseat.kills=1000} is the long
 * form.
 */
class SqliteKillTest {

    private static final int KILLS = Integer.getInteger("reseat.kills", 25);
    private static final int KILLS_OF_ONE_FILE = 25;
    private static final int ENDLESS = 1_000_000;

    @TempDir private Path folder;

    private final Random random = new Random(20_261_130);
    private final Map<String, Reservation.State> acknowledged = new LinkedHashMap<>();
    private int allAcknowledged;
    private int unsaid;
    private int killedClosing;

    @Test
    void whatWasAcknowledgedOutlivesEveryKill() throws Exception {
        for (int kill = 0; kill < KILLS; kill++) {
            String name = "killed-" + kill / KILLS_OF_ONE_FILE;
            if (kill % KILLS_OF_ONE_FILE == 0) {
                allAcknowledged += acknowledged.size();
                acknowledged.clear();
                unsaid = 0;
            }
            kill(name, kill);
            SqliteBooks books = SqliteBooks.read(folder.resolve(name + ".sqlite"));
            assertEquals(List.of(), books.lost(acknowledged), "lost after kill " + kill);
            assertEquals(List.of(), books.halves(), "half done after kill " + kill);
            int more = books.size() - acknowledged.size();
            assertTrue(
                    more <= unsaid + KilledProgram.THREADS,
                    "each thread may have done one thing that it could not say");
            unsaid = more;
        }
        allAcknowledged += acknowledged.size();
        assertTrue(allAcknowledged > KILLS, "too few were acknowledged: " + allAcknowledged);
        if (KILLS > KILLS_OF_ONE_FILE) {
            System.out.printf(
                    "%d kills (%d of them in close), %d reservations acknowledged, 0 lost, 0 half"
                            + " transactions%n",
                    KILLS, killedClosing, allAcknowledged);
        }
    }

    /** Has a program killed at a moment of one of three sorts. */
    private void kill(String name, int kill) throws Exception {
        int sort = kill % 3;
        int closeAfter = sort == 2 ? 2 + random.nextInt(30) : -1;
        try (KilledProgram program =
                KilledProgram.start(folder, name, "k" + kill, ENDLESS, closeAfter)) {
            String mark = List.of("started", "RESERVED", "closing").get(sort);
            List<String> said = new ArrayList<>(program.readUntil(mark));
            for (int n = sort == 1 ? random.nextInt(20) : 0; n > 0; n--) {
                said.addAll(program.readUntil(mark));
            }
            Thread.sleep(random.nextInt(List.of(800, 30, 3).get(sort)));
            said.addAll(program.kill());
            if (said.contains("closing") && !said.contains("closed")) {
                killedClosing++;
            }
            note(said);
        }
    }

    private void note(List<String> said) {
        for (String line : said) {
            String[] words = line.split(" ", 2);
            for (Reservation.State state : Reservation.State.values()) {
                if (words[0].equals(state.name())) {
                    acknowledged.put(words[1], state);
                }
            }
        }
    }

    @Test
    void severalProgramsWriteToOneFile() throws Exception {
        int wishes = 15;
        List<KilledProgram> programs = new ArrayList<>();
        for (String ids : List.of("a", "b", "c")) {
            programs.add(KilledProgram.start(folder, "shared", ids, wishes, -1));
        }
        for (KilledProgram program : programs) {
            List<String> said = program.rest();
            assertEquals("closed", said.get(said.size() - 1));
            note(said);
        }

        SqliteBooks books = SqliteBooks.read(folder.resolve("shared.sqlite"));
        assertEquals(3 * KilledProgram.THREADS * wishes, acknowledged.size());
        assertEquals(acknowledged.size(), books.size());
        assertEquals(List.of(), books.lost(acknowledged));
        assertEquals(List.of(), books.halves());
    }
}
