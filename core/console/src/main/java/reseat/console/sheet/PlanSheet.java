package reseat.console.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import reseat.model.Signal;
import reseat.sheet.Caution;
import reseat.sheet.Entry;
import reseat.sheet.Group;
import reseat.sheet.Sheet;
import reseat.sheet.Step;
import reseat.text.ListText;

/** A sheet as text that a person follows at the bench. */
public final class PlanSheet {

    private static final int LABEL = 14;
    private static final int SIGNAL = 18;
    private static final int DETAIL = 10;
    private static final int STEP = 8;

    private final Paper paper;

    private PlanSheet(Paper paper) {
        this.paper = paper;
    }

    /**
     * Renders a sheet.
     *
     * @param terminal what it is shown on
     * @return the text, ending with a line feed
     */
    public static String render(Sheet sheet, Terminal terminal) {
        Paper paper = new Paper(terminal);
        new PlanSheet(paper).write(sheet);
        return paper.text();
    }

    private void write(Sheet sheet) {
        head(sheet);
        if (!sheet.needs().isEmpty()) {
            paper.rule("Have ready", '─');
            sheet.needLines().forEach(this::field);
        }
        steps("Take apart", sheet.teardown());
        steps("Put back", sheet.rebuild());
        if (!sheet.checks().isEmpty()) {
            paper.rule("Before it leaves the bench", '═');
            sheet.checks().forEach(check -> paper.row(STEP, "    [ ]", check, ""));
        }
    }

    private void head(Sheet sheet) {
        paper.rule("Work sheet: " + sheet.head().title(), '═');
        sheet.head().entries().forEach(this::field);
        String label = "Hazards";
        for (Map.Entry<Signal, List<String>> each :
                Caution.reminders(sheet.head().hazards()).entrySet()) {
            paper.para(
                    LABEL + 9,
                    label + " ".repeat(LABEL - label.length()) + each.getKey().name(),
                    String.join("; ", each.getValue()));
            label = "";
        }
        field(new Entry("Unit", "No. ______________   Done by ______________   Date ____________"));
        paper.gap();
        paper.para(0, "", sheet.head().notice());
        if (!sheet.head().cautions().isEmpty()) {
            paper.gap();
            sheet.head().cautions().forEach(each -> message(each.signal(), each.text()));
        }
    }

    private void field(Entry entry) {
        paper.para(LABEL, entry.label(), entry.text(), Paper.Ink.HEADING);
    }

    private void steps(String title, List<Group> groups) {
        if (groups.isEmpty()) {
            return;
        }
        paper.rule(title, '═');
        for (Group group : groups) {
            paper.gap();
            String power = group.power().isEmpty() ? "" : " · power " + group.power();
            paper.row(0, "", group.title() + power, group.turn());
            group.steps().forEach(this::step);
        }
    }

    private void step(Step step) {
        step.cautions().forEach(each -> message(each.signal(), each.text()));
        List<String> again = new ArrayList<>();
        Caution.reminders(step.reminders())
                .forEach((signal, what) -> again.add(signal.name() + " " + ListText.and(what)));
        if (!again.isEmpty()) {
            paper.para(SIGNAL, "        again", String.join("; ", again));
        }
        paper.row(
                STEP,
                String.format(Locale.ROOT, "%3d [ ]", step.number()),
                step.text(),
                step.aside());
        step.details().forEach(detail -> paper.para(DETAIL, "        -", detail));
    }

    private void message(Signal signal, String words) {
        Paper.Ink ink =
                switch (signal) {
                    case DANGER, WARNING -> Paper.Ink.GRAVE;
                    case CAUTION -> Paper.Ink.ALERT;
                    case NOTICE -> Paper.Ink.HEADING;
                };
        paper.para(SIGNAL, "        " + signal.name(), words, ink);
    }
}
