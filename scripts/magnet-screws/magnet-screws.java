/* reseat-script
id: magnet-screws
title: Screws under one magnet
finds: A part that catches loose screws, and screws of several types that it covers or that hold it.
matters: It drags a screw into the wrong seat, and nobody notices.
severity: warning
tags: [screws, magnets]
from: Quay Lane Bench
*/
List<Finding> run(CheckInput input) {
    List<Finding> found = new ArrayList<>();
    for (GroupRow group : input.facts().screwsByCover()) {
        if (!group.magnetic() || group.types().size() < 2) {
            continue;
        }
        List<LookAlikeRow> alike = input.facts().lookAlikes().stream()
                .filter(pair -> group.types().contains(pair.one()) && group.types().contains(pair.other()))
                .toList();
        Finding.Draft draft = input.finding(group.pointer())
                .severity(alike.stream().anyMatch(LookAlikeRow::dangerous) ? Severity.ERROR : Severity.WARNING)
                .evidence(group.joints().size() + " screws: " + String.join(", ", group.joints()));
        alike.forEach(pair -> draft.evidence(pair.one() + " and " + pair.other() + " look alike"));
        found.add(draft.says(
                group.name() + " is magnetic, and screws of " + group.types().size() + " types are near it: "
                        + String.join(", ", group.types()) + ".",
                "Take out and put away one type before the next; keep loose screws away when you move the part."));
    }
    return found;
}
