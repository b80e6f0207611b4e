package reseat.graph;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import reseat.internal.graph.Compiled;
import reseat.model.Goal;
import reseat.model.Joint;
import reseat.model.Power;
import reseat.model.Rules;
import reseat.model.Way;
import reseat.text.ListText;

/** Explains in sentences why a goal cannot be reached, from the goal down to the cause. */
final class Obstacles {

    private final StepGraph graph;
    private final Net net;
    private final StepConditions steps;
    private final Compiled c;
    private final Rules rules;
    private final Failures failures;
    private final List<String> lines = new ArrayList<>();
    private final Set<Object> told = new HashSet<>();
    private final Set<Object> open = new LinkedHashSet<>();

    Obstacles(StepGraph graph) {
        this.graph = graph;
        net = graph.net;
        steps = graph.steps;
        c = net.c;
        rules = net.question.rules;
        failures = new Failures(graph);
    }

    Optional<Blocked> explain() {
        Goal goal = graph.goal().orElse(null);
        if (goal instanceof Goal.Reach reach) {
            int node = c.node(reach.joint());
            if (node < 0) {
                return alone(goal + " is impossible: " + reach.joint() + " is already released");
            }
            if (c.options[node].length == 0) {
                return alone(reach.joint() + " cannot be reached: " + shut(node, "it"));
            }
        }
        if (!net.impossible(net.goalNeeds)) {
            return Optional.empty();
        }
        Optional<Fact> worst =
                graph.goalFacts().stream()
                        .filter(failures::fails)
                        .min(Comparator.comparing(failures::rank));
        worst.ifPresent(
                fact -> {
                    lines.add(head(fact));
                    tell(fact);
                });
        if (worst.isEmpty()) {
            Arrays.stream(net.question.toMove())
                    .filter(failures::partFails)
                    .limit(1)
                    .forEach(
                            part -> {
                                lines.add(c.partIds[part] + " is required to be moved");
                                tellPart(part);
                            });
        }
        return Optional.of(new Blocked(lines));
    }

    private static Optional<Blocked> alone(String line) {
        return Optional.of(new Blocked(List.of(line)));
    }

    private String head(Fact fact) {
        Goal goal = graph.goal().orElse(null);
        if (goal instanceof Goal.Reach reach
                && steps.conditionsOfRelease(c.node(reach.joint())).stream()
                        .anyMatch(condition -> condition.fact().equals(fact))) {
            return reach.joint() + " cannot be reached: " + without(fact);
        }
        if (goal instanceof Goal.Free free) {
            for (String target : free.targets()) {
                if (fact instanceof Fact.Released released
                        && graph.device()
                                .joint(released.joints().get(0))
                                .holds()
                                .contains(target)) {
                    return target
                            + " cannot be freed: "
                            + ListText.ids(released.joints())
                            + Labels.verb(released.joints(), " hold")
                            + " it";
                }
                if (fact instanceof Fact.Apart apart
                        && (apart.part().equals(target) || apart.other().equals(target))) {
                    String other = apart.part().equals(target) ? apart.other() : apart.part();
                    return steps.covers(c.part(other), c.part(target))
                            ? target + " cannot be freed: " + other + " is in its way"
                            : target + " cannot be freed: it cannot leave " + other;
                }
            }
        }
        String what =
                goal instanceof Goal.Teardown
                        ? "the device cannot be taken apart fully"
                        : "what is required is impossible";
        return fact instanceof Fact.Released ? what : what + ": " + without(fact);
    }

    private String without(Fact fact) {
        if (fact instanceof Fact.Released released) {
            return ListText.ids(released.joints()) + " cannot be released";
        }
        if (fact instanceof Fact.Apart apart) {
            return apart.part() + " and " + apart.other() + " cannot come apart";
        }
        return ((Fact.Cut) fact).supply() + " cannot be cut";
    }

    private static String ring(Fact fact) {
        String first = "which closes a ring: ";
        if (fact instanceof Fact.Released released) {
            return first + ListText.ids(released.joints()) + " would have to be released already";
        }
        if (fact instanceof Fact.Apart apart) {
            return first
                    + apart.part()
                    + " and "
                    + apart.other()
                    + " would have to be apart already";
        }
        return first + ((Fact.Cut) fact).supply() + " would have to be cut already";
    }

    /** Adds a sentence that was not said yet. */
    private void say(String line) {
        if (!lines.contains(line)) {
            lines.add(line);
        }
    }

