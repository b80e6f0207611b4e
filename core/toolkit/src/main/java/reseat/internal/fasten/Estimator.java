package reseat.internal.fasten;

import static reseat.text.NumberText.figures;
import static reseat.text.NumberText.mm;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import reseat.fasten.Drive;
import reseat.fasten.FastenerTable;
import reseat.fasten.FastenerTables;
import reseat.fasten.HeadSize;
import reseat.fasten.Material;
import reseat.fasten.Rule;
import reseat.fasten.ScrewThread;
import reseat.fasten.StrengthClass;
import reseat.fasten.TorqueEstimate;
import reseat.fasten.TorqueEstimate.Input;
import reseat.fasten.TorqueEstimate.Limit;
import reseat.model.Seat;

/** Computes the limits of a torque from inputs that are complete. */
final class Estimator {

    private final FastenerTables tables;
    private final CompleteRequest in;
    private final List<Limit> limits = new ArrayList<>();
    private final List<String> cautions = new ArrayList<>();
    private String breakingSource = "";

    Estimator(FastenerTables tables, CompleteRequest in) {
        this.tables = tables;
        this.in = in;
        cautions.add(TorqueEstimate.CAUTION);
    }

    TorqueEstimate run() {
        screwYield();
        screwTorsion();
        seatThread();
        screwThread();
        insert();
        headBearing();
        drive();
        geometry();
        limits.sort(Comparator.comparingDouble(Limit::cautiousNm).thenComparing(Limit::kind));
        Limit governing = limits.get(0);
        double value = governing.cautiousNm();
        double high = limits.stream().mapToDouble(Limit::utmostNm).min().orElse(value);
        return new TorqueEstimate(
                value,
                value * tables.rule("window-low").low(),
                high,
                governing,
                limits,
                1000 * value / arm(in.friction().high()),
                1000 * value / arm(in.friction().low()),
                inputs(),
                in.assumptions(),
                cautions);
    }

    private double arm(double mu) {
        return ScrewFormulas.threadArmMm(in.thread(), mu)
                + ScrewFormulas.headArmMm(
                        in.head().bearing(), in.head().bearingMm(), in.holeMm(), mu);
    }

    private double torqueAtNm(double preloadN) {
        return preloadN * arm(in.friction().low()) / 1000;
    }

    private void screwYield() {
        Rule share = tables.rule("yield-share");
        double mu = in.friction().low();
        double yield = in.strength().yieldMin();
        double low = ScrewFormulas.assemblyPreloadN(in.thread(), yield, share.low(), mu);
        double high = ScrewFormulas.assemblyPreloadN(in.thread(), yield, share.high(), mu);
        add(
                Limit.Kind.SCREW_YIELD,
                torqueAtNm(low),
                torqueAtNm(high),
                shares(share)
                        + " of the yield stress "
                        + figures(yield, 4)
                        + " N/mm² at friction "
                        + mu
                        + ": preload "
                        + figures(low, 3)
                        + " to "
                        + figures(high, 3)
                        + " N");
    }

    private void screwTorsion() {
        Rule share = tables.rule("thread-share-of-breaking");
        double mu = in.friction().low();
        double breaking = breakingTorqueNm();
        // of the whole torque only this part twists the shank; it is largest where friction is low
        double part = ScrewFormulas.threadArmMm(in.thread(), mu) / arm(mu);
        add(
                Limit.Kind.SCREW_TORSION,
                share.low() * breaking / part,
                share.high() * breaking / part,
                shares(share)
                        + " of the breaking torque "
                        + figures(breaking, 3)
                        + " N·m"
                        + (breakingSource.isEmpty() ? "" : " of " + breakingSource)
                        + "; the thread takes "
                        + figures(100 * part, 2)
                        + " % of the torque");
    }

    private double breakingTorqueNm() {
        StrengthClass strength = in.strength();
        double computed = ScrewFormulas.breakingTorqueNm(in.thread(), strength);
        OptionalDouble table = publishedNm(strength);
        if (table.isPresent()) {
            return strength.kind().equals("forming")
                    ? Math.min(computed, table.getAsDouble())
                    : table.getAsDouble();
        }
        if (strength.torsionRatio().isEmpty()) {
            cautions.add(
                    "No standard gives the torsional strength of "
                            + strength.id()
                            + "; it is scaled from steel.");
        }
        if (in.thread().limits().isEmpty()) {
            cautions.add(
                    "No tolerance is known for "
                            + in.thread().designation()
                            + "; nominal diameters are used.");
        }
        return computed;
    }

