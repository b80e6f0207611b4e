package reseat.script;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * The documentation of the exported types and their members. Names are the same in Java and
 * JavaScript. Generated from the Javadoc when the toolkit is built. Immutable.
 */
public final class ApiIndex {

    private static final class Standard {
        private static final ApiIndex INDEX = read();
    }

    private final List<Entry> entries;

    private ApiIndex(List<Entry> entries) {
        this.entries = List.copyOf(entries);
    }

    /** Returns the index of this toolkit; read at first use. */
    public static ApiIndex standard() {
        return Standard.INDEX;
    }

    private static ApiIndex read() {
        List<Entry> entries = new ArrayList<>();
        try (InputStream in = ApiIndex.class.getResourceAsStream("api.tsv")) {
            if (in == null) {
                return new ApiIndex(List.of());
            }
            BufferedReader reader = new BufferedReader(new InputStreamReader(in, UTF_8));
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                String[] cells = line.split("\t", -1);
                entries.add(new Entry(cells[0], cells[1], cells[2], cells[3].replace("\\n", "\n")));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new ApiIndex(entries);
    }

    /** Returns all entries, by type and member. */
    public List<Entry> all() {
        return entries;
    }

    /**
     * Returns the entries that a name may mean: a type, a member of any type, or {@code
     * Type.member}.
     *
     * @param name a short or a full name
     */
    public List<Entry> find(String name) {
        return entries.stream().filter(entry -> entry.isCalled(name)).toList();
    }

    /**
     * Returns the members of a type.
     *
     * @param type its full name, nested types separated by dots
     */
    public List<Entry> membersOf(String type) {
        return of(type).filter(entry -> !entry.member().isEmpty()).toList();
    }

    /**
     * Returns the documentation of a member of a type; empty if there is none.
     *
     * @param type full name of the type
     * @param member name of the member; empty for the type itself
     */
    public List<Entry> member(String type, String member) {
        return of(type).filter(entry -> entry.member().equals(member)).toList();
    }

    private Stream<Entry> of(String type) {
        return entries.stream().filter(entry -> entry.type().equals(type));
    }

    /**
     * One type or one member of a type.
     *
     * @param type full name of the type, nested types separated by dots
     * @param member name of the member; empty for the type itself
     * @param signature how it is declared, types by their short names
     * @param text its documentation, with a line {@code name: ...} for each parameter; may be empty
     */
    public record Entry(String type, String member, String signature, String text) {

        /** Returns the short name: {@code Act.Release}, {@code Device.parts}. */
        public String shortName() {
            return shortType() + (member.isEmpty() ? "" : "." + member);
        }

        /** Returns the name of the type without its package. */
        public String shortType() {
            StringBuilder name = new StringBuilder();
            for (String word : type.split("\\.", -1)) {
                if (!word.isEmpty() && Character.isUpperCase(word.charAt(0))) {
                    name.append(name.isEmpty() ? "" : ".").append(word);
                }
            }
            return name.toString();
        }

        /** Returns the first sentence of the text; may be empty. */
        public String summary() {
            String first = text.lines().findFirst().orElse("");
            int end = first.indexOf(". ");
            return end < 0 ? first : first.substring(0, end + 1);
        }

        private boolean isCalled(String name) {
            boolean short_ = shortName().equalsIgnoreCase(name);
            boolean full = (member.isEmpty() ? type : type + "." + member).equals(name);
            return short_
                    || full
                    || member.equals(name)
                    || (member.isEmpty()
                            && shortType()
                                    .toLowerCase(Locale.ROOT)
                                    .endsWith("." + name.toLowerCase(Locale.ROOT)));
        }
    }
}
