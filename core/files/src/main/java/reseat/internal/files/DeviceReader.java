package reseat.internal.files;

import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import reseat.files.Reading;
import reseat.model.Device;
import reseat.model.Origin;
import reseat.spi.CostTable;
import reseat.spi.DeviceFamily;
import reseat.text.QuoteText;

/** Reads one device file, from bytes to model. Single use. */
public final class DeviceReader {

    private final Path path;
    private final String file;
    private final Origin whole;
    private final Optional<String> variant;
    private final List<DeviceFamily> families;
    private final Optional<CostTable> costs;
    private final Problems problems;
    private List<String> variants = List.of();

    private DeviceReader(
            Path path,
            Optional<String> variant,
            List<DeviceFamily> families,
            Optional<CostTable> costs) {
        this.path = path;
        this.file = path.toString().isEmpty() ? "." : path.toString();
        this.whole = new Origin(file, 0, 0);
        this.variant = variant;
        this.families = families;
        this.costs = costs;
        this.problems = new Problems(file);
    }

    /** Reads a file; see {@code DeviceFiles.read}. */
    public static Reading read(
            Path path,
            Optional<String> variant,
            List<DeviceFamily> families,
            Optional<CostTable> costs) {
        DeviceReader reader = new DeviceReader(path, variant, families, costs);
        Optional<Device> device =
                Sources.load(path, reader.file, reader.problems)
                        .flatMap(content -> Trees.parse(reader.file, content, reader.problems))
                        .flatMap(reader::device);
        boolean failed = reader.problems.hasErrors();
        return new Reading(
                failed ? Optional.empty() : device, reader.problems.sorted(), reader.variants);
    }

    private Optional<Device> device(Node root) {
        if (!(root instanceof Node.Fields fields)) {
            problems.error(
                    root.at(),
                    "found "
                            + root.describe()
                            + ", expected the keys of a device file, such as format");
            return Optional.empty();
        }
        if (fields.get("variants") instanceof Node.Fields named) {
            variants = List.copyOf(named.entries().keySet());
        }
        Node.Fields patched = patched(fields);
        boolean resolved = new Look(patched, patched.at()).flag("resolved", false);
        Node.Fields stated = SeatTables.add(patched, path, problems);
        Defaults defaults =
                resolved
                        ? Defaults.NONE
                        : withCosts(new Layers(families, whole, problems).defaults(stated));
        Node.Fields full = resolved ? stated : Layers.over(defaults, stated);
        KnownIds known = new KnownIds(full, resolved);
        new ShapeCheck(known, resolved, problems, defaults.under(known))
                .check("device", full, Format.DEVICE);
        defaultsExist(full, known, resolved);
        Node.Fields joints = full.fields("joints");
        Node.Fields tree =
                joints != null && Seats.any(joints)
                        ? full.with("joints", Seats.spread(joints, problems))
                        : full;
        Places places = new Places(tree, whole, BuiltIn.NAME);
        Assembly assembly = new Assembly(tree, stated, file, resolved, problems);
        Draft draft = assembly.draft();
        new Soundness(draft, places, problems).run(() -> held(tree));
        new Plausible(draft, places, problems).run();
        if (problems.hasErrors()) {
            return Optional.empty();
        }
        Device device = build(tree, assembly, places);
        Numbered all = new Numbered(device);
        if (!OneByOne.works(all)) {
            new ReachabilityCheck(draft, all, places, problems).run();
        }
        warnOfDropped(device, places);
        return problems.hasErrors() ? Optional.empty() : Optional.of(device);
    }

    private void warnOfDropped(Device device, Places places) {
        device.power()
                .dropped()
                .forEach(
                        (supply, why) ->
                                problems.warning(
                                        places.at("/supplies/" + supply),
                                        "supply "
                                                + supply
                                                + ": nothing waits until it is cut, unless a part or"
                                                + " joint states that it needs it: "
                                                + why));
    }

    private Defaults withCosts(Defaults defaults) {
        return costs.map(
                        table ->
                                Defaults.unchecked(
                                        CostLayer.over(defaults.tree(), table, problems)))
                .orElse(defaults);
    }

    private Node.Fields patched(Node.Fields root) {
        Node.Fields base = root.without("variants");
        Node.Fields named = root.fields("variants");
        Node stray = root.get("variants");
        if (stray != null && named == null) {
            problems.error(
                    stray.at(),
                    "variants: found "
                            + stray.describe()
                            + ", expected a map from ids to merge patches");
        }
        if (named != null) {
            new ShapeCheck(new KnownIds(base, false), false, problems)
                    .check("variants", named, Format.VARIANTS);
            named.entries()
                    .forEach(
                            (id, entry) -> {
                                if (!(entry.value() instanceof Node.Fields)) {
                                    problems.error(
                                            entry.value().at(),
                                            id
                                                    + ": found "
                                                    + entry.value().describe()
                                                    + ", expected a merge patch");
                                }
                            });
        }
        if (variant.isEmpty()) {
            return base;
        }
        Node.Fields patch = named == null ? null : named.fields(variant.get());
        if (patch == null) {
            problems.error(
                    whole,
                    "there is no variant "
                            + QuoteText.of(variant.get())
                            + "."
                            + Words.hint(variant.get(), variants, "variants"));
            return base;
        }
        return (Node.Fields) MergePatch.apply(base, patch);
    }

    /**
     * Omitted values are checked as well: a shop's own data may lack the hand or the usual posture.
     */
    private void defaultsExist(Node.Fields full, KnownIds known, boolean resolved) {
        if (!resolved
                && full.get("usualPosture") == null
                && !known.allows(Shape.Scope.POSTURE, "face-up")) {
            problems.error(
                    full.at(),
                    "the usual posture face-up is not in setup.posture; name one with"
                            + " usualPosture");
        }
    }

    private static Set<String> held(Node.Fields tree) {
        Set<String> held = new LinkedHashSet<>();
        new Look(tree, tree.at())
                .table("joints")
                .values()
                .forEach(joint -> held.addAll(joint.texts("holds")));
        return held;
    }

    private Device build(Node.Fields tree, Assembly assembly, Places places) {
        Draft draft = assembly.draft();
        Look look = new Look(tree, tree.at());
        return Device.build(
                look.text("id", ""),
                builder -> {
                    builder.name(look.text("name", look.text("id", "")))
                            .maker(look.text("maker", ""))
                            .family(look.text("family", ""))
                            .base(draft.base)
                            .hand(draft.hand)
                            .usualPosture(draft.usualPosture)
                            .setup(draft.setup.orElseThrow());
                    variant.or(() -> look.text("variant")).ifPresent(builder::variant);
                    draft.outline.ifPresent(builder::outline);
                    draft.supplies.values().forEach(builder::add);
                    draft.tools.values().forEach(builder::add);
                    draft.screwTypes.values().forEach(builder::add);
                    draft.consumables.values().forEach(builder::add);
                    draft.hazards.values().forEach(builder::add);
                    draft.prepares.values().forEach(builder::add);
                    draft.parts.values().forEach(builder::add);
                    draft.joints.values().forEach(builder::add);
                    draft.tests.values().forEach(builder::add);
                    assembly.kinds().forEach(builder::add);
                    builder.origins(places::all);
                });
    }
}
