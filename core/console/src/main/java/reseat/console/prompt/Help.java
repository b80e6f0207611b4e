package reseat.console.prompt;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import reseat.check.CheckInfo;
import reseat.script.ApiIndex;
import reseat.script.Bench;
import reseat.text.Nearest;

/** Lists the functions and commands, and explains names. */
final class Help {

    private static final int MOST = 6;
    private static final String BENCH = Bench.class.getName();

    private final Console console;
    private final Ink ink;
    private final ApiIndex index = ApiIndex.standard();

    Help(Console console) {
        this.console = console;
        this.ink = new Ink(console.terminal().colour());
    }

    /** Returns an overview. */
    String overview() {
        List<String> lines = new ArrayList<>();
        lines.add(ink.strong("Functions, the same in JavaScript and in Java"));
        index.membersOf(BENCH).stream()
                .filter(entry -> !entry.signature().startsWith("new "))
                .forEach(entry -> lines.add(row(call(entry), ApiWords.shortened(entry.summary()))));
        lines.add("");
        lines.add(ink.strong("Commands, each on a line of its own"));
        Words.all().forEach(word -> lines.add(row(word.usage(), word.does())));
        lines.add("");
        lines.add(ink.strong("Keys"));
        lines.add(row("Tab", "completes what you type; in quotes: files, parts, joints, checks"));
        lines.add(row("Esc h", "explains the name at the cursor"));
        lines.add(row("Ctrl-R", "searches the history, earlier sessions included"));
        lines.add(row("Ctrl-C", "stops running code; clears the line"));
        lines.add("");
        lines.add("Values without a name are kept as r1, r2, ... and, like your own names, are");
        lines.add("there in both languages. help NAME tells more: help plan, help Device.parts");
        apiPage()
                .ifPresent(
                        page -> {
                            lines.add("help api shows every type and member, from");
                            lines.add(page.toString());
                        });
        return String.join("\n", lines);
    }

    private String row(String left, String right) {
        int column = 29;
        int room = Math.max(20, console.terminal().width() - column - 2);
        List<String> parts = Block.wrapped(right, room);
        StringBuilder text = new StringBuilder("  ");
        text.append(ink.name(left));
        if (left.length() >= column) {
            text.append("\n  ").append(" ".repeat(column));
        } else {
            text.append(" ".repeat(column - left.length()));
        }
        return text.append(String.join("\n" + " ".repeat(column + 2), parts)).toString();
    }

    /** Returns help on a name or a value. */
    String of(@Nullable Object thing) {
        if (thing == null) {
            return "null is no value.";
        }
        return thing instanceof String name ? ofName(name.strip()) : ofType(thing.getClass());
    }

    private String ofName(String given) {
        String name = given.replaceAll("^[\"']|[\"']$|\\(.*\\)$", "");
        Optional<CheckInfo> check =
                console.bench().checks().stream().filter(c -> c.id().equals(name)).findFirst();
        if (check.isPresent()) {
            return new View(console.terminal()).of(check.get());
        }
        List<ApiIndex.Entry> functions = index.member(BENCH, name);
        if (!functions.isEmpty()) {
            return entries(functions);
        }
        Optional<Words.Word> word =
                Words.all().stream().filter(each -> each.text().equals(name)).findFirst();
        if (word.isPresent()) {
            return row(word.get().usage(), word.get().does());
        }
        Object value = console.session().values().get(name);
        if (value != null) {
            return name
                    + " is "
                    + article(Plain.typeName(value))
                    + ".\n\n"
                    + ofType(value.getClass());
        }
        int dot = name.indexOf('.');
        Object held = dot < 0 ? null : console.session().values().get(name.substring(0, dot));
        if (held != null) {
            Class<?> known = documented(held.getClass());
            if (known != null) {
                return ofName(shortName(known) + name.substring(dot));
            }
        }
        Optional<Path> page = name.equals("api") ? apiPage() : Optional.empty();
        if (page.isPresent()) {
            return read(page.get());
        }
        List<ApiIndex.Entry> found = index.find(name);
        List<ApiIndex.Entry> types = found.stream().filter(e -> e.member().isEmpty()).toList();
        if (!types.isEmpty()) {
            return type(types.get(0));
        }
        if (found.size() > MOST) {
            return ink.strong(name + " is a member of several types")
                    + "\n"
                    + String.join(
                            "\n",
                            found.stream().map(e -> row(e.shortName(), e.summary())).toList());
        }
        return found.isEmpty() ? unknown(name) : entries(found);
    }

