package reseat.internal.sheet;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import reseat.model.Act;
import reseat.model.Device;
import reseat.model.Hazard;
import reseat.model.Kind;
import reseat.plan.Advice;
import reseat.sheet.Need;
import reseat.text.ListText;
import reseat.text.TimeText;

/** What safety needs: what to measure with, to wear, to have at hand. */
record SafetyNeeds(Source source) {

    List<Need> make() {
        List<Need> needs = new ArrayList<>();
        if (source.runs().teardown().stream()
                .flatMap(run -> run.check().stream())
                .anyMatch(check -> check.kind() == CheckPoint.Kind.DEAD)) {
            needs.add(
                    need(
                            Need.Kind.INSTRUMENT,
                            "voltmeter",
                            "Voltmeter with insulated probes, rated for the device"));
        }
        needs.addAll(heat());
        for (String item : protection()) {
            needs.add(need(Need.Kind.PROTECTION, item.replace(' ', '-'), item));
        }
        flammable().ifPresent(needs::add);
        if (hasCell()) {
            // facts on lithium-ion cells: University of Virginia EHS and FAA; NFPA tip sheet
            needs.add(
                    need(
                            Need.Kind.FIRE,
                            "fire",
                            "Metal container, water or ABC extinguisher in reach. A cell that smokes or"
                                    + " burns: do not move it, raise the alarm, leave, call the fire"
                                    + " service; once it is out, keep cooling it."));
        }
        if (baresContacts()) {
            needs.add(
                    need(
                            Need.Kind.INSULATION,
                            "caps",
                            "Caps or insulating tape for loose power plugs and cell terminals"));
        }
        return needs;
    }

    private static Need need(Need.Kind kind, String id, String text) {
        return new Need(kind, id, text, BigDecimal.ONE, "piece", Optional.empty(), "", text);
    }

    private Set<String> protection() {
        Set<String> all = new LinkedHashSet<>();
        List<List<Advice>> advice = new ArrayList<>(source.notes().teardown());
        advice.addAll(source.notes().rebuild());
        for (List<Advice> here : advice) {
            for (Advice each : here) {
                if (each.kind() == Advice.Kind.HAZARD) {
                    Hazard hazard =
                            Objects.requireNonNull(source.device().hazards().get(each.subject()));
                    all.addAll(hazard.protection());
                }
            }
        }
        return all;
    }

    private List<Kind> kinds(Act.Release release) {
        Device device = source.device();
        return List.of(
                device.manipulation(source.way(release).kind()),
                device.kindOf(device.joint(release.joint())));
    }

    /** Released joints by act, in the order of the teardown. */
    private Map<Integer, Act.Release> releases() {
        Map<Integer, Act.Release> all = new LinkedHashMap<>();
        for (int at = 0; at < source.plan().acts().size(); at++) {
            if (source.plan().acts().get(at).act() instanceof Act.Release release) {
                all.put(at, release);
            }
        }
        return all;
    }

    private List<Need> heat() {
        Map<Kind.Heat, Set<String>> steps = new LinkedHashMap<>();
        releases()
                .forEach(
                        (at, release) ->
                                kinds(release).stream()
                                        .flatMap(kind -> kind.heat().stream())
                                        .findFirst()
                                        .ifPresent(
                                                heat ->
                                                        steps.computeIfAbsent(
                                                                        heat,
                                                                        h -> new LinkedHashSet<>())
                                                                .add(step(at))));
        List<Need> needs = new ArrayList<>();
        steps.forEach(
                (heat, where) ->
                        needs.add(
                                need(
                                        Need.Kind.HEAT,
                                        heat.source().replace(' ', '-'),
                                        words(heat) + " (step\u00a0" + ListText.and(where) + ")")));
        return needs;
    }

    static String words(Kind.Heat heat) {
        return heat.source()
                + " at "
                + heat.celsius()
                + "\u00a0°C for "
                + TimeText.unbroken(heat.ms());
    }

    private String step(int act) {
        return String.valueOf(source.runs().numberOf(act));
    }

    private Optional<Need> flammable() {
        boolean any =
                releases().values().stream()
                        .flatMap(release -> kinds(release).stream())
                        .anyMatch(Kind::flammable);
        return any
                ? Optional.of(
                        need(
                                Need.Kind.AIR,
                                "air",
                                "Air the room; no flame, spark or hot tool near the cleaner, and let"
                                        + " it dry before anything is heated or switched on"))
                : Optional.empty();
    }

    private boolean hasCell() {
        return source.device().parts().keySet().stream()
                .anyMatch(part -> CheckPoints.isCell(source.device(), part));
    }

    private boolean baresContacts() {
        return releases().values().stream()
                        .anyMatch(release -> source.device().joint(release.joint()).isIsolator())
                || source.plan().movedParts().stream()
                        .anyMatch(part -> CheckPoints.isCell(source.device(), part));
    }
}
