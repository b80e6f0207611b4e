/* reseat-script
id: untested-parts
title: Part without a test
finds: A part that a connector leads to, and no test that names it or such a connector; with a plan, only those that it unplugs.
matters: What was unplugged and not tested comes back.
severity: note
tags: [tests]
from: Quay Lane Bench
*/
List<Finding> run(CheckInput input) {
    List<PartRow> untested = input.planFacts().map(PlanFacts::untested).orElseGet(() -> input.facts().untested());
    return untested.stream()
            .map(part -> input.finding(part.pointer())
                    .evidence("held by " + String.join(", ", part.joints()))
                    .says(
                            "No test shows that " + part.name() + " works again.",
                            "Write one: what to do, and what must be seen."))
            .toList();
}
