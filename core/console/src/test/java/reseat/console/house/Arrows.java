package reseat.console.house;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.BiPredicate;
import reseat.console.house.House.Area;

/** Who may know whom. Arrows run down only. */
final class Arrows {

    /** An area of the toolkit (root.x with root.internal.x), and whose two sides it may know. */
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
                            "the step graph says what is possible; what to choose is the plan's"),
                    new Floor(
                            "time",
                            Set.of("model"),
                            "a time belongs to an act, whoever plans or simulates it"),
                    new Floor(
                            "order",
                            Set.of(),
                            "sequential ordering is a problem of numbers; knowing no device it can"
                                    + " be tested against the published instances"),
                    new Floor(
                            "plan",
                            Set.of("model", "graph", "order", "time", "fasten"),
                            "a plan is computed from facts and must not ask who judges it"),
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
                            Set.of("model", "plan", "fasten", "job"),
                            "a stock knows what a plan needs of it, and nobody's opinion of it"),
                    new Floor(
                            "sheet",
                            Set.of("model", "fasten", "plan"),
                            "a sheet says what a plan and its rebuild are; how it is laid out is"
                                    + " the renderer's, and nobody computes with it"),
                    new Floor(
                            "query",
                            Set.of("model", "graph", "fasten", "plan", "job", "stock"),
                            "answers about facts and plans, for checks and scripts to ask for"),
                    new Floor(
                            "check",
                            Set.of(
                                    "model",
                                    "graph",
                                    "order",
                                    "time",
                                    "fasten",
                                    "plan",
                                    "simulate",
                                    "job",
                                    "stock",
                                    "query"),
                            "a check looks at what was computed; nobody computes with checks,"
                                    + " and files are the reader's"),
                    new Floor("text", Set.of(), "text helps everybody, so it can know nobody"));

    /** Areas of the toolkit that join the floors together and may know all of them. */
    private static final Set<String> JOINING = Set.of("spi", "device", "read", "load", "script");

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
                        "the toolkit stands alone",
                        "plugins, console and test kit are built on the toolkit; it must work for"
                                + " a program that has none of them",
                        (from, to) -> !from.isToolkit() || to.isToolkit()));
        rules.add(
                arrow(
                        house,
                        "the test kit knows the exported toolkit alone",
                        "authors of plugins test with it against the published interface",
                        (from, to) -> !from.name().equals("testkit") || isOpenToolkit(from, to)));
        rules.add(
                arrow(
                        house,
                        "the console knows the exported toolkit alone",
                        "it finds plugins as services, ours like anyone's, and what the console"
                                + " needs a plugin author needs too",
                        (from, to) -> !from.name().equals("console") || isOpenToolkit(from, to)));
        rules.add(
                arrow(
                        house,
                        "plugins know the exported toolkit alone",
                        "a plugin must run where there is no console, and internals change without"
                                + " notice",
                        (from, to) -> !from.name().equals("plugins") || isOpenToolkit(from, to)));
        rules.add(everyPackageHasItsPlace(house));
        rules.add(onlyTheReaderKnowsFiles(house));
        return rules;
    }

    private static boolean mayKnow(Floor floor, Area to) {
        return to.name().equals(floor.name)
                || to.name().equals(TEXT)
                || floor.below.contains(to.name());
    }

    private static boolean isOpenToolkit(Area from, Area to) {
        return to.name().equals(from.name()) || to.isToolkit() && !to.inside();
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
                    boolean placed =
                            !area.isToolkit()
                                    || JOINING.contains(area.name())
                                    || FLOORS.stream().anyMatch(f -> f.name.equals(area.name()));
                    if (!placed) {
                        breach.accept(type.getName() + " is in " + area + ", which has no place");
                    }
                });
    }

    private static HouseRule onlyTheReaderKnowsFiles(House house) {
        return HouseRule.of(
                "only the reader knows file formats",
                "nothing but internal.read and device may use Jackson, YAML or CSV libraries, so"
                        + " that they can be replaced and the model stays free of formats",
                (type, breach) -> {
                    if (!house.owns(type)) {
                        return;
                    }
                    Area area = house.areaOf(type);
                    if (area.name().equals("plugins")
                            || area.name().equals("device")
                            || area.inside() && area.name().equals("read")) {
                        return;
                    }
                    for (Dependency dependency : type.getDirectDependenciesFromSelf()) {
                        if (house.isFileLibrary(
                                dependency.getTargetClass().getBaseComponentType())) {
                            breach.accept(dependency.getDescription());
                        }
                    }
                });
    }
}
