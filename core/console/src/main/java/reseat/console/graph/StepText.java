package reseat.console.graph;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import reseat.graph.Blocked;
import reseat.graph.Condition;
import reseat.graph.Fact;
import reseat.graph.Group;
import reseat.graph.Needed;
import reseat.graph.Step;
import reseat.graph.StepGraph;
import reseat.graph.Work;
import reseat.model.Goal;
import reseat.text.ListText;
import reseat.text.NumberText;

/**
 * Prints a step graph for people at a terminal: towards a goal, what every way needs and a tree of
 * reasons below it; otherwise a table of everything.
 */
public final class StepText {

    private static final int WIDTH = 80;

    private final StepGraph graph;
    private final Outline outline;
    private final StringBuilder out = new StringBuilder();
    private final Set<Object> told = new HashSet<>();

    private StepText(StepGraph graph) {
        this.graph = graph;
        outline = new Outline(graph);
    }

    /** Prints a graph; lines end with a line feed and are seldom wider than 100 columns. */
    public static String of(StepGraph graph) {
        StepText text = new StepText(graph);
        graph.goal().ifPresentOrElse(text::towardsGoal, text::everything);
        return text.out.toString();
    }

    // ---- towards a goal

    private void towardsGoal(Goal goal) {
        line("Step graph of " + graph.device() + ", towards: " + goal);
        line("");
        Optional<Blocked> blocked = graph.blocked(goal);
        if (blocked.isPresent()) {
            line("There is no way:");
            blocked.get().chain().forEach(why -> wrapped("    ", "  - " + why));
            return;
        }
        Needed needed = graph.needed();
        if (graph.goalFacts().isEmpty()) {
            line("Nothing needs to be done.");
            return;
        }
        line(
                "Every way needs "
                        + count(needed.works().size(), "step")
                        + ". After = the steps just before it.");
        line("");
        table(needed);
        line("");
        line("What rests on what. Each fact is unfolded once; ^ points to where it was.");
        line("(or X along) = not needed where X leaves together with it.");
        line("");
        line(goal.toString());
        List<Fact> roots = outline.roots();
        List<String> aside = outline.aside();
        for (int i = 0; i < roots.size(); i++) {
            boolean last = i == roots.size() - 1 && aside.isEmpty();
            tree(roots.get(i), "", last, List.of());
        }
        if (!aside.isEmpty()) {
            wrapped("  ", "└ left behind: " + String.join(", ", aside));
        }
    }

    private void table(Needed needed) {
        List<String[]> rows = new ArrayList<>();
        rows.add(new String[] {"no", "step", "how", "after"});
        for (Work work : needed.works()) {
            List<String> numbers =
                    needed.justBefore().getOrDefault(work, List.of()).stream()
                            .map(before -> String.valueOf(needed.works().indexOf(before) + 1))
                            .toList();
            rows.add(
                    new String[] {
                        String.valueOf(rows.size()),
                        work.label(),
                        how(work),
                        numbers.isEmpty() ? "-" : String.join(" ", numbers)
                    });
        }
        int[] widths = new int[4];
        for (String[] row : rows) {
            for (int i = 0; i < row.length; i++) {
                widths[i] = Math.min(52, Math.max(widths[i], row[i].length()));
            }
        }
        for (String[] row : rows) {
            StringBuilder line = new StringBuilder("  ");
            line.append(" ".repeat(widths[0] - row[0].length())).append(row[0]);
            for (int i = 1; i < row.length; i++) {
                line.append("  ").append(row[i]);
                line.append(" ".repeat(Math.max(0, widths[i] - row[i].length())));
            }
            line(line.toString().stripTrailing());
        }
    }

    private String how(Work work) {
        if (work instanceof Work.Release release) {
            return hows(graph.alternatives(new Fact.Released(release.joints())));
        }
        var move = graph.device().move(((Work.MoveOf) work).part());
        return tool(move.tool(), move.posture());
    }

    private String hows(List<Step> steps) {
        return ListText.or(
                steps.stream().map(step -> tool(step.tool(), step.posture())).distinct().toList());
    }

    private String tool(String tool, String posture) {
        return posture.equals(graph.device().usualPosture()) ? tool : tool + " in " + posture;
    }

    private void tree(Fact fact, String indent, boolean last, List<String> orAlong) {
        String below = indent + (last ? "  " : "│ ");
        String along = orAlong.isEmpty() ? "" : "  (or " + ListText.and(orAlong) + " along)";
        List<Step> steps = outline.unfolded(fact);
        List<Condition> conditions = steps.isEmpty() ? List.of() : steps.get(0).conditions();
        boolean known = !told.add(fact);
        boolean first = !known && told.add(mover(steps).orElse(fact.label()));
        boolean leaf = fact instanceof Fact.Released && conditions.isEmpty();
        line(
                indent
                        + (last ? "└ " : "├ ")
                        + factText(fact, steps)
                        + along
                        + (first || leaf ? "" : "  ^"));
        if (known || steps.isEmpty()) {
            return;
        }
        List<Outline.Folded> folded = outline.folded(fact);
        if (fact instanceof Fact.Cut) {
            Step.ByWay way = (Step.ByWay) steps.get(0);
            tree(new Fact.Released(way.joints()), below, folded.isEmpty(), List.of());
        } else if (first) {
            conditions(conditions, below, folded.isEmpty());
        }
        for (int i = 0; i < folded.size(); i++) {
            line(
                    below
                            + (i == folded.size() - 1 ? "└ " : "├ ")
                            + "or "
                            + folded.get(i).label()
                            + more(folded.get(i).more()));
        }
    }

