package reseat.internal.files;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import reseat.model.Bond;
import reseat.model.Joint;
import reseat.model.Origin;
import reseat.model.Part;
import reseat.model.Point;
import reseat.model.ScrewType;
import reseat.model.Seat;
import reseat.model.Supply;
import reseat.model.Tool;

/** Checks the consistency of facts that are each well formed. */
final class Soundness {

    private final Draft draft;
    private final Places places;
    private final Problems problems;

    Soundness(Draft draft, Places places, Problems problems) {
        this.draft = draft;
        this.places = places;
        this.problems = problems;
    }

    /**
     * Runs every check.
     *
     * @param named finds the parts that some joint entry of the file holds, whether or not the
     *     entry itself is valid
     */
    void run(Supplier<Set<String>> named) {
        Set<String> loose = new HashSet<>();
        for (Part part : draft.parts.values()) {
            if (part.under().isEmpty() && !part.id().equals(draft.base)) {
                loose.add(part.id());
            }
        }
        for (Joint joint : draft.joints.values()) {
            if (loose.isEmpty()) {
                break;
            }
            for (int i = 0; i < joint.holds().size(); i++) {
                loose.remove(joint.holds().get(i));
            }
        }
        if (!loose.isEmpty()) {
            loose.removeAll(named.get());
        }
        draft.parts.values().forEach(part -> part(part, loose));
        Set<String> cut = new LinkedHashSet<>();
        for (Joint joint : draft.joints.values()) {
            if (joint.isIsolator()) {
                cut.addAll(joint.cuts());
            }
        }
        for (Joint joint : draft.joints.values()) {
            joint(joint, cut);
        }
        for (Part part : draft.parts.values()) {
            List<String> needs = part.needs().orElse(List.of());
            if (!needs.isEmpty()) {
                cuttable("part " + part.id(), needs, at(part, "/needs"), cut);
            }
        }
        draft.supplies.values().forEach(this::supply);
        seatsApart();
    }

    private Origin at(Part part, String fact) {
        return places.at("/parts/" + part.id() + fact);
    }

    private Origin at(Joint joint, String fact) {
        return places.at("/joints/" + joint.id() + fact);
    }

    private void part(Part part, Set<String> loose) {
        boolean base = part.id().equals(draft.base);
        if (part.under().contains(part.id())) {
            problems.error(at(part, "/under"), "part " + part.id() + " lies under itself");
        }
        if (part.under().contains(draft.base) && !base) {
            problems.error(
                    at(part, "/under"),
                    "part "
                            + part.id()
                            + " lies under the base "
                            + draft.base
                            + ", which is never moved out of its way");
        }
        if (base && !part.under().isEmpty()) {
            problems.error(
                    at(part, "/under"),
                    "part "
                            + part.id()
                            + " is the base: nothing is in the way of a part that is never moved");
        }
        if (loose.contains(part.id())) {
            problems.error(
                    at(part, ""),
                    "part "
                            + part.id()
                            + " is not held in place: no joint holds it and it lies under no part");
        }
        if (part.spareIncludes().contains(part.id()) || part.spareIncludes().contains(draft.base)) {
            problems.error(
                    at(part, "/spareIncludes"),
                    "part "
                            + part.id()
                            + ": a spare unit can include neither the part itself nor the base");
        }
        if (base && !part.needs().orElse(List.of()).isEmpty()) {
            problems.error(
                    at(part, "/needs"),
                    "part "
                            + part.id()
                            + " is the base: it is never moved, so it needs nothing cut");
        }
    }

    private void cuttable(String who, List<String> needs, Origin at, Set<String> cut) {
        for (int i = 0; i < needs.size(); i++) {
            String supply = needs.get(i);
            if (draft.supplies.containsKey(supply) && !cut.contains(supply)) {
                problems.shared(
                        "no isolator of " + supply,
                        at,
                        who + " needs " + supply + " cut, but no joint cuts it");
            }
        }
    }

