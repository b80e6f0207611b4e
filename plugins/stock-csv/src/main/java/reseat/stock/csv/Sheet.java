package reseat.stock.csv;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import reseat.model.BadInputException;
import reseat.model.Origin;
import reseat.model.Problem;
import reseat.stock.StockItem;

/**
 * The contents of a spreadsheet.
 *
 * @param rows its lines by id, in their order, without reservations
 */
record Sheet(Map<String, StockItem> rows) {

    /** The heading must be within this number of lines. */
    private static final int HEADING_WITHIN = 50;

    /** More lines than any shop has; a wrong file is not read to its end. */
    private static final int MOST_ROWS = 200_000;

    Sheet {
        rows = Collections.unmodifiableMap(new LinkedHashMap<>(rows));
    }

    /** Returns the quantity of a line; zero if there is no such line. */
    BigDecimal quantity(String id) {
        StockItem row = rows.get(id);
        return row == null ? BigDecimal.ZERO : row.onHand();
    }

    static Sheet parse(String file, byte[] content, Columns columns) throws BadInputException {
        String text = decode(file, content, columns.charset());
        List<String> wanted = columns.names().values().stream().flatMap(List::stream).toList();
        List<CsvRecord> closest = List.of();
        List<Problem> broken = new ArrayList<>();
        for (char separator : columns.separators()) {
            List<CsvRecord> records = split(file, text, separator, broken);
            for (int i = 0; i < Math.min(records.size(), HEADING_WITHIN); i++) {
                if (headings(records.get(i)).containsAll(wanted)) {
                    return new RowReader(file, columns, headings(records.get(i)))
                            .read(records.subList(i + 1, records.size()));
                }
            }
            if (closest.isEmpty() || fields(records) > fields(closest)) {
                closest = records;
            }
        }
        broken.add(Problem.error(new Origin(file, 0, 0), noHeading(closest, wanted)));
        throw new BadInputException(broken.subList(0, 1));
    }

    private static String noHeading(List<CsvRecord> records, List<String> wanted) {
        String message =
                "no line has all the headings that the mapping names (\""
                        + String.join("\", \"", wanted)
                        + "\")";
        return records.isEmpty()
                ? message + "; the file is empty, perhaps it is being saved right now"
                : message
                        + "; line "
                        + records.get(0).getStartingLineNumber()
                        + " has \""
                        + String.join("\", \"", headings(records.get(0)))
                        + "\"";
    }

    private static int fields(List<CsvRecord> records) {
        return records.isEmpty() ? 0 : records.get(0).getFieldCount();
    }

    private static List<String> headings(CsvRecord record) {
        return record.getFields().stream().map(String::strip).toList();
    }

    /** Splits a text; returns nothing if it is not valid CSV with this separator. */
    private static List<CsvRecord> split(
            String file, String text, char separator, List<Problem> broken) {
        List<CsvRecord> records = new ArrayList<>();
        try {
            for (CsvRecord record :
                    CsvReader.builder()
                            .fieldSeparator(separator)
                            .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                            .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                            .ofCsvRecord(text)) {
                records.add(record);
                if (records.size() > MOST_ROWS) {
                    broken.add(
                            Problem.error(
                                    new Origin(file, MOST_ROWS, 0),
                                    "there are more than " + MOST_ROWS + " lines"));
                    return List.of();
                }
            }
        } catch (CsvParseException e) {
            broken.add(
                    Problem.error(
                            new Origin(file, Math.max(1, records.size()), 0),
                            "the lines from here on are not valid CSV: " + e.getMessage()));
            return List.of();
        }
        return records;
    }

    private static String decode(String file, byte[] content, Charset charset)
            throws BadInputException {
        Charset used = charset;
        int skip = 0;
        if (startsWith(content, 0xEF, 0xBB, 0xBF)) {
            used = StandardCharsets.UTF_8;
            skip = 3;
        } else if (startsWith(content, 0xFF, 0xFE)) {
            used = StandardCharsets.UTF_16LE;
            skip = 2;
        } else if (startsWith(content, 0xFE, 0xFF)) {
            used = StandardCharsets.UTF_16BE;
            skip = 2;
        }
        ByteBuffer in = ByteBuffer.wrap(content, skip, content.length - skip);
        try {
            return used.newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(in)
                    .toString();
        } catch (CharacterCodingException e) {
            int line = 1;
            for (int i = 0; i < in.position(); i++) {
                line += content[i] == '\n' ? 1 : 0;
            }
            throw new BadInputException(
                    Problem.error(
                            new Origin(file, line, 0),
                            "this is not "
                                    + used.name()
                                    + "; set the encoding of the file in the mapping, such as"
                                    + " \"charset: windows-1252\""));
        }
    }

    private static boolean startsWith(byte[] content, int... bytes) {
        for (int i = 0; i < bytes.length; i++) {
            if (i >= content.length || (content[i] & 0xFF) != bytes[i]) {
                return false;
            }
        }
        return true;
    }
}
