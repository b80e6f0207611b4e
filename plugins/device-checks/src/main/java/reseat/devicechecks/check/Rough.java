package reseat.devicechecks.check;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import reseat.model.Device;
import reseat.model.Tool;

/** What a tool, a manipulation or a text does that a cell does not stand. */
enum Rough {
    /** It conducts, or has hard edges. */
    METAL(
            "metal",
            Texts.word(
                    "metal(?:lic)?",
                    "steel",
                    "stainless",
                    "brass",
                    "iron",
                    "aluminium",
                    "wire",
                    "needle",
                    "scraper",
                    "chisel",
                    "pliers",
                    "tweezers",
                    "scissors",
                    "snips",
                    "screwdriver",
                    "crowbar",
                    "pry bar",
                    "prybar",
                    "jimmy",
                    "awl",
                    "file"),
            Texts.word("$^")),
    /** It cuts. */
    BLADE(
            "a blade",
            Texts.word(
                    "blades?",
                    "knife",
                    "knives",
                    "scalpels?",
                    "razors?",
                    "cutters?",
                    "saws?",
                    "chisels?",
                    "cutting \\w+"),
            Texts.word(
                    "cut(?:s|ting)?",
                    "slic\\w+",
                    "slit\\w*",
                    "saw(?:s|ing)?",
                    "scrap(?:e|es|ing)")),
    /** It bends. */
    LEVER(
            "a lever",
            Texts.word("crowbar", "pry bar", "prybar", "jimmy"),
            Texts.word(
                    "pr(?:y|ies|ied|ying)",
                    "pris(?:e|es|ing)",
                    "lever(?:s|ed|ing)?",
                    "wedg\\w+",
                    "tear(?:s|ing)?",
                    "rip(?:s|ping)?",
                    "break(?:s|ing)? (?:it )?(?:off|out|loose)",
                    "hammer\\w*")),
    /** It heats. */
    HEAT(
            "heat",
            Texts.word(
                    "heat\\w*",
                    "hot",
                    "warm\\w*",
                    "soldering",
                    "solder\\w*",
                    "torch",
                    "oven",
                    "dryer",
                    "drier",
                    "reflow",
                    "flame"),
            Texts.word(
                    "heat(?:s|ed|ing)?",
                    "hot",
                    "warm(?:s|ed|ing)?",
                    "melt\\w*",
                    "soften\\w*",
                    "solder\\w*",
                    "desolder\\w*",
                    "bake\\w*"));

    private static final Pattern SOFT =
            Texts.word(
                    "plastic",
                    "nylon",
                    "ceramic",
                    "wood(?:en)?",
                    "bamboo",
                    "pom",
                    "acetal",
                    "bone",
                    "rubber",
                    "silicone",
                    "glass fibre",
                    "insulated");

    private final String words;
    private final Pattern tool;
    private final Pattern act;

    Rough(String words, Pattern tool, Pattern act) {
        this.words = words;
        this.tool = tool;
        this.act = act;
    }

    String words() {
        return words;
    }

    /** Returns what a tool does by its name, or as a driver that turns no screw here. */
    static Set<Rough> ofTool(Device device, String toolId, boolean turnsScrew) {
        Set<Rough> all = EnumSet.noneOf(Rough.class);
        Tool tool = device.tools().get(toolId);
        String name = toolId + " " + (tool == null ? "" : tool.name());
        boolean soft = Texts.names(SOFT, name);
        boolean driver = tool != null && tool.drive().isPresent();
        for (Rough each : values()) {
            if (Texts.names(each.tool, name) && !(soft && each != HEAT)) {
                all.add(each);
            }
        }
        if (driver) {
            // "T5 bit, steel" turns a screw and touches nothing else
            all.remove(METAL);
            if (!turnsScrew) {
                all.add(METAL);
            }
        }
        return all;
    }

    /** Returns what a kind of manipulation does by its name and wording. */
    static Set<Rough> ofAct(Device device, String kindId) {
        var kind = device.manipulation(kindId);
        String text = kindId.replace('-', ' ') + ". " + kind.title() + ". " + kind.verb();
        Set<Rough> all = EnumSet.noneOf(Rough.class);
        for (Rough each : values()) {
            if (Texts.says(each.act, text)) {
                all.add(each);
            }
        }
        return all;
    }

    /** Returns what sentences ask for. */
    static Set<Rough> ofTexts(List<String> texts) {
        Set<Rough> all = EnumSet.noneOf(Rough.class);
        for (String text : texts) {
            boolean soft = Texts.names(SOFT, text);
            for (Rough each : values()) {
                boolean toolNamed = Texts.says(each.tool, text) && !(soft && each != HEAT);
                if (toolNamed || Texts.says(each.act, text)) {
                    all.add(each);
                }
            }
        }
        return all;
    }
}
