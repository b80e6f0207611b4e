/* reseat-script
id: rebuild-consumables
title: Consumable missing for the rebuild
finds: Something that the rebuild of a plan uses up and the stock has too little of, or too old.
matters: The device stays open until it arrives, or is closed without it.
severity: error
tags: [plan, stock]
needs: [plan, stock]
from: Quay Lane Bench
*/
List<Finding> run(CheckInput input) {
    List<Finding> found = new ArrayList<>();
    for (NeedRow need : input.planFacts().orElseThrow().stockGaps()) {
        if (need.kind() != StockItem.Kind.CONSUMABLE) {
            continue;
        }
        Finding.Draft draft = input.finding(need.pointer())
                .evidence("needed: " + need.quantity() + " " + need.unit())
                .evidence("in stock and not expired: " + need.there().orElseThrow() + " " + need.unit());
        need.expired().forEach(line -> draft.evidence("line " + line + " of the stock has expired"));
        found.add(draft.says(
                "The rebuild uses " + need.quantity() + " " + need.unit() + " of " + need.name() + "; "
                        + (need.there().orElseThrow().signum() == 0 ? "none is" : "only " + need.there().orElseThrow() + " " + need.unit() + " are")
                        + " there.",
                "Order it before the device is opened."));
    }
    return found;
}
