package reseat.internal.sheet;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import reseat.model.Consumable;
import reseat.model.ConsumableUse;
import reseat.model.Tool;
import reseat.plan.SpareNeed;
import reseat.plan.Tally;
import reseat.plan.Wear;
import reseat.sheet.Names;
import reseat.sheet.Need;

/** What to have ready. */
final class NeedMaker {

    private static final String PIECE = "piece";

    /** No act of a plan names this tool; it drives screws in the rebuild. */
    private static final String TORQUE_DRIVER = "torque-driver";

    private final Source source;
    private final Names names;
    private final List<Need> needs = new ArrayList<>();

    NeedMaker(Source source) {
        this.source = source;
        this.names = source.names();
    }

    List<Need> make() {
        tools();
        needs.addAll(new SafetyNeeds(source).make());
        for (Tally.Total total : source.tally().totals()) {
            int count = total.out().size();
            String screw = names.screw(total.type());
            pieces(
                    Need.Kind.SCREWS_OUT,
                    total.type(),
                    screw,
                    count,
                    tray(total.type())
                            + count
                            + " × "
                            + total.type()
                            + "  ("
                            + screw
                            + "): "
                            + names.together(total.out()));
        }
        source.rebuild().consumables().forEach(this::usedUp);
        source.rebuild().spares().forEach(this::spare);
        for (Wear wear : source.rebuild().wear()) {
            if (wear.isSpent() || wear.made() * 4 >= wear.rated() * 3) {
                pieces(
                        Need.Kind.WORN,
                        wear.joint(),
                        names.joint(wear.joint()),
                        1,
                        names.joint(wear.joint())
                                + " will have been made "
                                + wear.made()
                                + " times of "
                                + wear.rated());
            }
        }
        return needs;
    }

    private String tray(String type) {
        OptionalInt number = source.trays().number(type);
        return number.isPresent() ? "Tray\u00a0" + number.getAsInt() + ": " : "";
    }

    private void tools() {
        Set<String> used = new LinkedHashSet<>();
        source.plan().acts().forEach(act -> used.add(act.tool()));
        source.rebuild().acts().forEach(act -> used.add(act.tool()));
        used.remove(source.device().hand());
        Set<String> handles = new LinkedHashSet<>();
        for (String id : used) {
            Tool tool = source.device().tools().get(id);
            tool(id, names.tool(id));
            if (tool != null) {
                tool.handle().ifPresent(handles::add);
            }
        }
        handles.forEach(handle -> tool(handle, "handle for the bits"));
        if (!handles.isEmpty()) {
            tool(TORQUE_DRIVER, "torque driver for the way back");
        }
        if (used.isEmpty()) {
            tool(source.device().hand(), "bare hands");
        }
    }

    private void tool(String id, String name) {
        pieces(Need.Kind.TOOL, id, name, 1, name);
    }

    private void usedUp(ConsumableUse use) {
        Consumable consumable = source.device().consumables().get(use.consumable());
        needs.add(
                new Need(
                        Need.Kind.USED_UP,
                        use.consumable(),
                        consumable == null ? use.consumable() : consumable.name(),
                        use.quantity(),
                        use.unit(),
                        Optional.empty(),
                        "",
                        names.use(use)));
    }

    private void spare(SpareNeed need) {
        boolean screw = need.reason() == SpareNeed.Reason.LOCKING_PATCH;
        String why =
                switch (need.reason()) {
                    case TARGET -> "if it is replaced";
                    case RUINED -> "the work destroys the old one";
                    case LOCKING_PATCH -> "new ones: a locking patch holds once";
                };
        String name = screw ? names.screw(need.id()) : need.name();
        needs.add(
                new Need(
                        switch (need.reason()) {
                            case TARGET -> Need.Kind.TARGET;
                            case RUINED -> Need.Kind.RUINED;
                            case LOCKING_PATCH -> Need.Kind.NEW_SCREWS;
                        },
                        need.id(),
                        name,
                        BigDecimal.valueOf(need.count()),
                        PIECE,
                        need.number(),
                        why,
                        (screw ? need.count() + " × " + need.id() + " (" + name + ")" : name)
                                + ", "
                                + need.number()
                                        .map(n -> "order no. " + n)
                                        .orElse("no order number known")
                                + ": "
                                + why));
    }

    private void pieces(Need.Kind kind, String id, String name, int count, String text) {
        needs.add(
                new Need(
                        kind,
                        id,
                        name,
                        BigDecimal.valueOf(count),
                        PIECE,
                        Optional.empty(),
                        "",
                        text));
    }
}