    /** The breaking torque that a table gives for stainless, brass and thread-forming screws. */
    private OptionalDouble publishedNm(StrengthClass strength) {
        String standard =
                switch (strength.kind()) {
                    case "forming" -> "DIN 7500";
                    case "stainless" -> "ISO 3506-1";
                    case "brass" -> "ISO 8839";
                    default -> "";
                };
        String name =
                switch (strength.kind()) {
                    case "stainless" -> strength.id().replaceFirst("^[A-Z][0-9]-", "");
                    case "brass" -> "CU2";
                    default -> strength.kind();
                };
        return tables.rows(FastenerTable.BREAKING_TORQUES).stream()
                .filter(row -> row.text("standard").equals(standard))
                .filter(row -> row.tag().equals("read") || row.tag().equals("shop"))
                .filter(row -> row.text("class").equals(name))
                .filter(row -> row.text("thread").equals(in.thread().designation()))
                .findFirst()
                .map(
                        row -> {
                            breakingSource = standard + " (" + row.source() + ")";
                            return OptionalDouble.of(row.required("torqueNm"));
                        })
                .orElse(OptionalDouble.empty());
    }

    private void seatThread() {
        Material material = in.material();
        boolean plastic = material.thermoplastic();
        Rule share = tables.rule(plastic ? "plastic-torque-share" : "strip-share");
        double load = in.form() == Seat.Form.FORMED && plastic ? formedLoad() : tappedLoad();
        add(
                Limit.Kind.SEAT_THREAD,
                torqueAtNm(share.low() * load),
                torqueAtNm(share.high() * load),
                shares(share)
                        + " of the stripping load "
                        + figures(load, 3)
                        + " N of "
                        + mm(in.engagementMm())
                        + " in "
                        + material.id()
                        + ", shear strength "
                        + figures(material.shear(), 4)
                        + " N/mm²");
    }

    private double formedLoad() {
        return StripFormulas.formedThreadN(
                in.thread().diameterMm(),
                in.material().shear(),
                in.engagementMm(),
                tables.rule("plastic-strip-share").low());
    }

    private double tappedLoad() {
        ScrewThread thread = in.thread();
        double major = thread.limits().map(l -> l.majorMinMm()).orElse(thread.diameterMm());
        double pitch = thread.hole().map(h -> h.pitchMaxMm()).orElse(thread.pitchDiameterMm());
        double area =
                thread.series() == ScrewThread.Series.FORMING
                        ? Math.PI
                                * thread.pitchDiameterMm()
                                * in.engagementMm()
                                * tables.rule("pull-out-share").low()
                        : StripFormulas.holeShearAreaMm2(
                                thread.pitchMm(), in.engagementMm(), major, pitch);
        return area * in.material().shear();
    }

    private void screwThread() {
        ScrewThread thread = in.thread();
        if (!thread.series().metricProfile()) {
            return;
        }
        double minor = thread.hole().map(h -> h.minorMaxMm()).orElse(thread.minorDiameterMm());
        double pitch = thread.limits().map(l -> l.pitchMinMm()).orElse(thread.pitchDiameterMm());
        double shear = 0.6 * in.strength().rmMin();
        double load =
                shear
                        * StripFormulas.screwShearAreaMm2(
                                thread.pitchMm(), in.engagementMm(), minor, pitch);
        Rule share = tables.rule("strip-share");
        add(
                Limit.Kind.SCREW_THREAD,
                torqueAtNm(share.low() * load),
                torqueAtNm(share.high() * load),
                shares(share)
                        + " of the stripping load "
                        + figures(load, 3)
                        + " N of the screw's own thread,"
                        + " shear strength 0.6 of "
                        + figures(in.strength().rmMin(), 4)
                        + " N/mm²");
    }

    private void insert() {
        if (in.form() != Seat.Form.INSERT) {
            return;
        }
        if (in.pullOutN().isEmpty() && in.around().isPresent()) {
            aroundInsert(in.around().get());
            return;
        }
        if (in.pullOutN().isEmpty()) {
            cautions.add(
                    "The load that pulls the insert out of its part is not known; it"
                            + " usually governs below the value"
                            + " computed here.");
            return;
        }
        Rule share = tables.rule("strip-share");
        double load = in.pullOutN().getAsDouble();
        add(
                Limit.Kind.INSERT,
                torqueAtNm(share.low() * load),
                torqueAtNm(share.high() * load),
                shares(share) + " of the pull-out load " + figures(load, 3) + " N");
    }

    /** The plastic shears round the insert: the cylinder of its outside, as long as the thread. */
    private void aroundInsert(Material plastic) {
        double outer = tables.rule("insert-outer-diameters").low() * in.thread().diameterMm();
        Rule share = tables.rule("plastic-torque-share");
        double load =
                StripFormulas.formedThreadN(
                        outer,
                        plastic.shear(),
                        in.engagementMm(),
                        tables.rule("plastic-strip-share").low());
        add(
                Limit.Kind.INSERT,
                torqueAtNm(share.low() * load),
                torqueAtNm(share.high() * load),
                shares(share)
                        + " of the load "
                        + figures(load, 3)
                        + " N that shears "
                        + plastic.id()
                        + ", "
                        + figures(plastic.shear(), 4)
                        + " N/mm², round an insert taken as "
                        + mm(outer)
                        + " wide and as long as the engagement");
    }

