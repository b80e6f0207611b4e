/* reseat-script
id: variant-screws
title: Variant changes a screw
finds: A seat that takes another screw in a variant than in the base device.
matters: Someone who knows only one variant puts its screw into the other.
severity: warning
tags: [screws, variants]
from: Quay Lane Bench
*/
List<Finding> run(CheckInput input) {
    List<Finding> found = new ArrayList<>();
    for (VariantScrewRow row : input.facts().variantScrews()) {
        if (row.change() != VariantScrewRow.Change.ANOTHER || !input.device().joints().containsKey(row.joint())) {
            continue;
        }
        Finding.Draft draft = input.finding(row.pointer())
                .severity(row.alike() ? Severity.WARNING : Severity.NOTE);
        row.differences().forEach(draft::evidence);
        found.add(draft.says(
                row.joint() + " takes " + row.baseType() + ", but " + row.variantType() + " in variant " + row.variant()
                        + (row.alike() ? ", and the two look alike." : "."),
                "Keep the two in trays of their own and read the variant off the label first."));
    }
    return found;
}