    private void conditions(List<Condition> conditions, String indent, boolean last) {
        for (int i = 0; i < conditions.size(); i++) {
            Condition condition = conditions.get(i);
            boolean end = last && i == conditions.size() - 1;
            tree(condition.fact(), indent, end, condition.orAlong());
        }
    }

    /** The part that goes: what it needs is told once, whatever it goes away from. */
    private static Optional<String> mover(List<Step> steps) {
        return !steps.isEmpty() && steps.get(0) instanceof Step.Going going
                ? Optional.of(going.part())
                : Optional.empty();
    }

    private String factText(Fact fact, List<Step> steps) {
        if (fact instanceof Fact.Released) {
            return fact.label() + "  [" + hows(steps) + "]";
        }
        if (fact instanceof Fact.Apart apart && !steps.isEmpty()) {
            Step.Going going = (Step.Going) steps.get(0);
            String stays = going.part().equals(apart.part()) ? apart.other() : apart.part();
            return going(going) + " away from " + stays;
        }
        return fact.label();
    }

    private String going(Step.Going going) {
        return going.part() + " goes  [" + tool(going.tool(), going.posture()) + "]";
    }

    // ---- everything

    private void everything() {
        line("Step graph of " + graph.device());
        line(
                count(graph.device().parts().size(), "part")
                        + ", "
                        + count(graph.device().joints().size(), "joint")
                        + " in "
                        + count(graph.joints().size(), "node")
                        + ". Joints that are alike are one node.");
        line("");
        line("JOINTS  [how] site; released when ...");
        for (List<String> joints : graph.joints()) {
            Fact.Released fact = new Fact.Released(joints);
            List<Step> steps = graph.alternatives(fact);
            String site = graph.device().joint(joints.get(0)).site();
            line(
                    "  "
                            + ListText.ids(joints)
                            + "  ["
                            + (steps.isEmpty() ? "no way" : hows(steps))
                            + "] on "
                            + site);
            if (!steps.isEmpty()) {
                steps.get(0).conditions().forEach(this::condition);
            }
        }
        line("");
        line("PARTS  [how]; goes when ...");
        for (String part : graph.device().parts().keySet()) {
            graph.going(part)
                    .ifPresent(
                            going -> {
                                String how = tool(going.tool(), going.posture());
                                line("  " + part + "  [" + how + "]");
                                going.conditions().forEach(this::condition);
                            });
        }
        together();
    }

    private void condition(Condition condition) {
        wrapped("      ", "    " + condition.label());
    }

    private void together() {
        List<Group> groups = graph.groups();
        if (groups.isEmpty()) {
            return;
        }
        line("");
        line("TOGETHER  what one move could take at most, and what must be done before");
        for (Group group : groups) {
            wrapped(
                    "    ",
                    "  "
                            + ListText.and(group.parts())
                            + "  ["
                            + tool(group.tool(), group.posture())
                            + "]");
            group.ties().forEach(tie -> wrapped("      ", "    " + tie.label()));
            once(group);
            for (String part : group.parts()) {
                List<String> always = graph.leavesWith(part).always();
                if (!always.isEmpty()) {
                    wrapped(
                            "      ",
                            "    " + part + " never leaves without " + ListText.and(always));
                }
            }
        }
    }

    private void once(Group group) {
        List<String> released = new ArrayList<>();
        Set<String> away = new LinkedHashSet<>();
        for (Fact fact : group.first()) {
            if (fact instanceof Fact.Released joints) {
                released.add(ListText.ids(joints.joints()));
            } else if (fact instanceof Fact.Apart apart) {
                away.add(apart.part());
            }
        }
        if (!released.isEmpty()) {
            wrapped("      ", "    once released: " + String.join(", ", released));
        }
        if (!away.isEmpty()) {
            wrapped("      ", "    once away: " + String.join(", ", away));
        }
    }

    private static String more(int works) {
        return works == 0 ? ", for nothing more" : ", for " + count(works, "step") + " more";
    }

    private static String count(int n, String what) {
        return NumberText.count(n, what, what + "s");
    }

    private void line(String text) {
        out.append(text).append('\n');
    }

    private void wrapped(String indent, String text) {
        StringBuilder line = new StringBuilder();
        for (String word : Arrays.asList(text.split("(?<=\\S) ", -1))) {
            if (line.length() + word.length() > WIDTH) {
                line(line.toString().stripTrailing());
                line.setLength(0);
                line.append(indent);
            }
            line.append(word).append(' ');
        }
        line(line.toString().stripTrailing());
    }
}