    private void tell(Fact fact) {
        if (open.contains(fact)) {
            lines.add(ring(fact));
            return;
        }
        if (!told.add(fact)) {
            return;
        }
        open.add(fact);
        if (fact instanceof Fact.Released released) {
            tellJoint(c.node(released.joints().get(0)), released);
        } else if (fact instanceof Fact.Apart apart) {
            tellApart(apart);
        } else {
            String supply = ((Fact.Cut) fact).supply();
            List<Integer> isolators = steps.isolators(supply);
            say(
                    isolators.isEmpty()
                            ? "no joint cuts " + supply
                            : "only "
                                    + ListText.or(
                                            isolators.stream()
                                                    .map(node -> net.released(node).joints())
                                                    .map(ListText::ids)
                                                    .toList())
                                    + " cuts "
                                    + supply);
            isolators.forEach(node -> tell(net.released(node)));
        }
        open.remove(fact);
    }

    private void tellJoint(int node, Fact.Released released) {
        String joints = ListText.ids(released.joints());
        if (failures.shut(node)) {
            say(shut(node, joints));
            return;
        }
        if (failures.onlyLetsGo(node)) {
            say(onlyLetsGo(node, joints));
            moved(node).stream()
                    .map(c::part)
                    .filter(failures::partFails)
                    .min(Comparator.comparing(failures::partRank))
                    .ifPresent(this::tellPart);
            return;
        }
        failures.nearest(steps.conditionsOfWays(node))
                .ifPresent(
                        condition -> {
                            say(keeps(node, released, condition.fact()));
                            tell(condition.fact());
                        });
    }

    private List<String> moved(int node) {
        return graph.device().movedToLetGo(graph.device().joint(c.members[node][0]));
    }

    private String onlyLetsGo(int node, String who) {
        return "nothing but moving " + ListText.or(moved(node)) + " away releases " + who;
    }

    private String keeps(int node, Fact.Released released, Fact fact) {
        String joints = ListText.ids(released.joints());
        if (fact instanceof Fact.Apart apart) {
            return apart.part() + " hides " + joints;
        }
        if (fact instanceof Fact.Released tight) {
            return ListText.ids(tight.joints()) + " would strain " + joints + " while tight";
        }
        return live(
                joints,
                released.joints().size() == 1,
                ((Fact.Cut) fact).supply(),
                graph.device().power().why(graph.device().joint(c.members[node][0])));
    }

    /** Why something waits for the cut of a supply. */
    private static String live(String who, boolean one, String supply, List<Power.Need> needs) {
        Power.Rule rule =
                needs.stream()
                        .filter(need -> need.supply().equals(supply))
                        .map(Power.Need::rule)
                        .findFirst()
                        .orElse(Power.Rule.STATED);
        return switch (rule) {
            case STATED -> who + (one ? " needs " : " need ") + supply + " cut";
            case POWER_FIRST ->
                    who + (one ? " is" : " are") + " inside, so " + supply + " must be cut first";
            case WORK_ON_CELL ->
                    who
                            + (one ? " is" : " are")
                            + " work on the source of "
                            + supply
                            + ", which must be cut first";
        };
    }

    /** Both sides fail; that the base stays, and what is in the way of what, has been said. */
    private void tellApart(Fact.Apart apart) {
        int part = c.part(apart.part());
        int other = c.part(apart.other());
        tellSide(part, other);
        tellSide(other, part);
    }

    private void tellSide(int part, int other) {
        if (steps.covers(other, part)) {
            String inTheWay = c.partIds[other] + " is in its way";
            boolean said = lines.get(lines.size() - 1).equals(head(c.partIds[part], inTheWay));
            if (!said) {
                say(c.partIds[other] + " is in the way of " + c.partIds[part]);
            }
            return;
        }
        if (net.landmarks.isPinned(part)) {
            if (part != c.base) {
                say(pinned(part));
            }
            return;
        }
        Optional<Condition> joint = failures.nearest(failures.between(part, other));
        joint.ifPresent(
                condition -> {
                    List<String> joints = ((Fact.Released) condition.fact()).joints();
                    sayHolds(joints, part);
                    tell(condition.fact());
                });
        if (joint.isEmpty()) {
            tellPart(part);
        }
    }

