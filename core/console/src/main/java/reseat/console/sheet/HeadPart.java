package reseat.console.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import reseat.model.ConsumableUse;
import reseat.model.CostedAct;
import reseat.model.Device;
import reseat.model.Signal;
import reseat.model.Tool;
import reseat.plan.Advice;
import reseat.plan.Plan;
import reseat.plan.PlanNotes;
import reseat.plan.Rebuild;
import reseat.plan.SpareNeed;
import reseat.plan.Tally;
import reseat.plan.Wear;

/** The head of a sheet: what it is about, what it takes, what to have ready. */
final class HeadPart {

    private static final int INDENT = 14;

    private final Plan plan;
    private final Rebuild rebuild;
    private final Device device;
    private final Names names;
    private final Paper paper;

    HeadPart(Plan plan, Rebuild rebuild, Paper paper) {
        this.plan = plan;
        this.rebuild = rebuild;
        this.device = plan.request().device();
        this.names = new Names(device);
        this.paper = paper;
    }

    void write(Steps steps, PlanNotes notes) {
        String title = device.name() + (device.maker().isEmpty() ? "" : ", " + device.maker());
        paper.rule("Work sheet: " + title, '═');
        field("Goal", names.goal(plan.request().goal()) + " and put everything back");
        field(
                "Device",
                device.id()
                        + device.variant().map(v -> ", variant " + v).orElse(", base variant")
                        + start());
        time();
        field("Proof", proof());
        field("Covers", covers(steps));
        hazards(steps, notes);
        field("Unit", "No. ______________   Done by ______________   Date ____________");
        paper.gap();
        paper.para(
                0,
                "",
                "The maker's service document and the local codes come first: where they differ"
                        + " from this sheet, they hold. The work belongs to people qualified for"
                        + " it. Order and times are computed from a description of the device and"
                        + " are estimates; torques are the maker's where one is given, and none is"
                        + " made up. If the unit does not look as the sheet says, stop.");
    }

    private String start() {
        int open = plan.request().start().released().size();
        return open == 0 ? "" : "; arrives with " + Names.count(open, "joint", "joints") + " open";
    }

    private void time() {
        long out = 0;
        long setup = 0;
        for (CostedAct act : plan.acts()) {
            out += act.ms();
            setup += act.setupMs();
        }
        field(
                "Time",
                Names.time(plan.totalMs())
                        + ": taking apart "
                        + Names.time(out)
                        + ", changing tools and turning "
                        + Names.time(setup)
                        + ", putting back "
                        + Names.time(rebuild.restoreMs()));
        if (!rebuild.acts().isEmpty()) {
            field(
                    "",
                    "Not in it: set-ups while putting back "
                            + Names.time(rebuild.setupMs())
                            + (rebuild.dwellMs() > 0
                                    ? ", waiting " + Names.time(rebuild.dwellMs())
                                    : "")
                            + ", the work itself, the tests");
        }
    }

    private String proof() {
        if (plan.proved()) {
            return "Proved: no valid way costs less";
        }
        String why =
                switch (plan.ended()) {
                    case TIME -> "the time to think was up";
                    case EXPANSIONS -> "the effort allowed was used up";
                    case MEMORY -> "the memory was used up";
                    case CANCELLED -> "it was cancelled";
                    case PROVED -> "";
                };
        return "Not proved: a better way could save at most "
                + Names.time(plan.totalMs() - plan.lowerBoundMs())
                + " ("
                + Names.number(Math.ceil(plan.gap() * 1000) / 10)
                + " %); "
                + why;
    }

    private String covers(Steps steps) {
        long joints = plan.acts().stream().filter(a -> a.act().id().startsWith("release:")).count();
        return "Steps 1 to "
                + (steps.teardown().size() + steps.rebuild().size())
                + ": "
                + Names.count((int) joints, "joint", "joints")
                + " released, "
                + Names.count(plan.movedParts().size(), "part", "parts")
                + " moved. Work on a part once it is out is not covered.";
    }

    private void hazards(Steps steps, PlanNotes notes) {
        Map<Signal, Map<String, Integer>> found = new java.util.EnumMap<>(Signal.class);
        for (int at = 0; at < notes.teardown().size(); at++) {
            for (Advice advice : notes.teardown().get(at)) {
                if (advice.kind() == Advice.Kind.HAZARD) {
                    found.computeIfAbsent(advice.signal(), s -> new LinkedHashMap<>())
                            .putIfAbsent(advice.text(), steps.numberOf(at));
                }
            }
        }
        String label = "Hazards";
        for (Map.Entry<Signal, Map<String, Integer>> each : found.entrySet()) {
            List<String> words = new ArrayList<>();
            each.getValue()
                    .forEach((text, step) -> words.add(lower(text) + " (step " + step + ")"));
            paper.para(
                    INDENT + 9,
                    label + " ".repeat(Math.max(1, INDENT - label.length())) + each.getKey().name(),
                    String.join("; ", words));
            label = "";
        }
    }

    private static String lower(String text) {
        return text.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + text.substring(1);
    }

    void needs(Tally tally) {
        paper.rule("Have ready", '─');
        field("Tools", tools());
        String label = "Screws out";
        for (Tally.Total total : tally.totals()) {
            field(
                    label,
                    total.out().size()
                            + " × "
                            + total.type()
                            + "  ("
                            + names.screw(total.type())
                            + "): "
                            + names.together(total.out()));
            label = "";
        }
        label = "Used up";
        for (ConsumableUse use : rebuild.consumables()) {
            field(
                    label,
                    use.quantity().toPlainString()
                            + " "
                            + (use.unit().equals("piece") ? "×" : use.unit())
                            + " "
                            + consumable(use.consumable()));
            label = "";
        }
        label = "Spares";
        for (SpareNeed need : rebuild.spares()) {
            field(label, spare(need));
            label = "";
        }
        label = "Cycles";
        for (Wear wear : rebuild.wear()) {
            if (wear.isSpent() || wear.made() * 4 >= wear.rated() * 3) {
                field(
                        label,
                        names.joint(wear.joint())
                                + " will have been made "
                                + wear.made()
                                + " times of "
                                + wear.rated());
                label = "";
            }
        }
    }

    private String consumable(String id) {
        return device.consumables().containsKey(id)
                ? Objects.requireNonNull(device.consumables().get(id)).name()
                : id;
    }

    private String spare(SpareNeed need) {
        String reason =
                switch (need.reason()) {
                    case TARGET -> "if it is replaced";
                    case RUINED -> "the work destroys the old one";
                    case LOCKING_PATCH -> "new ones: a locking patch holds once";
                };
        String what =
                need.reason() == SpareNeed.Reason.LOCKING_PATCH
                        ? need.count() + " × " + need.id() + " (" + names.screw(need.id()) + ")"
                        : need.name();
        return what
                + ", "
                + need.number().map(n -> "order no. " + n).orElse("not sold")
                + ": "
                + reason;
    }

    private String tools() {
        List<String> words = new ArrayList<>();
        for (String id : PlanSheet.tools(plan, device)) {
            Tool tool = device.tools().get(id);
            words.add(tool == null ? id : tool.name());
        }
        boolean bits =
                PlanSheet.tools(plan, device).stream()
                        .map(device.tools()::get)
                        .anyMatch(tool -> tool != null && tool.handle().isPresent());
        return (words.isEmpty() ? "bare hands" : String.join(", ", words))
                + (bits ? "; handle for the bits, torque driver for the way back" : "");
    }

    private void field(String label, String words) {
        paper.para(INDENT, label, words, Paper.Ink.HEADING);
    }
}
