/* reseat-script
id: esd-before-live
title: Live work without an ESD check-list
finds: A plan that touches something that static electricity damages while a supply is not cut, and no prepare act that names the precautions.
matters: A discharge too small to feel destroys a circuit, and with power on it the damage is worse.
severity: warning
tags: [plan, esd]
needs: [plan]
from: Quay Lane Bench
*/
List<Finding> run(CheckInput input) {
    List<ActRow> acts = input.planFacts().orElseThrow().acts();
    boolean told = acts.stream()
            .anyMatch(act -> act.kind() == ActRow.Kind.PREPARE && act.hazards().contains("esd"));
    if (told) {
        return List.of();
    }
    List<ActRow> risky = input.planFacts().orElseThrow().liveActs().stream()
            .filter(act -> act.hazards().contains("esd"))
            .toList();
    if (risky.isEmpty()) {
        return List.of();
    }
    ActRow first = risky.get(0);
    return List.of(input.finding(first.pointer())
            .evidence(risky.size() + " acts with power on: " + String.join(", ", risky.stream().map(ActRow::id).limit(5).toList()))
            .evidence("not cut: " + String.join(", ", first.live()))
            .says(
                    first.id() + " touches what static electricity damages while " + String.join(", ", first.live())
                            + " is live, and no prepare act puts on the wrist strap.",
                    "Add a prepare act with the hazard esd: strap tested and on, mat joined, foam away."));
}