    private void sayHolds(List<String> joints, int part) {
        String holds = ListText.ids(joints) + Labels.verb(joints, " hold");
        if (!lines.get(0).equals(head(c.partIds[part], holds + " it"))) {
            say(holds + " " + c.partIds[part]);
        }
    }

    private static String head(String target, String why) {
        return target + " cannot be freed: " + why;
    }

    private void tellPart(int part) {
        if (!told.add(part)) {
            return;
        }
        Optional<Condition> cause = failures.cause(part);
        if (cause.isEmpty()) {
            say(pinned(part));
            return;
        }
        Condition condition = cause.get();
        if (condition.fact() instanceof Fact.Cut cut) {
            say(live(part, cut.supply()));
            tell(cut);
            return;
        }
        List<Integer> beyond = failures.beyond(part, condition);
        Optional<String> alone = beyond.stream().flatMap(p -> stays(part, p).stream()).findFirst();
        if (condition.fact() instanceof Fact.Released released) {
            sayHolds(released.joints(), part);
        } else {
            say(c.partIds[beyond.get(0)] + " is in the way of " + c.partIds[part]);
        }
        alone.ifPresent(this::say);
        tell(condition.fact());
        if (alone.isEmpty()) {
            beyond.stream()
                    .filter(p -> p != c.base)
                    .filter(failures::partFails)
                    .filter(p -> failures.cause(p).filter(same(condition)).isEmpty())
                    .limit(1)
                    .forEach(this::tellPart);
        }
    }

    private String live(int part, String supply) {
        if (steps.liveOfMove(part).contains(supply)) {
            return live(
                    c.partIds[part],
                    true,
                    supply,
                    graph.device().power().why(List.of(c.partIds[part])));
        }
        List<String> lettingGo =
                Arrays.stream(c.nodesOf[part])
                        .filter(j -> c.gives[j] && steps.live(j).contains(supply))
                        .mapToObj(j -> c.members[j][0])
                        .limit(1)
                        .toList();
        return ListText.ids(lettingGo) + " would let go while " + supply + " is not cut";
    }

    private static Predicate<Condition> same(Condition condition) {
        return other -> other.fact().equals(condition.fact());
    }

    /** Why another part can never come along. */
    private Optional<String> stays(int part, int other) {
        if (net.landmarks.isPinned(other)) {
            return other == c.base ? Optional.empty() : Optional.of(pinned(other));
        }
        if (c.partClass[part] != c.partClass[other]) {
            return Optional.of(
                    c.partIds[other]
                            + " cannot come along: they differ in "
                            + (clazz(c.classTool, part, other) ? "posture" : "tool"));
        }
        return net.landmarks.component(part) == net.landmarks.component(other)
                ? Optional.empty()
                : Optional.of(c.partIds[other] + " does not hang on it");
    }

    private boolean clazz(String[] what, int part, int other) {
        return what[c.partClass[part]].equals(what[c.partClass[other]]);
    }

    private String pinned(int part) {
        String id = c.partIds[part];
        if (part == c.base) {
            return id + " is the base and stays";
        }
        return rules.forbiddenParts().contains(id)
                ? "moving " + id + " is forbidden"
                : id + " is moved with " + graph.device().move(id).tool() + ", which is forbidden";
    }

    /** Why no way of a joint is left. */
    private String shut(int node, String who) {
        if (node == net.question.need.reach() && failures.onlyLetsGo(node)) {
            return onlyLetsGo(node, who);
        }
        if (node == net.question.need.reach() && c.options[node].length > 0) {
            return who + " must stay connected, because reaching it is the goal";
        }
        Joint joint = graph.device().joint(c.members[node][0]);
        if (rules.forbiddenJoints().contains(joint.id())) {
            return "releasing " + who + " is forbidden";
        }
        List<String> why = joint.ways().values().stream().map(way -> forbidden(way)).toList();
        return why.size() == 1
                ? who + " can only be released " + why.get(0)
                : "each way of releasing " + who + " is ruled out: " + String.join(", ", why);
    }

    private String forbidden(Way way) {
        if (rules.forbiddenTools().contains(way.tool())) {
            return "with " + way.tool() + ", which is forbidden";
        }
        List<String> ruined =
                way.ruins().stream().filter(p -> !rules.permittedRuin().contains(p)).toList();
        return ruined.isEmpty()
                ? "by " + way.id() + ", which is forbidden"
                : "by "
                        + way.id()
                        + ", which ruins "
                        + ListText.and(ruined)
                        + " without permission";
    }
}
