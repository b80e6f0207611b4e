package reseat.euindex;

import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import reseat.model.Device;
import reseat.model.Tool;

/**
 * The class of a tool, with its points.
 *
 * <p>Source: Delegated Regulation (EU) 2023/1669, consolidated state of 10 May 2026, Annex IV point
 * 5 for the points, Annex I 43 for the sixteen basic tools.
 */
enum ToolClass {
    BASIC("basic", 4),
    WITH_PART("with-part", 3),
    WITH_PRODUCT("with-product", 2),
    ON_SALE("on-sale", 1),
    /** Has no points; the sister regulation excludes it. */
    PROPRIETARY("proprietary", 0);

    /** Bare hands. */
    static final int NO_TOOL = 5;

    /**
     * Slotted, cross-recess, hexalobular and hexagon drivers; five-lobe and others do not count.
     */
    private static final Pattern BASIC_DRIVE = Pattern.compile("(SL|PH|PZ|JIS-S|T|H)[0-9.]+");

    /** The built-in tools that are on the list of basic tools, by name or in substance. */
    private static final Set<String> BASIC_TOOLS = Set.of("tweezers", "spudger", "pick");

    private final String word;
    private final int points;

    ToolClass(String word, int points) {
        this.word = word;
        this.points = points;
    }

    String word() {
        return word;
    }

    int points() {
        return points;
    }

    /** Returns the class of a tool: as stated, else basic if it is on the list, else on sale. */
    static ToolClass of(Device device, String id, Statements stated) {
        Optional<ToolClass> said = stated.tool(id);
        if (said.isPresent()) {
            return said.get();
        }
        Tool tool = device.tools().get(id);
        boolean basic =
                BASIC_TOOLS.contains(id)
                        || (tool != null
                                && tool.drive()
                                        .filter(drive -> BASIC_DRIVE.matcher(drive).matches())
                                        .isPresent());
        return basic ? BASIC : ON_SALE;
    }
}
