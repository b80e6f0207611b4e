package reseat.devicechecks.check;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import reseat.check.Check;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Kind;
import reseat.model.Part;
import reseat.model.Severity;
import reseat.model.Supply;

/** Finds joints that cannot cut the supply that they are said to cut. */
final class IsolatorCheck implements Check {

    private static final CheckInfo INFO =
            new CheckInfo(
                    "isolator-off-path",
                    "Isolator off the path of its supply",
                    "A joint that is said to cut a supply, although it neither holds the cell of that supply nor what hangs on it, does not part the cell from the board with most plugs, and is no link, fuse or switch by its name.",
                    "The plan takes the power for cut, and hands go into a live device. Common practice, no source.",
                    Severity.ERROR,
                    List.of("power", "safety", "data"),
                    List.of());

    private static final Pattern POWER =
            Texts.word(
                    "links?",
                    "jumpers?",
                    "fuses?",
                    "switch(?:es)?",
                    "bridges?",
                    "interlocks?",
                    "breakers?",
                    "isolators?",
                    "disconnectors?");

    /** Words that tell no cell from another. */
    private static final Set<String> COMMON =
            Set.of("cell", "cells", "battery", "pack", "the", "on", "of", "a", "in", "power", "");

    @Override
    public CheckInfo info() {
        return INFO;
    }

    @Override
    public List<Finding> run(CheckInput input) {
        Device device = input.device();
        List<Finding> found = new ArrayList<>();
        for (Joint joint : input.jointsInView()) {
            for (String supply : joint.cuts()) {
                Set<String> cells = sources(device, supply);
                boolean connector = isConnector(device, joint);
                if (!named(device, joint)
                        && (cells.isEmpty() ? !connector : !onPath(device, joint, cells))) {
                    Finding.Draft draft =
                            input.finding("/joints/" + joint.id() + "/cuts")
                                    .severity(connector ? Severity.WARNING : Severity.ERROR)
                                    .evidence("it holds " + String.join(", ", joint.holds()));
                    if (!cells.isEmpty()) {
                        draft.evidence("the supply comes from " + String.join(", ", cells));
                    }
                    found.add(
                            draft.says(
                                    joint.id()
                                            + " is said to cut "
                                            + supply
                                            + ", but lies off the path of that supply.",
                                    "Take it out of cuts, or correct what it holds."));
                }
            }
        }
        return found;
    }

    private static boolean isConnector(Device device, Joint joint) {
        return device.kindOf(joint).role().equals(Optional.of(Kind.Role.CONNECTOR));
    }

    private static boolean named(Device device, Joint joint) {
        List<String> names = new ArrayList<>(List.of(joint.id(), joint.name()));
        names.add(device.kindOf(joint).title());
        for (String id : joint.holds()) {
            names.add(id);
            names.add(device.part(id).name());
            names.add(device.kindOf(device.part(id)).title());
        }
        return names.stream().anyMatch(name -> Texts.names(POWER, name));
    }

    /** The cells that a supply can come from: none for an adapter, all where nothing tells. */
    static Set<String> sources(Device device, String supplyId) {
        Supply supply = device.supplies().get(supplyId);
        String name = supplyId + " " + (supply == null ? "" : supply.name());
        if (supply != null && supply.of().isPresent()) {
            return Set.of(supply.of().get());
        }
        Set<String> cells = new LinkedHashSet<>();
        Set<String> like = new LinkedHashSet<>();
        for (Part part : Hazards.cells(device)) {
            cells.add(part.id());
            if (part.id().equals(supplyId) || sharesWord(name, part.id() + " " + part.name())) {
                like.add(part.id());
            }
        }
        if (!like.isEmpty()) {
            return like;
        }
        return Texts.names(Texts.CELL, name) ? cells : Set.of();
    }

    private static boolean sharesWord(String one, String other) {
        Set<String> words = new LinkedHashSet<>(words(one));
        words.removeAll(COMMON);
        words.retainAll(words(other));
        return !words.isEmpty();
    }

    private static Collection<String> words(String name) {
        return List.of(Texts.lower(name).split("[^a-z0-9]+"));
    }

    private static boolean onPath(Device device, Joint joint, Set<String> cells) {
        Optional<String> hub = hub(device);
        Set<String> near = new LinkedHashSet<>(cells);
        for (Joint other : device.joints().values()) {
            if (isConnector(device, other) && other.holds().stream().anyMatch(cells::contains)) {
                other.holds().stream()
                        .filter(id -> !Optional.of(id).equals(hub))
                        .forEach(near::add);
            }
        }
        near.remove(device.base());
        if (joint.holds().stream().anyMatch(near::contains)) {
            return true;
        }
        return hub.isPresent()
                && reached(device, cells, Set.of()).contains(hub.get())
                && !reached(device, cells, Set.of(joint.id())).contains(hub.get());
    }

    /** The part with most connectors. */
    private static Optional<String> hub(Device device) {
        Map<String, Integer> plugs = new LinkedHashMap<>();
        for (Joint joint : device.joints().values()) {
            if (isConnector(device, joint)) {
                joint.holds().forEach(id -> plugs.merge(id, 1, Integer::sum));
            }
        }
        return plugs.entrySet().stream()
                .max(Comparator.comparingInt(Map.Entry<String, Integer>::getValue))
                .map(Map.Entry::getKey);
    }

    private static Set<String> reached(Device device, Set<String> from, Set<String> without) {
        Set<String> reached = new LinkedHashSet<>(from);
        boolean more = true;
        while (more) {
            more = false;
            for (Joint joint : device.joints().values()) {
                if (isConnector(device, joint)
                        && !without.contains(joint.id())
                        && joint.holds().stream().anyMatch(reached::contains)) {
                    more |= reached.addAll(joint.holds());
                }
            }
        }
        return reached;
    }
}
