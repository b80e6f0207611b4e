package reseat.euindex;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import reseat.model.Device;
import reseat.spi.Assessment.Statement;

/** The maker's statements beyond the device file: reads them and checks them against the device. */
final class Statements {

    static final List<Statement> KNOWN = known();

    private static final String NONE = "none";

    /** Built-in consumables that clean, grease, seal or conduct heat, but hold nothing. */
    private static final Set<String> HOLDS_NOTHING =
            Set.of(
                    "cleaner",
                    "wipe",
                    "silicone-grease",
                    "thermal-paste",
                    "thermal-pad",
                    "gasket-cord",
                    "seal-label");

    private final Device device;
    private final Map<String, String> stated;

    private Statements(Device device, Map<String, String> stated) {
        this.device = device;
        this.stated = stated;
    }

    private static List<Statement> known() {
        List<Statement> known = new ArrayList<>();
        for (PriorityPart part : PriorityPart.values()) {
            known.add(
                    new Statement(
                            "part." + part.id(),
                            "Comma-separated ids of the device's parts that are this priority"
                                    + " part, or none. The back cover may be the base.",
                            part != PriorityPart.FOLDING));
            known.add(
                    new Statement(
                            "supplied." + part.id(),
                            "yes if adhesive and other new fasteners for it come with the spare"
                                    + " part at no extra cost, or the ids of the parts for which"
                                    + " they do.",
                            false));
            known.add(
                    new Statement(
                            "serial." + part.id(),
                            "Number of remote notifications or authorisations of a serial number"
                                    + " that it needs to work fully.",
                            false));
        }
        known.add(
                new Statement(
                        "warmed",
                        "Comma-separated ids of joints that are warmed first, besides those whose"
                                + " way heats; each is a step.",
                        false));
        known.add(
                new Statement(
                        "warmed-with", "Id of the tool that warms (default: heat-mat).", false));
        known.add(
                new Statement(
                        "cleaned",
                        "Ids of joints whose residue must be cleaned off before work continues;"
                                + " each is a step.",
                        false));
        known.add(
                new Statement(
                        "joins-nothing",
                        "Ids of consumables that hold nothing together, besides cleaner, wipes,"
                                + " grease, thermal paste and pads, and loose gaskets.",
                        false));
        known.add(
                new Statement(
                        "tool.NAME",
                        "Class of a tool: basic, with-part, with-product, on-sale or proprietary.",
                        false));
        known.add(
                new Statement(
                        "end-users-can-buy",
                        "Comma-separated priority parts that end users can buy, or all.",
                        true));
        known.add(
                new Statement(
                        "updates-years",
                        "Years of updates of the operating system, counted from the end of placement on the market.",
                        true));
        known.add(
                new Statement(
                        "information",
                        "Who gets the repair information: public, free-for-professionals or paid-by-professionals.",
                        true));
        known.add(
                new Statement(
                        "reading",
                        "How a change of tool right after a removal counts: merged (usual) or"
                                + " strict.",
                        false));
        return List.copyOf(known);
    }

    /**
     * Reads statements.
     *
     * @throws IllegalArgumentException with all errors, one per line
     */
    static Statements of(Device device, Map<String, String> stated) {
        List<String> faults = new ArrayList<>();
        Set<String> names = new TreeSet<>();
        KNOWN.forEach(each -> names.add(each.name()));
        stated.keySet().stream()
                .filter(name -> !names.contains(name) && !name.startsWith("tool."))
                .forEach(
                        name ->
                                faults.add(
                                        name
                                                + " is not a statement of this method; known: "
                                                + String.join(", ", names)));
        KNOWN.stream()
                .filter(each -> each.required() && !stated.containsKey(each.name()))
                .forEach(each -> faults.add(each.name() + " is missing: " + each.says()));
        if (!faults.isEmpty()) {
            throw new IllegalArgumentException(String.join("\n", faults));
        }
        return new Statements(device, new LinkedHashMap<>(stated));
    }

    boolean foldable() {
        return !parts(PriorityPart.FOLDING).isEmpty();
    }

    /** Returns the parts of the device that are a priority part; empty if it has none. */
    List<String> parts(PriorityPart part) {
        String name = "part." + part.id();
        List<String> ids = list(name);
        for (String id : ids) {
            if (!device.parts().containsKey(id)) {
                throw wrong(name, id, "the id of a part, or none");
            }
            if (id.equals(device.base()) && part != PriorityPart.BACK_COVER) {
                throw wrong(
                        name,
                        id,
                        "a part other than the base, which only the back cover can be, or none");
            }
        }
        return ids;
    }

    /** Returns whether new fasteners come with the spare part for one of the device's parts. */
    boolean supplied(PriorityPart part, String id) {
        String name = "supplied." + part.id();
        String text = stated.getOrDefault(name, "no").strip();
        if (text.equals("yes") || text.equals("no")) {
            return text.equals("yes");
        }
        for (String each : list(name)) {
            if (!parts(part).contains(each)) {
                throw wrong(name, each, "yes, no, or some of the ids in part." + part.id());
            }
        }
        return list(name).contains(id);
    }