    private void supply(Supply supply) {
        if (supply.of().equals(Optional.of(draft.base))) {
            problems.error(
                    places.at("/supplies/" + supply.id() + "/of"),
                    "supply "
                            + supply.id()
                            + " comes from the base "
                            + draft.base
                            + ", which is never moved; name the part that holds its cells, or leave"
                            + " \"of\" out");
        }
    }

    private void joint(Joint joint, Set<String> cut) {
        if (joint.under().contains(joint.site())) {
            problems.shared(
                    "own site at " + at(joint, "/under"),
                    at(joint, "/under"),
                    "joint "
                            + joint.id()
                            + " is hidden by its own site "
                            + joint.site()
                            + ", which never leaves it");
        }
        List<String> needs = joint.needs().orElse(List.of());
        if (!needs.isEmpty()) {
            cuttable("joint " + joint.id(), needs, at(joint, "/needs"), cut);
        }
        for (int i = 0; i < needs.size(); i++) {
            String supply = needs.get(i);
            if (joint.cuts().contains(supply)) {
                problems.error(
                        at(joint, "/needs"),
                        "joint "
                                + joint.id()
                                + " needs "
                                + supply
                                + " cut before it is released, and its release cuts it");
            }
        }
        if (joint.seat().isPresent()) {
            seat(joint, joint.seat().get());
        }
        if (joint.bond().isPresent()) {
            bond(joint, joint.bond().get());
        }
    }

    private void seat(Joint joint, Seat seat) {
        seat.at()
                .flatMap(point -> draft.outline.filter(outline -> !outline.contains(point)))
                .ifPresent(
                        outline ->
                                problems.error(
                                        at(joint, "/seat/x"),
                                        "joint "
                                                + joint.id()
                                                + ": its seat lies outside the outline of "
                                                + outline.widthMm()
                                                + " mm by "
                                                + outline.heightMm()
                                                + " mm"));
        ScrewType type = draft.screwTypes.get(seat.screw());
        if (type != null) {
            joint.ways()
                    .values()
                    .forEach(
                            way -> {
                                Tool tool = draft.tools.get(way.tool());
                                Optional<String> drive =
                                        tool == null ? Optional.empty() : tool.drive();
                                if (drive.isPresent() && !drive.get().equals(type.drive())) {
                                    problems.warning(
                                            at(joint, "/ways/" + way.id() + "/tool"),
                                            "joint "
                                                    + joint.id()
                                                    + ": "
                                                    + way.tool()
                                                    + " turns "
                                                    + drive.get()
                                                    + ", but "
                                                    + type.id()
                                                    + " has the drive "
                                                    + type.drive());
                                }
                            });
        }
    }

    private void bond(Joint joint, Bond bond) {
        String who = "joint " + joint.id() + ": ";
        for (Bond.GivenDepth depth : bond.givenDepths()) {
            if (depth.edge() >= bond.edge().size()) {
                problems.error(
                        at(joint, "/bond/givenDepths"),
                        who
                                + "there is no edge "
                                + depth.edge()
                                + "; edges are counted from 0 to "
                                + (bond.edge().size() - 1));
            }
        }
        bond.strips().stream()
                .filter(strip -> strip.widthMm() <= 0)
                .forEach(
                        strip ->
                                problems.error(
                                        at(joint, "/bond/strips/" + strip.id()),
                                        who + "strip " + strip.id() + " has no width"));
        if (bond.edge().size() >= 3 && new HashSet<>(bond.edge()).size() < 3) {
            problems.error(
                    at(joint, "/bond/edge"),
                    who + "an outline has at least three different corners");
        }
    }

    /** Two seats of one site at the same point are nearly always a copying error. */
    private void seatsApart() {
        Map<List<Object>, String> first = new HashMap<>();
        for (Joint joint : draft.joints.values()) {
            Optional<Point> point =
                    joint.seat().isPresent() ? joint.seat().get().at() : Optional.empty();
            String before =
                    point.isPresent()
                            ? first.putIfAbsent(List.of(joint.site(), point.get()), joint.id())
                            : null;
            if (before != null) {
                problems.warning(
                        at(joint, "/seat/x"),
                        "joint "
                                + joint.id()
                                + " has its seat at the same point of "
                                + joint.site()
                                + " as "
                                + before);
            }
        }
    }
}
