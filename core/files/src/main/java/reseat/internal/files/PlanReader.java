package reseat.internal.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import reseat.files.PlanFile;
import reseat.model.Act;
import reseat.model.BadInputException;
import reseat.model.Goal;
import reseat.model.Origin;
import reseat.model.Rules;
import reseat.model.State;
import reseat.text.QuoteText;

/** Reads plans and states. Single use. */
public final class PlanReader {

    private static final Set<String> RULES =
            Set.of(
                    "forbiddenActs",
                    "forbiddenJoints",
                    "forbiddenParts",
                    "forbiddenTools",
                    "requiredActs",
                    "requiredJoints",
                    "requiredParts",
                    "requiredTools",
                    "permittedRuin");

    private static final List<String> STATE = List.of("released", "places", "prepared");

    private final Problems problems;

    private PlanReader(String file) {
        this.problems = new Problems(file);
    }

    /** Reads a plan; see {@code PlanFiles.readPlan}. */
    public static PlanFile plan(Path path) throws BadInputException {
        String file = path.toString();
        PlanReader reader = new PlanReader(file);
        Node root = reader.root(path, file);
        PlanFile plan = reader.plan(root);
        reader.finish();
        return plan;
    }

    /** Reads a state; see {@code PlanFiles.readState}. */
    public static State state(Path path) throws BadInputException {
        String file = path.toString();
        PlanReader reader = new PlanReader(file);
        Node root = reader.root(path, file);
        State state = State.closed();
        if (root instanceof Node.Fields fields) {
            state = reader.state(fields);
        } else {
            reader.problems.error(
                    root.at(),
                    "found "
                            + root.describe()
                            + ", expected a state: {\"released\": [...], \"places\": [[...]],"
                            + " \"prepared\": [...]}");
        }
        reader.finish();
        return state;
    }

    private Node root(Path path, String file) throws BadInputException {
        Optional<Node> root =
                Sources.load(path, file, problems)
                        .flatMap(content -> Trees.parse(file, content, problems));
        if (root.isEmpty()) {
            finish();
        }
        return root.orElseThrow();
    }

    private void finish() throws BadInputException {
        if (problems.hasErrors()) {
            throw new BadInputException(problems.sorted());
        }
    }

    private PlanFile plan(Node root) {
        if (root instanceof Node.Items list) {
            return new PlanFile(
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    State.closed(),
                    Rules.none(),
                    false,
                    acts(list),
                    OptionalLong.empty());
        }
        if (!(root instanceof Node.Fields fields) || fields.get("acts") == null) {
            problems.error(
                    root.at(),
                    "found "
                            + (root instanceof Node.Fields ? "no key \"acts\"" : root.describe())
                            + ", expected a plan (reseat plan --json writes one) or a list of act"
                            + " ids");
            return plan(new Node.Items(root.at(), List.of()));
        }
        String format = fields.text("format");
        if (format != null && !format.equals(PlanWriter.FORMAT)) {
            problems.error(
                    at(fields, "format"),
                    "format: found "
                            + QuoteText.of(format)
                            + ", expected "
                            + QuoteText.of(PlanWriter.FORMAT));
        }
        Node acts = fields.get("acts");
        Node start = fields.get("start");
        return new PlanFile(
                Optional.ofNullable(fields.text("device")),
                Optional.ofNullable(fields.text("variant")),
                goal(fields.get("goal")),
                start instanceof Node.Fields map ? state(map) : State.closed(),
                rules(fields.get("rules")),
                leaveOpen(fields),
                acts instanceof Node.Items list ? acts(list) : wrong(acts, "acts", "a list"),
                total(fields));
    }

    private <T> List<T> wrong(@Nullable Node node, String key, String expected) {
        if (node != null) {
            problems.error(
                    node.at(), key + ": found " + node.describe() + ", expected " + expected);
        }
        return List.of();
    }

    private static Origin at(Node.Fields fields, String key) {
        Node node = fields.get(key);
        return node == null ? fields.at() : node.at();
    }

    private boolean leaveOpen(Node.Fields fields) {
        Node node = fields.get("leaveOpen");
        if (node == null) {
            return false;
        }
        String text = fields.text("leaveOpen");
        if (text == null || !(text.equals("true") || text.equals("false"))) {
            problems.error(
                    node.at(), "leaveOpen: found " + node.describe() + ", expected true or false");
        }
        return "true".equals(text);
    }

