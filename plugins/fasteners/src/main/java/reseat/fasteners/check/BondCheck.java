package reseat.fasteners.check;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import reseat.check.Check;
import reseat.check.CheckInfo;
import reseat.check.CheckInput;
import reseat.check.Finding;
import reseat.model.Bond;
import reseat.model.Consumable;
import reseat.model.ConsumableUse;
import reseat.model.Device;
import reseat.model.Joint;
import reseat.model.Kind;
import reseat.model.Point;
import reseat.model.Severity;
import reseat.model.Way;
import reseat.text.NumberText;

/** Looks at what a bond is made of, and what it is cut beside. */
final class BondCheck extends JointCheck {

    private static final CheckInfo ADHESIVE =
            new CheckInfo(
                    "bond-without-adhesive",
                    "Bond is made without adhesive",
                    "A bond with a way whose rebuild uses up nothing but cleaner and wipes, or less adhesive than its strips are long.",
                    "The adhesive is missing from the list, and the part goes back on what is left of the old one. Common practice, no source.",
                    Severity.WARNING,
                    List.of("bonds", "consumables"),
                    List.of());

    private static final CheckInfo KEEP_OUTS =
            new CheckInfo(
                    "bond-without-keep-outs",
                    "Bond is cut without keep-outs",
                    "A bond that is cut with a blade or pick and states no keep-outs, although the bonded part hangs on a cable or has cables below it.",
                    "Nothing then keeps the blade off the cable. Common practice, no source.",
                    Severity.WARNING,
                    List.of("bonds", "safety"),
                    List.of());

    private static final Pattern CLEANING =
            Pattern.compile(
                    "\\b(?:clean\\w*|wipes?|cloths?|alcohol|isopropyl|ipa|solvents?|swabs?|gloves?|remover|water)\\b");

    private static final Pattern CUT =
            Pattern.compile("\\b(?:cut(?:s|ting)?|slic\\w+|slit\\w*|saw(?:s|ing)?)\\b");

    private static final Pattern AGAIN =
            Pattern.compile("\\b(?:again|same|re-?us\\w*|stays|as it was)\\b");

    private BondCheck(CheckInfo info) {
        super(info);
    }

    /** Returns both checks. */
    static List<Check> all() {
        return List.of(new BondCheck(ADHESIVE), new BondCheck(KEEP_OUTS));
    }

    @Override
    public List<Finding> run(CheckInput input) {
        List<Finding> found = new ArrayList<>();
        for (Joint joint : input.jointsInView()) {
            if (!input.device().kindOf(joint).role().equals(Optional.of(Kind.Role.BOND))) {
                continue;
            }
            if (is(ADHESIVE)) {
                joint.ways().values().forEach(way -> adhesive(input, joint, way, found));
            } else {
                keepOuts(input, joint, found);
            }
        }
        return found;
    }

    private void adhesive(CheckInput input, Joint joint, Way way, List<Finding> found) {
        Device device = input.device();
        List<ConsumableUse> holding =
                way.consumes().stream().filter(use -> !cleans(device, use)).toList();
        String field = "ways/" + way.id() + "/consumes";
        if (holding.isEmpty() && !goesBack(device, joint, way)) {
            found.add(
                    finding(
                            input,
                            joint.id(),
                            field,
                            "Way "
                                    + way.id()
                                    + " of "
                                    + joint.id()
                                    + " uses up "
                                    + (way.consumes().isEmpty()
                                            ? "nothing"
                                            : "cleaning agents alone")
                                    + " when the bond is made again.",
                            way.consumes().stream()
                                    .map(use -> "it consumes " + use.consumable())
                                    .toList(),
                            "State the adhesive, tape, gasket or paste that the rebuild lays."));
            return;
        }
        double strips =
                joint.bond().stream()
                        .flatMap(bond -> bond.strips().stream())
                        .mapToDouble(strip -> lengthMm(strip.path()))
                        .sum();
        holding.stream()
                .filter(use -> use.unit().equals("mm"))
                .filter(use -> use.quantity().doubleValue() < 0.9 * strips)
                .findFirst()
                .ifPresent(
                        use ->
                                found.add(
                                        finding(
                                                input,
                                                joint.id(),
                                                field,
                                                "Way "
                                                        + way.id()
                                                        + " of "
                                                        + joint.id()
                                                        + " uses up "
                                                        + NumberText.mm(
                                                                use.quantity().doubleValue())
                                                        + " of "
                                                        + use.consumable()
                                                        + ", and its strips are "
                                                        + NumberText.mm(Math.rint(strips))
                                                        + " long.",
                                                List.of(),
                                                "Correct the quantity, or the strips.")));
    }

