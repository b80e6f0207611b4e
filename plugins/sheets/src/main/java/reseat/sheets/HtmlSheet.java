package reseat.sheets;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import reseat.model.Signal;
import reseat.sheet.Caution;
import reseat.sheet.Entry;
import reseat.sheet.Group;
import reseat.sheet.Head;
import reseat.sheet.Sheet;
import reseat.sheet.Step;
import reseat.spi.Output;
import reseat.text.ListText;

/** A work sheet as a page to print. */
final class HtmlSheet implements Output {

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
    public String fileName() {
        return "sheet.html";
    }

    @Override
    public void write(Content content, Place place) throws IOException {
        byte[] page = page(content.sheet()).getBytes(StandardCharsets.UTF_8);
        try (OutputStream to = place.single()) {
            to.write(page);
        }
    }

    private static String page(Sheet sheet) throws IOException {
        Head head = sheet.head();
        String title = head.title() + ": " + head.goal();
        Html html = new Html();
        html.raw("<!DOCTYPE html>")
                .raw("<html lang=\"en\"><head><meta charset=\"utf-8\">")
                .raw("<meta name=\"viewport\" content=\"width=device-width\">")
                .element("title", "", title)
                .raw("<style>\n" + style() + "</style></head><body>")
                .element("h1", "", title);
        head(html, head);
        if (!sheet.needs().isEmpty()) {
            html.element("h2", "", "Have ready").raw("<table>");
            rows(html, sheet.needLines());
            html.raw("</table>");
        }
        steps(html, "Take apart", sheet.teardown());
        steps(html, "Put back", sheet.rebuild());
        if (!sheet.checks().isEmpty()) {
            html.element("h2", "", "Before it leaves the bench").raw("<ul class=\"checks\">");
            sheet.checks().forEach(check -> html.boxed("li", check));
            html.raw("</ul>");
        }
        return html.raw("</body></html>").text();
    }

    private static void head(Html html, Head head) {
        html.raw("<table>");
        rows(html, head.entries());
        String label = "Hazards";
        for (Map.Entry<Signal, List<String>> each : Caution.reminders(head.hazards()).entrySet()) {
            html.raw("<tr>")
                    .element("th", "", label)
                    .raw("<td>")
                    .element("b", "word", each.getKey().name())
                    .text(String.join("; ", each.getValue()))
                    .raw("</td></tr>");
            label = "";
        }
        html.raw("<tr><th>Unit</th><td class=\"blank\"><span>No.</span><span>Done by</span>")
                .raw("<span>Date</span></td></tr></table>")
                .element("p", "notice-text", head.notice());
        head.cautions().forEach(each -> message(html, each));
    }

    private static void message(Html html, Caution each) {
        html.raw("<p class=\"signal " + each.signal().name().toLowerCase(Locale.ROOT) + "\">")
                .element("b", "word", each.signal().name())
                .element("span", "", each.text())
                .raw("</p>");
    }

    private static void rows(Html html, List<Entry> entries) {
        entries.forEach(entry -> html.row(entry.label(), entry.text()));
    }

    private static void steps(Html html, String title, List<Group> groups) {
        if (groups.isEmpty()) {
            return;
        }
        html.element("h2", "", title);
        for (Group group : groups) {
            html.raw("<h3>").element("span", "", group.title());
            if (!group.power().isEmpty()) {
                html.element("span", "power", "Power " + group.power());
            }
            if (!group.turn().isEmpty()) {
                html.element("span", "aside", group.turn());
            }
            html.raw("</h3>");
            group.steps().forEach(step -> step(html, step));
        }
    }

    private static void step(Html html, Step step) {
        html.raw("<div class=\"step\">");
        step.cautions().forEach(each -> message(html, each));
        if (!step.reminders().isEmpty()) {
            html.raw("<p class=\"again\">again");
            Caution.reminders(step.reminders())
                    .forEach(
                            (signal, what) ->
                                    html.element("b", "word", signal.name())
                                            .text(ListText.and(what)));
            html.raw("</p>");
        }
        html.raw("<div class=\"do\"><span class=\"no\">" + step.number() + "</span>")
                .boxed("p", step.text());
        if (!step.aside().isEmpty()) {
            html.element("span", "aside", step.aside());
        }
        html.raw("</div>");
        if (!step.details().isEmpty()) {
            html.raw("<ul>");
            step.details().forEach(detail -> html.element("li", "", detail));
            html.raw("</ul>");
        }
        html.raw("</div>");
    }

    private static String style() throws IOException {
        try (InputStream in = HtmlSheet.class.getResourceAsStream("sheet.css")) {
            if (in == null) {
                throw new IllegalStateException("the style sheet is missing from the plugin");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
