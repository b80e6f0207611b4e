package reseat.internal.planner;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import reseat.internal.order.Pair;
import reseat.internal.order.Rule;
import reseat.model.Act;
import reseat.model.Device;
import reseat.model.State;

/** The rules for acts in the order in which they are done: a teardown, or a rebuild backwards. */
public final class ActOrderRules {

    /** No acts, no rules. */
    public static final ActOrderRules NONE =
            new ActOrderRules(List.of(), List.of(), List.of(), false);

    private final List<String> faults;
    private final List<Rule> rules;
    private final List<Hanging> hangings;
    private final boolean backwards;

    private ActOrderRules(
            List<String> faults, List<Rule> rules, List<Hanging> hangings, boolean backwards) {
        this.faults = faults;
        this.rules = rules;
        this.hangings = hangings;
        this.backwards = backwards;
    }

    /**
     * Finds the rules for acts of a device.
     *
     * @param device the device
     * @param start where the unit stands before the teardown
     * @param acts the acts by number; moves of the same part keep this order
     * @param backwards whether the acts, read backwards, are the teardown
     */
    public static ActOrderRules of(
            Device device, State start, Map<Integer, Act> acts, boolean backwards) {
        Map<Integer, Act> teardown = acts;
        if (backwards) {
            List<Map.Entry<Integer, Act>> entries = new ArrayList<>(acts.entrySet());
            Collections.reverse(entries);
            teardown = new LinkedHashMap<>();
            for (Map.Entry<Integer, Act> entry : entries) {
                teardown.put(entry.getKey(), entry.getValue());
            }
        }
        ActRules found = new ActRules(device, start, teardown);
        return new ActOrderRules(
                found.faults(),
                backwards ? turned(found.rules()) : found.rules(),
                found.hangings(),
                backwards);
    }

    /** Returns the rule that one item comes before another because the caller says so. */
    public static Rule asked(int earlier, int later) {
        return new Rule(List.of(new Pair(earlier, later)), "it is asked for");
    }

    /** Returns why no order is valid, as far as single acts tell. */
    public List<String> faults() {
        return faults;
    }

    /** Returns the rules that can be listed. */
    public List<Rule> rules() {
        return rules;
    }

    List<Hanging> hangings() {
        return hangings;
    }

    /** Returns the further rules that an order breaks. */
    public List<Rule> brokenBy(int[] order) {
        List<Integer> teardown = new ArrayList<>();
        for (int number : order) {
            teardown.add(number);
        }
        if (backwards) {
            Collections.reverse(teardown);
        }
        List<Rule> broken = new ArrayList<>();
        for (Hanging hanging : hangings) {
            broken.addAll(hanging.brokenBy(teardown));
        }
        return backwards ? turned(broken) : broken;
    }

    private static List<Rule> turned(List<Rule> rules) {
        return rules.stream()
                .map(rule -> new Rule(rule.oneOf().stream().map(Pair::turned).toList(), rule.why()))
                .toList();
    }
}
