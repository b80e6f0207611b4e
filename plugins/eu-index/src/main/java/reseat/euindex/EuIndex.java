package reseat.euindex;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import reseat.model.Act;
import reseat.model.Device;
import reseat.plan.Plan;
import reseat.plan.Plans;
import reseat.spi.Assessment;

/**
 * The assessment: plans the way to each priority part and counts its steps, fasteners and tools.
 */
public final class EuIndex implements Assessment {

    private static final String ANNEX = "Annex IV point 5";

    @Override
    public String id() {
        return "eu-index";
    }

    @Override
    public String title() {
        return "EU repairability index of smartphones and slate tablets";
    }

    @Override
    public String source() {
        return "Delegated Regulation (EU) 2023/1669, consolidated state of 10 May 2026";
    }

    @Override
    public List<Statement> statements() {
        return Statements.KNOWN;
    }

    @Override
    public Result assess(Device device, Map<String, String> said, Plans plans) {
        Statements stated = Statements.of(device, said);
        Set<String> all = new LinkedHashSet<>();
        for (PriorityPart part : PriorityPart.values()) {
            all.addAll(stated.parts(part));
        }
        List<Criterion> criteria = new ArrayList<>();
        Map<PriorityPart, PartPoints> points = new EnumMap<>(PriorityPart.class);
        List<String> remarks = new ArrayList<>(List.of(CAUTION));
        Set<String> warmed = new LinkedHashSet<>();
        List<String> absent = new ArrayList<>();
        for (PriorityPart part : PriorityPart.values()) {
            if (stated.parts(part).isEmpty()) {
                absent.add(part.id());
            }
            for (String id : stated.parts(part)) {
                Plan plan =
                        plans.plan(WayOff.request(device, id))
                                .best()
                                .orElseThrow(
                                        () ->
                                                new IllegalArgumentException(
                                                        "part."
                                                                + part.id()
                                                                + ": no plan frees "
                                                                + id
                                                                + " without ruining a part; the"
                                                                + " method only counts removal"
                                                                + " without damage"));
                PartPoints found = judge(device, part, id, plan, stated, all, criteria);
                points.merge(part, found, PartPoints::worse);
                warmed.addAll(new Path(plan, stated).warmedByWay());
                if (!plan.proved()) {
                    remarks.add(
                            "The plan for "
                                    + id
                                    + " is not proved optimal; a better plan may have fewer"
                                    + " steps.");
                }
            }
        }
        addAbsent(absent, criteria);
        RepairIndex index = RepairIndex.of(points, stated.product(), stated.foldable());
        addTotals(index, criteria);
        if (index.isOnTheLimit()) {
            remarks.add(
                    "The exact index is just below a class limit: rounded, it would be in the"
                            + " better class. The class is that of the exact index.");
        }
        if (!warmed.isEmpty()) {
            remarks.add(
                    "Warming is a step for "
                            + String.join(", ", warmed)
                            + ", because the way puts heat to the device.");
        }
        stated.assumed().forEach(each -> remarks.add("Assumed: " + each));
        remarks.add(
                "Change of tool right after a removal: "
                        + stated.reading().name().toLowerCase(Locale.ROOT)
                        + "; the text of the law allows both readings.");
        return new Result(criteria, remarks);
    }

    private static void addAbsent(List<String> absent, List<Criterion> criteria) {
        absent.remove(PriorityPart.FOLDING.id());
        if (!absent.isEmpty()) {
            criteria.add(
                    new Criterion(
                            "absent",
                            "Parts that the product does not have",
                            String.join(", ", absent),
                            List.of("5 points each for steps, fasteners and tools"),
                            ANNEX));
        }
    }

    private static final String CAUTION =
            "This is an estimate from the device file and the statements. The maker declares the"
                    + " index from the published repair information; this is neither a"
                    + " declaration nor legal advice.";

