package reseat.stock.csv;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import reseat.stock.Reservation;
import reseat.stock.StockItem;

/** One line of a journal. */
sealed interface Entry {

    /**
     * Something was reserved.
     *
     * @param request the request
     * @param kinds the kind of each pick, by line
     */
    record Reserved(Reservation.Request request, Map<String, StockItem.Kind> kinds)
            implements Entry {}

    /**
     * A reservation was used.
     *
     * @param id its id
     * @param seen the quantities of its lines in the spreadsheet at that moment
     */
    record Used(String id, Map<String, BigDecimal> seen) implements Entry {}

    /** A reservation was released. */
    record Released(String id) implements Entry {}

    /** The spreadsheet includes all use of a line so far. */
    record Settled(String item) implements Entry {}

    /** Returns the entry as JSON in one line. */
    default String json() {
        StringWriter text = new StringWriter();
        try (JsonGenerator out = new JsonFactory().createGenerator(text)) {
            out.writeStartObject();
            if (this instanceof Reserved reserved) {
                out.writeStringField("reserve", reserved.request.id());
                out.writeStringField("job", reserved.request.job());
                out.writeArrayFieldStart("picks");
                for (Reservation.Pick pick : reserved.request.picks()) {
                    StockItem.Kind kind =
                            reserved.kinds.getOrDefault(pick.item(), StockItem.Kind.PART);
                    out.writeStartArray();
                    out.writeString(pick.item());
                    out.writeString(pick.quantity().toPlainString());
                    out.writeString(kind.name().toLowerCase(Locale.ROOT));
                    out.writeEndArray();
                }
                out.writeEndArray();
            } else if (this instanceof Used used) {
                out.writeStringField("use", used.id);
                out.writeObjectFieldStart("seen");
                for (Map.Entry<String, BigDecimal> each : used.seen.entrySet()) {
                    out.writeStringField(each.getKey(), each.getValue().toPlainString());
                }
                out.writeEndObject();
            } else if (this instanceof Released released) {
                out.writeStringField("release", released.id);
            } else {
                out.writeStringField("settle", ((Settled) this).item);
            }
            out.writeEndObject();
        } catch (IOException e) {
            throw new IllegalStateException("writing to memory failed", e);
        }
        return text.toString();
    }

    /**
     * Reads an entry.
     *
     * @throws IOException if it is invalid
     */
    static Entry parse(String json) throws IOException {
        try (JsonParser in = new JsonFactory().createParser(json)) {
            expect(in, JsonToken.START_OBJECT);
            String what = String.valueOf(in.nextFieldName());
            expect(in, JsonToken.VALUE_STRING);
            String id = in.getText();
            Entry entry =
                    switch (what) {
                        case "reserve" -> reserved(id, in);
                        case "use" -> used(id, in);
                        case "release" -> new Released(id);
                        case "settle" -> new Settled(id);
                        default -> throw new IOException("unknown entry \"" + what + "\"");
                    };
            expect(in, JsonToken.END_OBJECT);
            return entry;
        } catch (IllegalArgumentException e) {
            throw new IOException(e.getMessage(), e);
        }
    }

    private static Entry reserved(String id, JsonParser in) throws IOException {
        field(in, "job");
        expect(in, JsonToken.VALUE_STRING);
        String job = in.getText();
        field(in, "picks");
        expect(in, JsonToken.START_ARRAY);
        List<Reservation.Pick> picks = new ArrayList<>();
        Map<String, StockItem.Kind> kinds = new LinkedHashMap<>();
        while (in.nextToken() == JsonToken.START_ARRAY) {
            String item = String.valueOf(in.nextTextValue());
            picks.add(
                    new Reservation.Pick(item, new BigDecimal(String.valueOf(in.nextTextValue()))));
            kinds.put(
                    item,
                    Columns.kindNamed(String.valueOf(in.nextTextValue()))
                            .orElseThrow(() -> new IOException("the kind is missing")));
            expect(in, JsonToken.END_ARRAY);
        }
        return new Reserved(new Reservation.Request(id, job, picks), kinds);
    }

    private static Entry used(String id, JsonParser in) throws IOException {
        field(in, "seen");
        expect(in, JsonToken.START_OBJECT);
        Map<String, BigDecimal> seen = new LinkedHashMap<>();
        while (in.nextToken() == JsonToken.FIELD_NAME) {
            String item = in.getText();
            seen.put(item, new BigDecimal(String.valueOf(in.nextTextValue())));
        }
        return new Used(id, seen);
    }

    private static void field(JsonParser in, String name) throws IOException {
        if (!name.equals(in.nextFieldName())) {
            throw new IOException("\"" + name + "\" is missing");
        }
    }

    private static void expect(JsonParser in, JsonToken token) throws IOException {
        if (in.nextToken() != token) {
            throw new IOException("found " + in.currentToken() + ", expected " + token);
        }
    }
}
