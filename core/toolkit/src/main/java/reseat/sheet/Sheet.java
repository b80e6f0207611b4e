package reseat.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import reseat.internal.sheet.SheetMaker;
import reseat.plan.Plan;
import reseat.plan.Tally;

/**
 * A work sheet: a plan with everything that a person at the bench must know, in the order in which
 * it is read.
 *
 * @param extent which part of the plan it covers
 * @param head its head
 * @param needs what to have ready, in the order of {@link Need.Kind}; empty if there is nothing to
 *     do
 * @param teardown the steps of the teardown; empty if the sheet omits it
 * @param rebuild the steps of the rebuild and the tests; empty if the sheet omits it
 * @param tally the screws of the whole plan, out and in
 * @param checks what to check before the unit leaves the bench, one sentence or more each; empty if
 *     the sheet omits the rebuild
 */
public record Sheet(
        Extent extent,
        Head head,
        List<Need> needs,
        List<Group> teardown,
        List<Group> rebuild,
        Tally tally,
        List<String> checks) {

    /** The part of a plan that a sheet covers. */
    public enum Extent {
        /** Teardown and rebuild. */
        WHOLE,
        /** The teardown alone. */
        TEARDOWN,
        /** The rebuild alone; its steps are numbered as in the whole sheet. */
        REBUILD
    }

    public Sheet {
        Objects.requireNonNull(extent, "extent");
        Objects.requireNonNull(head, "head");
        needs = List.copyOf(needs);
        teardown = List.copyOf(teardown);
        rebuild = List.copyOf(rebuild);
        Objects.requireNonNull(tally, "tally");
        checks = List.copyOf(checks);
    }

    /** Returns the whole sheet of a plan that the simulator found valid. */
    public static Sheet of(Plan plan) {
        return of(plan, Extent.WHOLE);
    }

    /**
     * Returns the sheet of a plan that the simulator found valid. Every message is printed in full
     * where it first applies within the extent.
     *
     * <p>Costs about as much as the rebuild of the plan; where a bond of known geometry is
     * released, also a plan of its cuts.
     *
     * @param extent what of it the sheet covers
     */
    public static Sheet of(Plan plan, Extent extent) {
        return new SheetMaker(plan, extent).make();
    }

    /**
     * Returns the needs as lines to print: tools, and what to wear, in one line each, everything
     * else in a line of its own.
     */
    public List<Entry> needLines() {
        List<Entry> lines = new ArrayList<>();
        String before = "";
        for (Need.Kind kind : Need.Kind.values()) {
            List<String> texts =
                    needs.stream().filter(need -> need.kind() == kind).map(Need::text).toList();
            boolean inOneLine = kind == Need.Kind.TOOL || kind == Need.Kind.PROTECTION;
            for (String text :
                    inOneLine && !texts.isEmpty() ? List.of(String.join(", ", texts)) : texts) {
                lines.add(new Entry(kind.label().equals(before) ? "" : kind.label(), text));
                before = kind.label();
            }
        }
        return lines;
    }

    /** Returns all its steps in order. */
    public Stream<Step> steps() {
        return Stream.concat(teardown.stream(), rebuild.stream())
                .flatMap(group -> group.steps().stream());
    }
}