    private OptionalLong total(Node.Fields fields) {
        String text = fields.text("totalMs");
        if (text == null) {
            return OptionalLong.empty();
        }
        try {
            return OptionalLong.of(Long.parseLong(text));
        } catch (NumberFormatException e) {
            problems.error(
                    at(fields, "totalMs"),
                    "totalMs: found " + QuoteText.of(text) + ", expected whole milliseconds");
            return OptionalLong.empty();
        }
    }

    private List<Act> acts(Node.Items list) {
        List<Act> acts = new ArrayList<>();
        for (Node node : list.items()) {
            Node id = node instanceof Node.Fields fields ? fields.get("id") : node;
            if (id instanceof Node.Scalar scalar && !scalar.isNull()) {
                try {
                    acts.add(Act.parse(scalar.text()));
                } catch (IllegalArgumentException e) {
                    problems.error(scalar.at(), String.valueOf(e.getMessage()));
                }
            } else {
                problems.error(
                        node.at(),
                        "found " + node.describe() + ", expected an act with its \"id\"");
            }
        }
        return acts;
    }

    private Optional<Goal> goal(@Nullable Node node) {
        if (node == null) {
            return Optional.empty();
        }
        if (node instanceof Node.Fields fields) {
            String kind = String.valueOf(fields.text("kind"));
            List<String> parts = texts(fields.get("parts"), "parts");
            String joint = fields.text("joint");
            if (kind.equals("free") && !parts.isEmpty()) {
                return Optional.of(new Goal.Free(parts));
            }
            if (kind.equals("reach") && joint != null) {
                return Optional.of(new Goal.Reach(joint));
            }
            if (kind.equals("teardown")) {
                return Optional.of(new Goal.Teardown());
            }
        }
        problems.error(
                node.at(),
                "goal: expected {\"kind\": \"free\", \"parts\": [...]}, {\"kind\": \"reach\","
                        + " \"joint\": ...} or {\"kind\": \"teardown\"}");
        return Optional.empty();
    }

    private State state(Node.Fields fields) {
        for (Map.Entry<String, Node.Entry> each : fields.entries().entrySet()) {
            if (!STATE.contains(each.getKey())) {
                problems.error(
                        each.getValue().keyAt(),
                        "a state has the keys \"released\", \"places\" and \"prepared\", not "
                                + QuoteText.of(each.getKey()));
            }
        }
        Set<String> released = new LinkedHashSet<>(texts(fields.get("released"), "released"));
        List<Set<String>> places = new ArrayList<>();
        if (fields.get("places") instanceof Node.Items list) {
            for (Node place : list.items()) {
                places.add(new LinkedHashSet<>(texts(place, "places")));
            }
        } else {
            wrong(fields.get("places"), "places", "a list of lists of parts");
        }
        Set<String> prepared = new LinkedHashSet<>(texts(fields.get("prepared"), "prepared"));
        return new State(released, places, prepared);
    }

    private Rules rules(@Nullable Node node) {
        Rules rules = Rules.none();
        if (!(node instanceof Node.Fields fields)) {
            return rules;
        }
        for (Map.Entry<String, Node.Entry> each : fields.entries().entrySet()) {
            String key = each.getKey();
            List<String> ids = texts(each.getValue().value(), key);
            rules =
                    switch (key) {
                        case "forbiddenActs" -> rules.forbidActs(ids);
                        case "forbiddenJoints" -> rules.forbidJoints(ids);
                        case "forbiddenParts" -> rules.forbidParts(ids);
                        case "forbiddenTools" -> rules.forbidTools(ids);
                        case "requiredActs" -> rules.requireActs(ids);
                        case "requiredJoints" -> rules.requireJoints(ids);
                        case "requiredParts" -> rules.requireParts(ids);
                        case "requiredTools" -> rules.requireTools(ids);
                        case "permittedRuin" -> rules.permitRuin(ids);
                        default -> rules;
                    };
            if (!RULES.contains(key)) {
                problems.error(
                        each.getValue().keyAt(),
                        "rules: unknown key "
                                + QuoteText.of(key)
                                + "."
                                + Words.hint(key, RULES.stream().sorted().toList(), "rules"));
            }
        }
        return rules;
    }

    private List<String> texts(@Nullable Node node, String key) {
        if (node == null) {
            return List.of();
        }
        if (!(node instanceof Node.Items list)) {
            return wrong(node, key, "a list of ids");
        }
        List<String> texts = new ArrayList<>();
        for (Node each : list.items()) {
            if (each instanceof Node.Scalar scalar && !scalar.isNull()) {
                texts.add(scalar.text());
            } else {
                problems.error(each.at(), key + ": found " + each.describe() + ", expected an id");
            }
        }
        return texts;
    }
}