    /** Returns whether something that a rebuild uses up holds parts together. */
    boolean joins(String consumable) {
        return !HOLDS_NOTHING.contains(consumable) && !joinsNothing().contains(consumable);
    }

    private List<String> joinsNothing() {
        String name = "joins-nothing";
        List<String> ids = list(name);
        for (String id : ids) {
            if (!device.consumables().containsKey(id)) {
                throw wrong(name, id, "the id of a consumable");
            }
        }
        return ids;
    }

    /** Returns what was not stated and is assumed, one sentence each. */
    List<String> assumed() {
        List<String> assumed = new ArrayList<>();
        List<PriorityPart> present =
                Arrays.stream(PriorityPart.values()).filter(p -> !parts(p).isEmpty()).toList();
        silent(present, "supplied.")
                .ifPresent(ids -> assumed.add("Nothing new to fasten comes with: " + ids + "."));
        silent(present, "serial.")
                .ifPresent(
                        ids ->
                                assumed.add(
                                        "No serial number is checked remotely for: " + ids + "."));
        if (!stated.containsKey("cleaned")) {
            assumed.add("No residue has to be cleaned off before work goes on.");
        }
        return assumed;
    }

    private Optional<String> silent(List<PriorityPart> present, String prefix) {
        List<String> ids =
                present.stream()
                        .map(PriorityPart::id)
                        .filter(id -> !stated.containsKey(prefix + id))
                        .toList();
        return ids.isEmpty() ? Optional.empty() : Optional.of(String.join(", ", ids));
    }

    int serialActions(PriorityPart part) {
        return number("serial." + part.id(), "0");
    }

    List<String> warmed() {
        return joints("warmed");
    }

    String warmedWith() {
        return stated.getOrDefault("warmed-with", "heat-mat");
    }

    List<String> cleaned() {
        return joints("cleaned");
    }

    /** Returns the stated class of a tool. */
    Optional<ToolClass> tool(String id) {
        String name = "tool." + id;
        if (!stated.containsKey(name)) {
            return Optional.empty();
        }
        List<String> names = Arrays.stream(ToolClass.values()).map(ToolClass::word).toList();
        String word = choice(name, "", names);
        return Arrays.stream(ToolClass.values()).filter(c -> c.word().equals(word)).findFirst();
    }

    Steps.Reading reading() {
        return choice("reading", "merged", List.of("merged", "strict")).equals("merged")
                ? Steps.Reading.MERGED
                : Steps.Reading.STRICT;
    }

    /** Returns the points of the product (Annex IV point 5, spare parts, updates, information). */
    ProductPoints product() {
        return new ProductPoints(spareParts(), updates(), information());
    }

    private int spareParts() {
        String name = "end-users-can-buy";
        List<String> all =
                Arrays.stream(PriorityPart.values())
                        .filter(part -> part != PriorityPart.FOLDING || foldable())
                        .map(PriorityPart::id)
                        .toList();
        List<String> sold = "all".equals(stated.get(name)) ? all : list(name);
        for (String id : sold) {
            if (!all.contains(id)) {
                throw wrong(name, id, "all, or some of " + String.join(", ", all));
            }
        }
        List<List<String>> levels =
                List.of(
                        all,
                        List.of("display", "battery", "back-cover", "front-camera", "rear-camera"),
                        List.of("display", "battery", "back-cover"),
                        List.of("display", "battery"),
                        List.of("display"));
        for (int i = 0; i < levels.size(); i++) {
            if (sold.containsAll(levels.get(i))) {
                return 5 - i;
            }
        }
        throw new IllegalArgumentException(
                name + ": where end users cannot buy the display, the method has no points");
    }

    private int updates() {
        int years = number("updates-years", "");
        if (years < 5) {
            throw new IllegalArgumentException(
                    "updates-years: below 5 years the method has no points; found " + years);
        }
        return years >= 7 ? 5 : years == 6 ? 3 : 1;
    }

    private int information() {
        return switch (choice(
                "information",
                "",
                List.of("public", "free-for-professionals", "paid-by-professionals"))) {
            case "public" -> 5;
            case "free-for-professionals" -> 3;
            default -> 1;
        };
    }

    private List<String> joints(String name) {
        List<String> ids = list(name);
        for (String id : ids) {
            if (!device.joints().containsKey(id)) {
                throw wrong(name, id, "the id of a joint");
            }
        }
        return ids;
    }

    private List<String> list(String name) {
        String text = stated.getOrDefault(name, NONE).strip();
        return text.equals(NONE)
                ? List.of()
                : Arrays.stream(text.split(",")).map(String::strip).distinct().toList();
    }

    private int number(String name, String usual) {
        String text = stated.getOrDefault(name, usual).strip();
        if (!text.matches("[0-9]{1,3}")) {
            throw wrong(name, text, "a whole number");
        }
        return Integer.parseInt(text);
    }

    private String choice(String name, String usual, List<String> words) {
        String text = stated.getOrDefault(name, usual).strip();
        if (!words.contains(text)) {
            throw wrong(name, text, "one of " + String.join(", ", words));
        }
        return text;
    }

    private static IllegalArgumentException wrong(String name, String found, String expected) {
        return new IllegalArgumentException(
                name + ": found \"" + found + "\", expected " + expected);
    }
}
