package reseat.internal.loader;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import reseat.internal.loader.FamilyHead.Entry;
import reseat.internal.loader.FamilyHead.Section;
import reseat.spi.Question;

/** Makes templates of the sections of {@code family.ini}: each with the questions below it. */
final class TemplateReader {

    private final FamilyFiles files;
    private final FamilyProblems problems;

    TemplateReader(FamilyFiles files, FamilyProblems problems) {
        this.files = files;
        this.problems = problems;
    }

    List<TextTemplate> read(List<Section> sections) {
        Map<String, TextTemplate> templates = new LinkedHashMap<>();
        for (int i = 0; i < sections.size(); i++) {
            Section section = sections.get(i);
            if (section.kind().equals("question") && templates.isEmpty()) {
                problems.error(
                        section.at(),
                        "[question " + section.name() + "] must be below a [template ID]");
            } else if (section.kind().equals("template")) {
                TextTemplate template =
                        template(section, questions(sections.subList(i + 1, sections.size())));
                if (templates.putIfAbsent(template.id(), template) != null) {
                    problems.error(section.at(), "a second template " + template.id());
                }
            }
        }
        return List.copyOf(templates.values());
    }

    private TextTemplate template(Section section, List<Question> questions) {
        Entry text = problems.needed(section, "text");
        if (!text.value().isEmpty()) {
            problems.inside(text.at(), text.value());
        }
        return new TextTemplate(
                problems.id(new Entry(section.name(), section.at())),
                problems.needed(section, "title").value(),
                questions,
                files,
                text.value(),
                text.at());
    }

    /** Returns the questions before the next template. */
    private List<Question> questions(List<Section> sections) {
        List<Question> questions = new ArrayList<>();
        List<String> taken = new ArrayList<>();
        for (Section section : sections) {
            if (section.kind().equals("template")) {
                break;
            }
            if (section.kind().equals("question")) {
                String id = problems.id(new Entry(section.name(), section.at()));
                if (TemplateText.GIVEN.contains(id)) {
                    problems.error(section.at(), id + " is a built-in answer; choose another id");
                } else if (taken.contains(id)) {
                    problems.error(section.at(), "a second question " + id);
                }
                taken.add(id);
                question(id, section).ifPresent(questions::add);
            }
        }
        return questions;
    }

    private Optional<Question> question(String id, Section section) {
        int before = problems.count();
        String asks = problems.needed(section, "asks").value();
        Entry choices = section.entries().get("choices");
        List<String> all = choices == null ? List.of() : FamilyHead.items(choices.value());
        int from = 0;
        int to = 0;
        if (choices == null) {
            from = problems.number(problems.needed(section, "from"));
            to = problems.number(problems.needed(section, "to"));
        } else if (section.entries().containsKey("from") || section.entries().containsKey("to")) {
            problems.error(section.at(), "either choices, or from and to");
        }
        Entry usual = section.entries().get("usual");
        if (usual == null) {
            usual =
                    all.isEmpty()
                            ? problems.needed(section, "usual")
                            : new Entry(all.get(0), section.at());
        }
        try {
            return Optional.of(new Question(id, asks, all, from, to, usual.value()));
        } catch (IllegalArgumentException e) {
            if (problems.count() == before) {
                problems.error(usual.at(), String.valueOf(e.getMessage()));
            }
            return Optional.empty();
        }
    }
}