    /** Returns the API page that the distribution carries; empty where there is none. */
    private static Optional<Path> apiPage() {
        String home = System.getProperty("reseat.home", "");
        return home.isEmpty()
                ? Optional.empty()
                : Optional.of(Path.of(home, "docs", "script-api.md")).filter(Files::isReadable);
    }

    private static String read(Path page) {
        try {
            return Files.readString(page, StandardCharsets.UTF_8).stripTrailing();
        } catch (IOException e) {
            return "Cannot read " + page + ": " + e.getMessage();
        }
    }

    private String unknown(String name) {
        List<String> known =
                index.all().stream()
                        .flatMap(e -> List.of(e.shortName(), e.member()).stream())
                        .toList();
        return "Nothing here is called \"" + name + "\"" + Nearest.aside(name, known) + ".";
    }

    private static String article(String noun) {
        return ("AEIOU".indexOf(noun.charAt(0)) >= 0 ? "an " : "a ") + noun;
    }

    private String ofType(Class<?> type) {
        Class<?> known = documented(type);
        return known == null
                ? type.getSimpleName()
                        + " is a type of Java or of yours; its members follow after a dot and Tab."
                : type(index.member(String.valueOf(known.getCanonicalName()), "").get(0));
    }

    private @Nullable Class<?> documented(Class<?> type) {
        List<Class<?>> open = new ArrayList<>(List.of(type));
        while (!open.isEmpty()) {
            Class<?> each = open.remove(0);
            if (!index.member(String.valueOf(each.getCanonicalName()), "").isEmpty()) {
                return each;
            }
            if (each.getSuperclass() != null) {
                open.add(each.getSuperclass());
            }
            open.addAll(List.of(each.getInterfaces()));
        }
        return null;
    }

    private String shortName(Class<?> type) {
        return index.member(String.valueOf(type.getCanonicalName()), "").get(0).shortName();
    }

    private String type(ApiIndex.Entry type) {
        List<String> lines = new ArrayList<>();
        lines.add(ink.strong(type.shortName()) + ink.quiet("  " + type.signature()));
        lines.addAll(wrapped(type.text()));
        lines.add("");
        for (ApiIndex.Entry member : index.membersOf(type.type())) {
            lines.add(row(call(member), member.summary()));
        }
        return String.join("\n", lines);
    }

    /** The signature without the return type, which the description gives. */
    private static String call(ApiIndex.Entry entry) {
        int open = entry.signature().indexOf('(');
        return open < 0
                ? entry.member()
                : entry.member() + names(entry.signature().substring(open));
    }

    private static String names(String parameters) {
        String bare = parameters.replaceAll("<[^<>]*>", "").replaceAll("<[^<>]*>", "");
        return bare.replaceAll("(\\(|, )[^ ,()]+ ", "$1");
    }

    private String entries(List<ApiIndex.Entry> entries) {
        List<String> lines = new ArrayList<>();
        for (ApiIndex.Entry entry : entries) {
            lines.add(
                    (lines.isEmpty() ? "" : "\n")
                            + ink.strong(entry.signature())
                            + (entry.type().equals(BENCH)
                                    ? ""
                                    : ink.quiet("  of " + entry.shortType())));
            lines.addAll(wrapped(entry.text()));
        }
        return String.join("\n", lines);
    }

    private List<String> wrapped(String text) {
        List<String> lines = new ArrayList<>();
        text.lines()
                .forEach(
                        line ->
                                Block.wrapped(line, console.terminal().width() - 2)
                                        .forEach(part -> lines.add("  " + part)));
        return lines;
    }

    /** Returns the names that the user has defined. */
    String names(Map<String, Object> values) {
        if (values.isEmpty()) {
            return "Nothing yet.";
        }
        View view = new View(console.terminal());
        List<Map<String, Object>> rows = new ArrayList<>();
        values.forEach(
                (name, value) -> {
                    Map<String, Object> row = new LinkedHashMap<>();
                    row.put("name", name);
                    row.put("what", view.title(value));
                    row.put("value", view.cell(value));
                    rows.add(row);
                });
        return new Grid(console.terminal(), ink).of(rows);
    }
}
