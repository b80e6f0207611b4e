package reseat.console.report;

import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import reseat.check.CheckInfo;
import reseat.check.Finding;
import reseat.console.check.CheckFailure;
import reseat.console.check.Checked;
import reseat.console.check.Found;
import reseat.files.KnownFinding;
import reseat.spi.ToolkitVersion;

/**
 * Writes findings as JUnit XML: a suite for each file, with a test for reading it and one for each
 * check. It conforms to both common schemas, so it has neither a name at the root nor skipped
 * tests. Durations are 0, so that the same input gives the same text.
 */
public final class JunitReport {

    private static final String READING = "reading";

    private final Outcome outcome;
    private final XMLStreamWriter xml;

    private JunitReport(Outcome outcome, XMLStreamWriter xml) {
        this.outcome = outcome;
        this.xml = xml;
    }

    /** One test of a suite, with at most one failure or error. */
    private record Case(String name, String wrong, String message, String text) {
        static Case good(String name) {
            return new Case(name, "", "", "");
        }
    }

    /** Returns the findings as XML; those below the threshold and accepted ones fail no test. */
    public static String write(Outcome outcome) {
        StringWriter text = new StringWriter();
        try {
            XMLStreamWriter xml = XMLOutputFactory.newInstance().createXMLStreamWriter(text);
            new JunitReport(outcome, xml).suites();
            xml.close();
        } catch (XMLStreamException e) {
            throw new IllegalStateException("writing to memory failed", e);
        }
        return text + "\n";
    }

    private void suites() throws XMLStreamException {
        xml.writeStartDocument("UTF-8", "1.0");
        line(0);
        xml.writeStartElement("testsuites");
        int id = 0;
        for (Checked checked : outcome.report().checked()) {
            suite(checked.source(), id++, cases(checked), asides(checked));
        }
        if (!outcome.report().unusable().isEmpty()) {
            List<Case> cases = new ArrayList<>();
            for (CheckFailure failure : outcome.report().unusable()) {
                cases.add(new Case(failure.check(), "error", failure.what(), failure.toString()));
            }
            suite("checks", id, cases, "");
        }
        line(0);
        xml.writeEndElement();
        xml.writeEndDocument();
    }

    private List<Case> cases(Checked checked) {
        List<Case> cases = new ArrayList<>();
        List<String> problems = checked.problems().stream().map(Object::toString).toList();
        cases.add(
                checked.sound()
                        ? Case.good(READING)
                        : new Case(
                                READING,
                                "error",
                                "The file has errors.",
                                String.join("\n", problems)));
        if (checked.device().isEmpty()) {
            return cases;
        }
        for (CheckInfo info : outcome.report().checks()) {
            cases.add(oneCase(checked, info));
        }
        return cases;
    }

    private Case oneCase(Checked checked, CheckInfo info) {
        List<String> failures =
                checked.failures().stream()
                        .filter(failure -> failure.check().equals(info.id()))
                        .map(CheckFailure::toString)
                        .toList();
        if (!failures.isEmpty()) {
            return new Case(info.id(), "error", "The check failed.", String.join("\n", failures));
        }
        List<Found> counting =
                checked.found().stream()
                        .filter(found -> found.finding().check().equals(info.id()))
                        .filter(outcome::counts)
                        .toList();
        return counting.isEmpty()
                ? Case.good(info.id())
                : new Case(
                        info.id(),
                        "failure",
                        info.title() + ": " + Outcome.counted(counting),
                        String.join("\n", counting.stream().map(JunitReport::told).toList()));
    }

    private static String told(Found found) {
        Finding finding = found.finding();
        StringBuilder text = new StringBuilder();
        text.append(finding.at())
                .append(": ")
                .append(Outcome.word(finding.severity()))
                .append(": ")
                .append(finding.subject())
                .append(found.everywhere() ? "" : " in " + String.join(", ", found.variants()))
                .append("\n    ")
                .append(finding.message());
        finding.evidence().forEach(fact -> text.append("\n    - ").append(fact));
        return text.append("\n    Do: ").append(finding.remedy()).toString();
    }

    /** Returns the findings that fail no test. */
    private String asides(Checked checked) {
        List<String> lines = new ArrayList<>();
        if (checked.sound()) {
            checked.problems().forEach(problem -> lines.add(problem.toString()));
        }
        for (Found found : checked.found()) {
            List<KnownFinding> accepting = outcome.accepting(found);
            if (!accepting.isEmpty()) {
                KnownFinding entry = accepting.get(0);
                lines.add("accepted until " + entry.until() + ": " + entry.reason());
            }
            if (!outcome.counts(found)) {
                lines.add(told(found));
            }
        }
        return String.join("\n", lines);
    }

    private void suite(String name, int id, List<Case> cases, String asides)
            throws XMLStreamException {
        line(1);
        xml.writeStartElement("testsuite");
        attribute("name", token(name));
        attribute("package", "reseat");
        attribute("id", String.valueOf(id));
        attribute("timestamp", outcome.today() + "T00:00:00");
        attribute("hostname", "localhost");
        attribute("tests", String.valueOf(cases.size()));
        attribute("failures", String.valueOf(count(cases, "failure")));
        attribute("errors", String.valueOf(count(cases, "error")));
        attribute("time", "0");
        line(2);
        xml.writeStartElement("properties");
        line(3);
        xml.writeEmptyElement("property");
        attribute("name", "reseat");
        attribute("value", ToolkitVersion.current());
        line(2);
        xml.writeEndElement();
        for (Case each : cases) {
            test(name, each);
        }
        element("system-out", asides);
        element("system-err", "");
        line(1);
        xml.writeEndElement();
    }

    private static long count(List<Case> cases, String wrong) {
        return cases.stream().filter(each -> each.wrong.equals(wrong)).count();
    }

    private void test(String suite, Case each) throws XMLStreamException {
        line(2);
        xml.writeStartElement("testcase");
        attribute("name", token(each.name));
        attribute("classname", token(suite));
        attribute("time", "0");
        if (!each.wrong.isEmpty()) {
            line(3);
            xml.writeStartElement(each.wrong);
            attribute("type", token(each.name));
            attribute("message", each.message);
            xml.writeCharacters(clean(each.text));
            xml.writeEndElement();
            line(2);
        }
        xml.writeEndElement();
    }

    private void element(String name, String text) throws XMLStreamException {
        line(2);
        xml.writeStartElement(name);
        xml.writeCharacters(clean(text));
        xml.writeEndElement();
    }

    private void attribute(String name, String value) throws XMLStreamException {
        xml.writeAttribute(name, clean(value));
    }

    private void line(int level) throws XMLStreamException {
        xml.writeCharacters("\n" + "  ".repeat(level));
    }

    private static String token(String text) {
        return text.strip().replaceAll("\\s+", " ");
    }

    /** Removes characters that XML 1.0 cannot represent, even escaped. */
    private static String clean(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().map(c -> inXml(c) ? c : 0xFFFD).forEach(out::appendCodePoint);
        return out.toString();
    }

    private static boolean inXml(int c) {
        boolean surrogate = c >= 0xD800 && c < 0xE000;
        return c == '\t' || c == '\n' || (c >= 0x20 && !surrogate && c != 0xFFFE && c != 0xFFFF);
    }
}
