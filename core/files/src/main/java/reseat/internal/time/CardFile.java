package reseat.internal.time;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalDouble;

/** Reads the card included in the toolkit. Cells are separated by semicolons; none is quoted. */
final class CardFile {

    private CardFile() {}

    static Card read() {
        Card.Columns columns = new Card.Columns();
        for (String line : lines()) {
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            String[] cell = line.split(";", -1);
            if (cell[0].equals("column")) {
                columns.add(cell[1], cell[2], cell[3], cell[4], cell[5]);
            } else {
                OptionalDouble upTo =
                        cell[2].isEmpty()
                                ? OptionalDouble.empty()
                                : OptionalDouble.of(Double.parseDouble(cell[2]));
                columns.row(
                        new Card.Row(
                                Integer.parseInt(cell[1]),
                                upTo,
                                cell[3],
                                Card.Mark.valueOf(cell[4])));
            }
        }
        return columns.card();
    }

    private static List<String> lines() {
        try (InputStream in = CardFile.class.getResourceAsStream("card.csv")) {
            if (in == null) {
                throw new IllegalStateException("card.csv is missing from the toolkit");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
