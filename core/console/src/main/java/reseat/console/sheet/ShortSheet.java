package reseat.console.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import reseat.model.Signal;
import reseat.sheet.Caution;
import reseat.sheet.Entry;
import reseat.sheet.Group;
import reseat.sheet.Head;
import reseat.sheet.Need;
import reseat.sheet.Sheet;
import reseat.sheet.Step;
import reseat.text.TimeText;

/**
 * A sheet on one page, for a person who has read the whole one. It leaves out how a step is done,
 * and where that is not enough puts the steps of a group into one paragraph; what still does not
 * fit is named at its end.
 */
public final class ShortSheet {

    /** Lines of a page. */
    static final int LINES = 60;

    private static final int LABEL = 10;

    /** How much of the steps is shown. */
    private enum Level {
        /** A line for each step. */
        LINES,
        /** A paragraph for each group. */
        PARAGRAPHS,
        /** Of the rebuild only what is put back. */
        BRIEF,
        /** Of all steps only what they are about, and of the cautions the warnings. */
        BARE,
        /** As bare, and cut off where the page ends. */
        CUT
    }

    private final Sheet sheet;
    private final Terminal terminal;

    private ShortSheet(Sheet sheet, Terminal terminal) {
        this.sheet = sheet;
        this.terminal = terminal;
    }

    /**
     * Renders a sheet on one page of 60 lines.
     *
     * @param terminal what it is shown on
     * @return the text, ending with a line feed
     */
    public static String render(Sheet sheet, Terminal terminal) {
        ShortSheet one = new ShortSheet(sheet, terminal);
        for (Level level : Level.values()) {
            String text = one.text(level);
            if (lines(text) <= LINES || level == Level.CUT) {
                return text;
            }
        }
        throw new IllegalStateException("the last level always fits");
    }

    private static int lines(String text) {
        return (int) text.lines().count();
    }

    private String text(Level level) {
        Paper paper = new Paper(terminal);
        head(paper, level.compareTo(Level.BARE) >= 0);
        String end = end();
        int room = LINES - lines(end);
        List<String> blocks = new ArrayList<>();
        blocks(blocks, "Take apart", sheet.teardown(), level);
        blocks(blocks, "Put back", sheet.rebuild(), level);
        StringBuilder text = new StringBuilder(paper.text());
        int used = lines(paper.text());
        for (String block : blocks) {
            used += lines(block);
            if (level == Level.CUT && used > room - 1) {
                return text + "... The whole sheet has the rest.\n" + end;
            }
            text.append(block);
        }
        return text + end;
    }

    private void head(Paper paper, boolean bare) {
        Head head = sheet.head();
        paper.rule("Short sheet: " + head.title(), '═');
        field(
                paper,
                "Goal",
                head.goal()
                        + ", "
                        + TimeText.range(head.leastMs(), head.mostMs())
                        + ". "
                        + power());
        for (Caution each : head.cautions()) {
            field(paper, each.signal().name(), each.brief());
        }
        for (Map.Entry<Signal, List<String>> each : Caution.reminders(head.hazards()).entrySet()) {
            if (each.getKey().compareTo(bare ? Signal.WARNING : Signal.CAUTION) <= 0) {
                field(paper, each.getKey().name(), String.join("; ", each.getValue()));
            }
        }
        need(paper, "Tools", Need.Kind.TOOL, Need.Kind.INSTRUMENT, Need.Kind.HEAT);
        need(paper, "Wear", Need.Kind.PROTECTION);
        if (!bare) {
            need(paper, "Fire", Need.Kind.FIRE);
        }
        need(paper, "Screws", Need.Kind.SCREWS_OUT, Need.Kind.NEW_SCREWS);
        need(paper, "Have", Need.Kind.USED_UP, Need.Kind.TARGET, Need.Kind.RUINED);
    }

    private String power() {
        return sheet.head().entries().stream()
                .dropWhile(entry -> !entry.label().equals("Power"))
                .takeWhile(entry -> List.of("Power", "").contains(entry.label()))
                .map(Entry::text)
                .collect(Collectors.joining(" "));
    }

    private void need(Paper paper, String label, Need.Kind... kinds) {
        String texts =
                sheet.needs().stream()
                        .filter(need -> List.of(kinds).contains(need.kind()))
                        .map(ShortSheet::need)
                        .collect(Collectors.joining(", "));
        if (!texts.isEmpty()) {
            field(paper, label, texts);
        }
    }

    /** Screws and spares by their ids and numbers: the whole sheet describes them. */
    private static String need(Need need) {
        String pieces = need.quantity().toPlainString() + " × " + need.id();
        return switch (need.kind()) {
            case SCREWS_OUT -> pieces;
            case NEW_SCREWS -> pieces + " new";
            case TARGET, RUINED ->
                    need.name() + need.number().map(number -> " (" + number + ")").orElse("");
            default -> need.text();
        };
    }

    private static void field(Paper paper, String label, String text) {
        paper.para(LABEL, label, text, Paper.Ink.HEADING);
    }

    private void blocks(List<String> blocks, String title, List<Group> groups, Level level) {
        if (groups.isEmpty()) {
            return;
        }
        Paper rule = new Paper(terminal);
        rule.rule(title, '─');
        blocks.add(rule.text());
        boolean brief =
                level.compareTo(Level.BARE) >= 0
                        || (level == Level.BRIEF && groups == sheet.rebuild());
        String power = "";
        String posture = "";
        for (Group group : groups) {
            Paper paper = new Paper(terminal);
            boolean work = group.tool().isPresent();
            String stands =
                    group.posture().equals(posture)
                            ? group.title().replaceFirst("^.* · ", "")
                            : group.title();
            String heading =
                    (work ? stands : group.title())
                            + (group.power().equals(power) ? "" : " · power " + group.power());
            power = group.power();
            posture = group.posture();
            if (level == Level.LINES) {
                paper.para(0, "", heading);
                group.steps().forEach(step -> paper.para(6, number(step), words(step)));
            } else {
                paper.para(
                        2,
                        "",
                        heading
                                + ": "
                                + group.steps().stream()
                                        .map(step -> brief ? brief(step) : inLine(step))
                                        .collect(Collectors.joining("; ")));
            }
            blocks.add(paper.text());
        }
    }

    private static String inLine(Step step) {
        return number(step).strip() + "\u00a0" + words(step);
    }

    /** Returns what a step is about, without how it is done. */
    private static String brief(Step step) {
        String words = words(step);
        int colon = words.indexOf(": ");
        return number(step).strip() + "\u00a0" + (colon > 0 ? words.substring(colon + 2) : words);
    }

    private static String number(Step step) {
        return String.format(Locale.ROOT, "%3d%s", step.number(), mark(step));
    }

    /** Returns a mark where the whole sheet has a caution about people before the step. */
    private static String mark(Step step) {
        boolean grave =
                step.cautions().stream().anyMatch(caution -> caution.signal() != Signal.NOTICE);
        return grave ? "!" : " ";
    }

    private static String words(Step step) {
        String text = step.text();
        int colon = text.indexOf(": ");
        if (step.kind() == Step.Kind.CHECK && colon > 0) {
            return text.substring(0, colon);
        }
        return text.endsWith(".") ? text.substring(0, text.length() - 1) : text;
    }

    private String end() {
        Paper paper = new Paper(terminal);
        paper.gap();
        paper.para(
                0,
                "",
                "! has a caution: read it in the whole sheet first, with how each step is done and"
                        + " what to check at the end. "
                        + sheet.head().notice());
        return paper.text();
    }
}
