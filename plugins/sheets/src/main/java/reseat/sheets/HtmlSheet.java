package reseat.sheets;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashSet;
import java.util.Set;
import reseat.model.ConsumableUse;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.plan.Plan;
import reseat.plan.PlanNotes;
import reseat.plan.Rebuild;
import reseat.plan.SpareNeed;
import reseat.plan.Tally;
import reseat.spi.Output;

/** A work sheet as a page to print. */
final class HtmlSheet implements Output {

    private static final String STYLE =
            """
            body { font: 11pt/1.4 Georgia, "DejaVu Serif", serif; color: #000; background: #fff;
              max-width: 46em; margin: 1.5em auto; padding: 0 1em; }
            h1 { font-size: 1.5em; border-bottom: 3px double #000; padding-bottom: .2em; }
            h2 { font-size: 1.2em; border-bottom: 1px solid #000; margin-top: 1.8em; }
            h3 { font-size: 1em; font-style: italic; font-weight: normal; margin: 1.2em 0 .3em; }
            table { border-collapse: collapse; width: 100%; }
            th { text-align: left; vertical-align: top; font-weight: normal; font-style: italic;
              width: 8em; padding: .15em .5em .15em 0; }
            td { padding: .15em 0; }
            .step { break-inside: avoid; margin: .5em 0; padding-left: 3.2em; position: relative; }
            .no { position: absolute; left: 0; }
            .box { display: inline-block; width: .8em; height: .8em; border: 1px solid #000;
              margin-left: .4em; vertical-align: -.05em; }
            .step p { margin: .15em 0; }
            .detail { font-size: .92em; padding-left: 1em; }
            .signal { border: 1px solid #000; padding: .2em .5em; margin: .3em 0; font-size: .95em; }
            .signal b { letter-spacing: .06em; margin-right: .6em; }
            .danger, .warning { border-width: 3px; }
            .notice { border-style: dotted; }
            .first { font-size: .95em; }
            @media print { body { margin: 0; max-width: none; } }
            """;

    @Override
    public String id() {
        return "html-sheet";
    }

    @Override
    public String title() {
        return "work sheet to print";
    }

    @Override
    public String mediaType() {
        return "text/html";
    }

    @Override
    public void write(Plan plan, OutputStream to) throws IOException {
        to.write(page(plan).getBytes(StandardCharsets.UTF_8));
    }

    private static String page(Plan plan) {
        Device device = plan.request().device();
        Words words = new Words(device);
        Rebuild rebuild = Rebuild.of(plan);
        PlanNotes notes = PlanNotes.of(plan, rebuild);
        String title = device.name() + ": " + words.goal(plan.request().goal());
        Html html = new Html();
        html.raw("<!DOCTYPE html>")
                .raw("<html lang=\"en\"><head><meta charset=\"utf-8\">")
                .element("title", "", title)
                .raw("<style>\n" + STYLE + "</style></head><body>")
                .element("h1", "", title);
        head(html, words, plan, rebuild);
        Cautions cautions = new Cautions(device, html);
        Steps steps = new Steps(html, words, cautions);
        html.element("h2", "", "Take apart");
        steps.teardown(plan, notes.teardown());
        html.element("h2", "", "Put back");
        steps.rebuild(rebuild, notes.rebuild());
        html.element("h2", "", "Before it leaves the bench").raw("<table>");
        for (Tally.Total total : Tally.of(plan, rebuild).totals()) {
            html.row(
                    "Screws " + total.type(),
                    total.out().size() + " out, " + total.in().size() + " in");
        }
        html.row("Unit, date, name", "").raw("</table></body></html>");
        return html.text();
    }

    private static void head(Html html, Words words, Plan plan, Rebuild rebuild) {
        Device device = plan.request().device();
        html.element(
                        "p",
                        "first",
                        "The maker's service document and the local codes come first: where they"
                                + " differ from this page, they hold. The work belongs to people"
                                + " qualified for it. Order and times are computed from a"
                                + " description of the device and are estimates. If the unit does"
                                + " not look as the page says, stop.")
                .raw("<table>")
                .row(
                        "Device",
                        (device.maker().isEmpty() ? "" : device.maker() + ", ")
                                + device.id()
                                + device.variant().map(v -> ", variant " + v).orElse(""))
                .row(
                        "Time",
                        Words.time(plan.totalMs())
                                + ", without set-ups and waiting on the way back")
                .row(
                        "Proof",
                        plan.proved()
                                ? "no valid way costs less"
                                : "not proved; a better way could save at most "
                                        + Words.time(plan.totalMs() - plan.lowerBoundMs()))
                .raw("</table>")
                .element("h2", "", "Have ready")
                .raw("<table>");
        Set<String> tools = new LinkedHashSet<>();
        for (CostedAct act : plan.acts()) {
            if (!act.tool().equals(device.hand())) {
                tools.add(words.tool(act.tool()));
            }
        }
        html.row("Tools", tools.isEmpty() ? "bare hands" : String.join(", ", tools));
        for (Tally.Total total : Tally.of(plan, rebuild).totals()) {
            html.row(
                    "Tray " + total.type(),
                    total.out().size()
                            + " \u00d7 "
                            + words.screw(total.type())
                            + ": "
                            + words.joints(total.out()));
        }
        for (ConsumableUse use : rebuild.consumables()) {
            html.row("Used up", words.use(use));
        }
        for (SpareNeed need : rebuild.spares()) {
            boolean screw = need.reason() == SpareNeed.Reason.LOCKING_PATCH;
            html.row(
                    "Spare",
                    (screw ? need.count() + " \u00d7 " + words.screw(need.id()) : need.name())
                            + need.number().map(n -> ", no. " + n).orElse(", not sold")
                            + ": "
                            + words.reason(need));
        }
        html.raw("</table>");
    }
}
