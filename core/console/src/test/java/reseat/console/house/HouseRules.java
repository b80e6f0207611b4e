package reseat.console.house;

import java.util.ArrayList;
import java.util.List;

/** All rules of a house. */
final class HouseRules {

    private HouseRules() {}

    static List<HouseRule> of(House house) {
        List<HouseRule> rules = new ArrayList<>();
        rules.addAll(Arrows.of(house));
        rules.addAll(ForbiddenCalls.of(house));
        rules.addAll(ExportedSignatures.of(house));
        return List.copyOf(rules);
    }
}
