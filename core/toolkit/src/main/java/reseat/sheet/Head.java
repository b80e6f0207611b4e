package reseat.sheet;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import reseat.model.Supply;

/**
 * The head of a sheet. Everything that a reader must see is in {@code title}, {@code entries},
 * {@code hazards} and {@code notice}; the other components give the same facts to programs.
 *
 * @param device id of the device
 * @param variant id of the variant; empty for the base device
 * @param title name of the device, and its maker where known
 * @param goal the goal in words
 * @param proved whether no valid plan costs less
 * @param totalMs cost of the plan in milliseconds
 * @param lowerBoundMs no valid plan costs less than this, in milliseconds
 * @param teardownMs time of the acts of the teardown in milliseconds
 * @param setupMs set-ups of the teardown in milliseconds
 * @param rebuildMs time of the acts of the rebuild in milliseconds
 * @param rebuildSetupMs set-ups of the rebuild in milliseconds; not part of the cost
 * @param waitMs waiting in the rebuild, such as curing, in milliseconds; not part of the cost
 * @param leastMs least time to expect for teardown and rebuild, with set-ups, in milliseconds
 * @param mostMs most time to expect for them, in milliseconds
 * @param entries goal, device, power, times, proof and extent, in the order in which they are
 *     printed
 * @param cautions what holds for the whole sheet and is printed in full at its head, such as power
 *     that is not cut; their step is 0
 * @param hazards the hazards of the whole plan, each with the first step that has it, gravest first
 * @param supplies the sources of power of the device
 * @param staysOn those of them that the plan never cuts
 * @param notice the notice that every sheet must carry
 */
public record Head(
        String device,
        Optional<String> variant,
        String title,
        String goal,
        boolean proved,
        long totalMs,
        long lowerBoundMs,
        long teardownMs,
        long setupMs,
        long rebuildMs,
        long rebuildSetupMs,
        long waitMs,
        long leastMs,
        long mostMs,
        List<Entry> entries,
        List<Caution> cautions,
        List<Caution> hazards,
        List<Supply> supplies,
        List<Supply> staysOn,
        String notice) {

    public Head {
        Objects.requireNonNull(variant, "variant");
        entries = List.copyOf(entries);
        cautions = List.copyOf(cautions);
        hazards = List.copyOf(hazards);
        supplies = List.copyOf(supplies);
        staysOn = List.copyOf(staysOn);
    }
}
