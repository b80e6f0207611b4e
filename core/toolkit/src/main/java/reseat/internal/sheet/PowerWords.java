package reseat.internal.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import reseat.model.Act;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.model.Power;
import reseat.model.Signal;
import reseat.model.Supply;
import reseat.sheet.Caution;
import reseat.sheet.Entry;
import reseat.text.ListText;

/** What a sheet says about power as a whole. */
record PowerWords(Source source, Progress progress) {

    private static final String LIVE =
            "A slip there can short a supply, burn and start a fire: bare hands or insulated"
                    + " tools, no ring or watch, nothing metal laid down.";

    /** Returns the state of power before a step. */
    static String state(Device device, List<Supply> on) {
        if (device.supplies().isEmpty()) {
            return "";
        }
        return on.isEmpty()
                ? "all cut"
                : "ON: " + ListText.and(on.stream().map(Supply::name).toList());
    }

    /** Returns what is cut where, and what stays on. */
    List<Entry> entries() {
        Device device = source.device();
        List<Entry> entries = new ArrayList<>();
        if (device.supplies().isEmpty()) {
            entries.add(
                    new Entry("Power", "No supply is stated for this device: take it as live."));
            return entries;
        }
        List<Supply> on = progress.staysOn();
        List<String> words = new ArrayList<>();
        List<String> before = new ArrayList<>();
        for (Supply supply : device.supplies().values()) {
            if (!on.contains(supply)) {
                int at = progress.cutBy(supply);
                if (at < 0) {
                    before.add(supply.name());
                } else {
                    words.add(supply.name() + " (step\u00a0" + source.runs().numberOf(at) + ")");
                }
            }
        }
        if (!before.isEmpty()) {
            entries.add(
                    power(entries, "Cut already when it arrives: " + ListText.and(before) + "."));
        }
        if (!words.isEmpty()) {
            entries.add(power(entries, "Cut: " + ListText.and(words) + "."));
        }
        if (!on.isEmpty()) {
            String names = ListText.and(on.stream().map(Supply::name).toList());
            entries.add(
                    power(
                            entries,
                            on.size() == device.supplies().size()
                                    ? "NEVER CUT in this plan. ON throughout: " + names + "."
                                    : "ON throughout: " + names + "."));
        }
        charged().ifPresent(text -> entries.add(power(entries, text)));
        return entries;
    }

    private static Entry power(List<Entry> before, String text) {
        return new Entry(before.isEmpty() ? "Power" : "", text);
    }

    /** A cell is charged whatever is unplugged; one that no supply comes from is easily missed. */
    private Optional<String> charged() {
        Device device = source.device();
        List<String> of =
                device.supplies().values().stream().flatMap(s -> s.of().stream()).toList();
        if (of.size() < device.supplies().size()) {
            return Optional.empty();
        }
        List<String> others =
                device.parts().keySet().stream()
                        .filter(part -> CheckPoints.isCell(device, part) && !of.contains(part))
                        .toList();
        return others.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        "Charged as well: "
                                + source.names().parts(others)
                                + "; no supply is stated to come from it.");
    }

    /** Returns waivers of power first, and supplies to which the rule cannot apply. */
    List<Caution> cautions() {
        List<Caution> all = new ArrayList<>(waivers());
        Power power = source.device().power();
        boolean inside = source.plan().acts().stream().anyMatch(act -> !power.isOutside(act.act()));
        power.dropped()
                .forEach(
                        (id, why) -> {
                            Supply supply = supply(id);
                            if (inside || supply.of().filter(touched()::contains).isPresent()) {
                                all.add(
                                        caution(
                                                id,
                                                supply.name() + " cannot be cut first",
                                                supply.name()
                                                        + " cannot be cut before the work inside: "
                                                        + Source.sentence(why)));
                            }
                        });
        return all;
    }

    private List<Caution> waivers() {
        Device device = source.device();
        Map<String, Set<String>> waived = new LinkedHashMap<>();
        for (CostedAct each : source.plan().acts()) {
            if (each.act() instanceof Act.Release release) {
                device.power()
                        .waived(device.joint(release.joint()))
                        .forEach(
                                supply ->
                                        waived.computeIfAbsent(supply, s -> new LinkedHashSet<>())
                                                .add(source.names().joint(release.joint())));
            } else if (each.act() instanceof Act.MoveParts move) {
                for (String part : move.parts()) {
                    device.power()
                            .waived(device.part(part))
                            .forEach(
                                    supply ->
                                            waived.computeIfAbsent(
                                                            supply, s -> new LinkedHashSet<>())
                                                    .add(source.names().part(part)));
                }
            }
        }
        List<Caution> all = new ArrayList<>();
        waived.forEach(
                (id, what) ->
                        all.add(
                                caution(
                                        id,
                                        "work with " + supply(id).name() + " on",
                                        "The device file lets "
                                                + ListText.and(what)
                                                + " be worked on with "
                                                + supply(id).name()
                                                + " ON, against the rule to cut power first.")));
        return all;
    }

    private Set<String> touched() {
        Set<String> parts = new LinkedHashSet<>();
        for (CostedAct each : source.plan().acts()) {
            if (each.act() instanceof Act.Release release) {
                parts.addAll(source.device().joint(release.joint()).holds());
            } else if (each.act() instanceof Act.MoveParts move) {
                parts.addAll(move.parts());
            }
        }
        return parts;
    }

    private Supply supply(String id) {
        return Objects.requireNonNull(source.device().supplies().get(id));
    }

    private static Caution caution(String subject, String brief, String text) {
        return new Caution(Signal.WARNING, subject, brief, text + " " + LIVE, Optional.empty(), 0);
    }
}