    private static boolean cleans(Device device, ConsumableUse use) {
        Consumable consumable = device.consumables().get(use.consumable());
        String name = use.consumable() + " " + (consumable == null ? "" : consumable.name());
        return CLEANING.matcher(name.toLowerCase(Locale.ROOT).replace('-', ' ')).find();
    }

    private static boolean goesBack(Device device, Joint joint, Way way) {
        String restore = way.restore().isEmpty() ? device.kindOf(joint).restore() : way.restore();
        return AGAIN.matcher(restore.toLowerCase(Locale.ROOT)).find();
    }

    private static double lengthMm(List<Point> path) {
        double length = 0;
        for (int i = 1; i < path.size(); i++) {
            length += path.get(i - 1).distanceMm(path.get(i));
        }
        return length;
    }

    private void keepOuts(CheckInput input, Joint joint, List<Finding> found) {
        Device device = input.device();
        Optional<Way> cut =
                joint.ways().values().stream()
                        .filter(way -> way.ruins().isEmpty() && cuts(device, way))
                        .findFirst();
        if (cut.isEmpty()) {
            return;
        }
        Set<String> bonded = new LinkedHashSet<>(joint.holds());
        bonded.remove(joint.site());
        Set<String> hanging = hanging(device, bonded);
        List<Bond.KeepOut> keepOuts = joint.bond().map(Bond::keepOuts).orElse(List.of());
        Set<String> below = keepOuts.isEmpty() ? below(device, bonded) : Set.of();
        boolean kept =
                keepOuts.stream()
                        .anyMatch(
                                each ->
                                        bonded.contains(each.part())
                                                || hanging.contains(each.part()));
        if ((keepOuts.isEmpty() && !(hanging.isEmpty() && below.isEmpty()))
                || (!hanging.isEmpty() && !kept)) {
            List<String> evidence = new ArrayList<>();
            if (!hanging.isEmpty()) {
                evidence.add("it hangs on " + String.join(", ", hanging));
            }
            if (!below.isEmpty()) {
                evidence.add("below it: " + String.join(", ", below));
            }
            found.add(
                    finding(
                            input,
                            joint.id(),
                            "bond",
                            "Way "
                                    + cut.get().id()
                                    + " cuts "
                                    + joint.id()
                                    + ", and "
                                    + (keepOuts.isEmpty()
                                            ? "it states no keep-outs."
                                            : "no keep-out is the cable of the bonded part."),
                            evidence,
                            "Measure where the cables lie, and state edge, strips and keep-outs."));
        }
    }

    private static boolean cuts(Device device, Way way) {
        Kind kind = device.manipulation(way.kind());
        String text = way.kind().replace('-', ' ') + ". " + kind.title() + ". " + kind.verb();
        return CUT.matcher(text.toLowerCase(Locale.ROOT)).find();
    }

    /** The bonded parts, and cables, that stay connected while the bond is cut. */
    private static Set<String> hanging(Device device, Set<String> bonded) {
        Set<String> all = new LinkedHashSet<>();
        for (Joint joint : device.joints().values()) {
            if (device.kindOf(joint).role().equals(Optional.of(Kind.Role.CONNECTOR))) {
                joint.holds().stream()
                        .filter(bonded::contains)
                        .findFirst()
                        .ifPresent(
                                part -> {
                                    all.add(joint.id());
                                    joint.holds().stream()
                                            .filter(id -> isCable(device, id))
                                            .forEach(all::add);
                                });
            }
        }
        return all;
    }

    private static Set<String> below(Device device, Set<String> bonded) {
        Set<String> all = new LinkedHashSet<>();
        device.parts()
                .values()
                .forEach(
                        part -> {
                            if (isCable(device, part.id())
                                    && part.under().stream().anyMatch(bonded::contains)) {
                                all.add(part.id());
                            }
                        });
        return all;
    }

    private static boolean isCable(Device device, String part) {
        return device.kindOf(device.part(part)).role().equals(Optional.of(Kind.Role.CABLE));
    }
}
