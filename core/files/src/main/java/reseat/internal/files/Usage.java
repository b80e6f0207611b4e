package reseat.internal.files;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import reseat.model.Consumable;
import reseat.model.Hazard;
import reseat.model.Joint;
import reseat.model.Kind;
import reseat.model.Part;
import reseat.model.Signal;
import reseat.model.Tool;
import reseat.model.Way;

/**
 * Copies from the defaults what the facts of a device use: a device includes its own tools,
 * set-ups, hazards and consumables, not those of every bench. What its own file states is always
 * kept.
 */
final class Usage {

    private final Look device;
    private final Look stated;
    private final boolean resolved;
    private final List<Kind> kinds;
    private final Draft draft;

    Usage(Look device, Look stated, boolean resolved, List<Kind> kinds, Draft draft) {
        this.device = device;
        this.stated = stated;
        this.resolved = resolved;
        this.kinds = kinds;
        this.draft = draft;
    }

    /**
     * Adds to the draft what its parts, joints and prepare acts use.
     *
     * @param tools all tools, in the order of the list
     * @param consumables all consumables
     * @param problems collects the errors with the set-up table and the hazards
     */
    void fill(Map<String, Tool> tools, Map<String, Consumable> consumables, Problems problems) {
        tools(tools, problems);
        hazardsAndConsumables(consumables, problems);
    }

    private void tools(Map<String, Tool> tools, Problems problems) {
        Set<String> needed = new LinkedHashSet<>(Set.of(draft.hand));
        Set<String> postures = new LinkedHashSet<>(Set.of(draft.usualPosture));
        for (Part part : draft.parts.values()) {
            if (part.move().isPresent()) {
                needed.add(part.move().get().tool());
                postures.add(part.move().get().posture());
            }
        }
        for (Joint joint : draft.joints.values()) {
            for (Way way : joint.ways().values()) {
                needed.add(way.tool());
                postures.add(way.posture());
            }
        }
        Set<String> used = new LinkedHashSet<>(needed);
        used.addAll(stated.look("tools").fields().entries().keySet());
        for (Kind kind : kinds) {
            kind.tool().ifPresent(used::add);
            kind.posture().filter(posture -> !resolved).ifPresent(postures::add);
        }
        if (resolved) {
            used.addAll(device.look("setup").look("tool").fields().entries().keySet());
        }
        // in the order of the list; tools that are not listed come last, as plain tools
        tools.keySet().stream()
                .filter(used::contains)
                .forEach(id -> draft.tools.put(id, Objects.requireNonNull(tools.get(id))));
        used.forEach(
                id ->
                        draft.tools.computeIfAbsent(
                                id,
                                plain ->
                                        new Tool(
                                                plain, plain, Optional.empty(), Optional.empty())));
        // in a resolved file, a tool in neither list nor table has been reported where it is used
        List<Tool> inTable =
                draft.tools.values().stream()
                        .filter(
                                tool ->
                                        !resolved
                                                || (needed.contains(tool.id())
                                                        && tools.containsKey(tool.id())))
                        .toList();
        draft.setup =
                new SetupAssembly(device.look("setup"), resolved, problems)
                        .table(inTable, resolved ? List.of() : postures);
    }

    private void hazardsAndConsumables(Map<String, Consumable> consumables, Problems problems) {
        Set<String> hazards =
                new LinkedHashSet<>(stated.look("hazards").fields().entries().keySet());
        Set<String> used =
                new LinkedHashSet<>(stated.look("consumables").fields().entries().keySet());
        for (Part part : draft.parts.values()) {
            addAll(part.hazards(), hazards);
            if (part.move().isPresent()) {
                addAll(part.move().get().hazards(), hazards);
            }
        }
        for (Joint joint : draft.joints.values()) {
            for (Way way : joint.ways().values()) {
                addAll(way.hazards(), hazards);
                for (int i = 0; i < way.consumes().size(); i++) {
                    used.add(way.consumes().get(i).consumable());
                }
            }
        }
        draft.prepares.values().forEach(prepare -> hazards.addAll(prepare.hazards()));
        for (Kind kind : kinds) {
            hazards.addAll(kind.hazards());
            kind.consumes().forEach(use -> used.add(use.consumable()));
        }
        consumables.values().stream()
                .filter(each -> used.contains(each.id()))
                .forEach(each -> draft.consumables.put(each.id(), each));
        device.each(
                "hazards",
                (id, look) -> {
                    if (hazards.contains(id)) {
                        hazard(id, look, problems);
                    }
                });
    }

    /** Most lists are empty: avoids creating an iterator. */
    private static void addAll(List<String> some, Set<String> to) {
        if (!some.isEmpty()) {
            to.addAll(some);
        }
    }

    private void hazard(String id, Look look, Problems problems) {
        Optional<Signal> signal =
                look.text("signal").flatMap(word -> KindTable.constant(Signal.values(), word));
        List<String> texts =
                Stream.of("nature", "consequence", "avoidance")
                        .map(key -> look.text(key, ""))
                        .toList();
        if (signal.isPresent() && texts.stream().noneMatch(String::isBlank)) {
            draft.hazards.put(
                    id,
                    new Hazard(
                            id,
                            signal.get(),
                            texts.get(0),
                            texts.get(1),
                            texts.get(2),
                            look.texts("protection")));
        } else if (look.has("nature") && look.has("consequence") && look.has("avoidance")) {
            problems.error(
                    look.at(),
                    "hazard " + id + " must state its nature, its consequence and how to avoid it");
        }
    }
}