    private void headBearing() {
        if (in.clamped().isEmpty() || in.head().bearing() != HeadSize.Bearing.FLAT) {
            return;
        }
        Material under = in.clamped().get();
        if (under.rm().isEmpty()) {
            cautions.add("The strength of " + under.id() + " under the head is not known.");
            return;
        }
        double outer = in.head().bearingMm();
        double area = Math.PI / 4 * (outer * outer - in.holeMm() * in.holeMm());
        double load = area * under.rm().getAsDouble();
        Rule share = tables.rule(under.thermoplastic() ? "plastic-torque-share" : "strip-share");
        add(
                Limit.Kind.HEAD_BEARING,
                torqueAtNm(share.low() * load),
                torqueAtNm(share.high() * load),
                shares(share)
                        + " of the load "
                        + figures(load, 3)
                        + " N at which "
                        + figures(area, 3)
                        + " mm² of "
                        + under.id()
                        + " reach its tensile strength "
                        + figures(under.rm().getAsDouble(), 4)
                        + " N/mm²");
    }

    private void drive() {
        if (in.drive().isEmpty()) {
            return;
        }
        Drive drive = in.drive().get();
        Rule share = tables.rule("drive-share");
        tables.drives()
                .capacityNm(drive)
                .ifPresentOrElse(
                        capacity ->
                                add(
                                        Limit.Kind.DRIVE,
                                        share.low() * capacity,
                                        share.high() * capacity,
                                        shares(share)
                                                + " of "
                                                + figures(capacity, 3)
                                                + " N·m, the least that "
                                                + drive.id()
                                                + " drivers are sold or tested for"),
                        () ->
                                cautions.add(
                                        "The torque that drive "
                                                + drive.id()
                                                + " withstands is not known; it does"
                                                + " not limit the value."));
    }

    private void geometry() {
        double d = in.thread().diameterMm();
        double turns = in.thread().turns(in.engagementMm());
        if (turns < tables.rule("full-turns").low()) {
            cautions.add(
                    "Only "
                            + figures(turns, 2)
                            + " turns engage; fewer than "
                            + figures(tables.rule("full-turns").low(), 2)
                            + " share the load badly.");
        }
        if (in.bossOuterMm().isPresent()) {
            double least =
                    tables.rule(
                                            in.material().thermoplastic()
                                                    ? "plastic-boss-diameters"
                                                    : "boss-wall-diameters")
                                    .low()
                            * d;
            if (in.bossOuterMm().getAsDouble() < least && in.form() != Seat.Form.INSERT) {
                cautions.add(
                        "The boss of "
                                + mm(in.bossOuterMm().getAsDouble())
                                + " is thinner than "
                                + mm(least)
                                + " and may widen or split before the thread strips.");
            }
        }
        if (in.head().bearing() == HeadSize.Bearing.NONE) {
            cautions.add(
                    "A set screw clamps by its tip; the friction there is left out, which makes"
                            + " the value low.");
        }
        if (in.material().thermoplastic()) {
            cautions.add(
                    "Plastic creeps and its thread weakens with every cycle; stop at"
                            + " the first rise after seating.");
        }
    }

    private List<Input> inputs() {
        ScrewThread thread = in.thread();
        List<Input> all = new ArrayList<>();
        all.add(
                new Input(
                        "thread",
                        thread.designation()
                                + ", pitch "
                                + mm(thread.pitchMm())
                                + ", stress area "
                                + figures(thread.stressAreaMm2(), 3)
                                + " mm²",
                        thread.source()));
        all.add(
                new Input(
                        "screw",
                        in.strength().id()
                                + ", yield "
                                + figures(in.strength().yieldMin(), 4)
                                + " N/mm²",
                        in.strength().source()));
        all.add(
                new Input(
                        "friction",
                        in.friction().surface()
                                + ", "
                                + in.friction().low()
                                + " to "
                                + in.friction().high(),
                        in.friction().source()));
        all.add(
                new Input(
                        "head",
                        in.head().head()
                                + ", bears on "
                                + mm(in.head().bearingMm())
                                + " over a hole of "
                                + mm(in.holeMm()),
                        in.head().source()));
        in.drive().ifPresent(drive -> all.add(new Input("drive", drive.id(), drive.title())));
        all.add(
                new Input(
                        "seat",
                        in.form().name().toLowerCase(Locale.ROOT)
                                + " in "
                                + in.material().id()
                                + ", shear strength "
                                + figures(in.material().shear(), 4)
                                + " N/mm²",
                        in.material().source()));
        all.add(new Input("engagement", mm(in.engagementMm()), "as given"));
        return all;
    }

    private static String shares(Rule share) {
        return figures(100 * share.low(), 3) + " to " + figures(100 * share.high(), 3) + " %";
    }

    private void add(Limit.Kind kind, double cautious, double utmost, String told) {
        limits.add(new Limit(kind, cautious, utmost, told));
    }
}
