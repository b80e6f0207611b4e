package reseat.console.house;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.BiPredicate;
import reseat.console.house.House.Area;

/**
 * Who may know whom inside a module. Arrows run down only; those between modules are kept by the
 * compiler, which reads the module descriptors.
 */
final class Arrows {

    /** An area (root.x with root.internal.x), and whose two sides it may know. */
    private record Floor(String name, Set<String> below, String why) {}

    private static final List<Floor> FLOORS =
            List.of(
                    new Floor(
                            "model",
                            Set.of(),
                            "the model is the physical facts, and facts depend on no algorithm"),
                    new Floor(
                            "fasten",
                            Set.of("model"),
                            "a torque follows from the facts of a joint, not from any plan"),
                    new Floor(
                            "graph",
                            Set.of("model"),
                            "the step graph says what is possible; what to choose is the planner's"),
                    new Floor(
                            "plan",
                            Set.of("model", "fasten"),
                            "a plan is a value; who finds it and who judges it stand elsewhere"),
                    new Floor(
                            "simulate",
                            Set.of("model"),
                            "the simulator judges plans, so it shares no code with the planner;"
                                    + " a shared mistake would be seen by neither"),
                    new Floor(
                            "job",
                            Set.of("model", "plan"),
                            "a job is a plan carried out; who checks or books it comes after"),
                    new Floor(
                            "stock",
                            Set.of(),
                            "a stock is lines and reservations; what a plan needs of it is worked"
                                    + " out by the commands of the plugin stock-desk"),
                    new Floor(
                            "sheet",
                            Set.of("model", "fasten", "plan"),
                            "a sheet says what a plan and its rebuild are; how it is laid out is"
                                    + " the renderer's, and nobody computes with it"),
                    new Floor(
                            "query",
                            Set.of("model", "fasten", "plan", "job", "stock"),
                            "answers about facts and plans, for checks and scripts to ask for"),
                    new Floor(
                            "check",
                            Set.of("model", "fasten", "plan", "job", "stock", "query"),
                            "a check looks at what was computed; nobody computes with checks"),
                    new Floor(
                            "order",
                            Set.of("plan"),
                            "sequential ordering is a problem of numbers under a plan's limits of"
                                    + " effort; knowing no device it can be tested against the"
                                    + " published instances"),
                    new Floor(
                            "planner",
                            Set.of("model", "graph", "plan", "simulate", "order"),
                            "the planner works on facts and the step graph alone"),
                    new Floor(
                            "time",
                            Set.of("model"),
                            "an index string comes to a time, whoever wrote it into a file"),
                    new Floor(
                            "text",
                            Set.of(),
                            "small helpers for text serve everybody, so they can know nobody"));

    /** Areas that join the floors of their module together. */
    private static final Set<String> JOINING =
            Set.of("spi", "files", "loader", "script", "console", "testkit", "plugins");

    private static final String TEXT = "text";

    private Arrows() {}

    static List<HouseRule> of(House house) {
        List<HouseRule> rules = new ArrayList<>();
        for (Floor floor : FLOORS) {
            rules.add(
                    arrow(
                            house,
                            floor.name
                                    + " knows "
                                    + (floor.below.isEmpty() ? "nothing" : "those below"),
                            floor.why,
                            (from, to) -> !from.name().equals(floor.name) || mayKnow(floor, to)));
        }
        rules.add(
                arrow(
                        house,
                        "the search does not know the simulator",
                        "the door has each plan judged; a search that knew the judge could share"
                                + " its mistakes",
                        (from, to) ->
                                !(from.inside() && from.name().equals("planner"))
                                        || !to.name().equals("simulate")));
        rules.add(everyPackageHasItsPlace(house));
        return rules;
    }

    private static boolean mayKnow(Floor floor, Area to) {
        return to.name().equals(floor.name)
                || to.name().equals(TEXT)
                || floor.below.contains(to.name());
    }

    private static HouseRule arrow(
            House house, String name, String why, BiPredicate<Area, Area> allowed) {
        return HouseRule.of(
                name,
                why,
                (type, breach) -> {
                    if (!house.owns(type)) {
                        return;
                    }
                    for (Dependency dependency : type.getDirectDependenciesFromSelf()) {
                        JavaClass target = dependency.getTargetClass().getBaseComponentType();
                        if (house.owns(target)
                                && !allowed.test(house.areaOf(type), house.areaOf(target))) {
                            breach.accept(
                                    house.areaOf(type)
                                            + " must not know "
                                            + house.areaOf(target)
                                            + ": "
                                            + dependency.getDescription());
                        }
                    }
                });
    }

    private static HouseRule everyPackageHasItsPlace(House house) {
        return HouseRule.of(
                "every package has its place",
                "an area without a floor would obey no arrow; give it one in Arrows.FLOORS",
                (type, breach) -> {
                    if (!house.owns(type)) {
                        return;
                    }
                    Area area = house.areaOf(type);
                    if (!JOINING.contains(area.name())
                            && FLOORS.stream().noneMatch(f -> f.name.equals(area.name()))) {
                        breach.accept(type.getName() + " is in " + area + ", which has no place");
                    }
                });
    }
}