    private static PartPoints judge(
            Device device,
            PriorityPart part,
            String id,
            Plan plan,
            Statements stated,
            Set<String> priorityParts,
            List<Criterion> criteria) {
        Path path = new Path(plan, stated);
        String name = device.part(id).name();
        int depth = depth(part, name, path, stated, criteria);
        Fasteners fasteners = new Fasteners(device, stated);
        int worst = Fasteners.REUSABLE;
        List<String> met = new ArrayList<>();
        for (Act.Release release : path.fastenersMet(priorityParts, id)) {
            if (fasteners.holdNothing(release)) {
                continue;
            }
            int each = fasteners.points(release, stated.supplied(part, id));
            worst = Math.min(worst, each);
            met.add(release.joint() + ": " + each);
        }
        criteria.add(
                new Criterion(
                        part.id() + "-fasteners",
                        "Fasteners of " + name,
                        pointsText(worst),
                        met.isEmpty() ? List.of("no fastener met") : met,
                        ANNEX + ", fasteners"));
        int tools = ToolClass.NO_TOOL;
        List<String> used = new ArrayList<>();
        for (String tool : path.toolsUsed(priorityParts, id)) {
            ToolClass kind = ToolClass.of(device, tool, stated);
            refuseProprietary(kind, tool, part);
            tools = Math.min(tools, kind.points());
            used.add(tool + ": " + kind.word() + ", " + kind.points());
        }
        criteria.add(
                new Criterion(
                        part.id() + "-tools",
                        "Tools for " + name,
                        pointsText(tools),
                        used.isEmpty() ? List.of("bare hands") : used,
                        ANNEX + ", tools"));
        return new PartPoints(depth, worst, tools);
    }

    /** Notes the disassembly depth of a part and returns its points. */
    private static int depth(
            PriorityPart part,
            String name,
            Path path,
            Statements stated,
            List<Criterion> criteria) {
        List<Operation> operations = path.operations();
        int serial = stated.serialActions(part);
        int steps = Steps.count(operations, serial, stated.reading());
        List<String> evidence = new ArrayList<>();
        evidence.add(operations.size() + " operations");
        if (serial > 0) {
            evidence.add(serial + " serial-number actions, 5 steps each");
        }
        for (Steps.Reading reading : Steps.Reading.values()) {
            evidence.add(
                    Steps.count(operations, serial, reading)
                            + " steps in the reading "
                            + reading.name().toLowerCase(Locale.ROOT));
        }
        criteria.add(
                new Criterion(
                        part.id() + "-depth",
                        "Steps to " + name,
                        steps + " steps, " + pointsText(Steps.points(steps)),
                        evidence,
                        ANNEX + ", disassembly depth"));
        return Steps.points(steps);
    }

    private static void refuseProprietary(ToolClass kind, String tool, PriorityPart part) {
        if (kind == ToolClass.PROPRIETARY) {
            throw new IllegalArgumentException(
                    "tool."
                            + tool
                            + ": a proprietary tool has no points; regulation 2023/1670 excludes it for "
                            + part.id());
        }
    }

    private static String pointsText(int points) {
        return points + (points == 1 ? " point" : " points");
    }

    private static void addTotals(RepairIndex index, List<Criterion> criteria) {
        criteria.add(hundredths("depth", "Disassembly depth", index.depth()));
        criteria.add(hundredths("fasteners", "Fasteners", index.fasteners()));
        criteria.add(hundredths("tools", "Tools", index.tools()));
        ProductPoints product = index.product();
        criteria.add(hundredths("spare-parts", "Spare parts", 100 * product.spareParts()));
        criteria.add(hundredths("updates", "Software updates", 100 * product.updates()));
        criteria.add(hundredths("information", "Repair information", 100 * product.information()));
        criteria.add(
                new Criterion(
                        "index",
                        "Repairability index",
                        index.rounded() + " of 5, class " + index.letter(),
                        List.of("exactly " + index.exact()),
                        ANNEX + ", Annex II C Table 4"));
    }

    private static Criterion hundredths(String id, String title, int value) {
        return new Criterion(
                id,
                title,
                String.format(Locale.ROOT, "%d.%02d of 5", value / 100, value % 100),
                List.of(),
                ANNEX);
    }
}
