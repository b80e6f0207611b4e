/* reseat-script
id: long-screw-near-cell
title: Screw near a cell
finds: A screw whose tip comes closer to a cell than a given distance, or goes into it.
matters: A pierced or pressed cell can burn.
severity: error
tags: [screws, safety]
parameters:
  least: {says: Distance that a tip keeps from a cell, unit: mm, usual: 0.5}
from: Quay Lane Bench
*/
function run(input) {
  const least = input.number('least');
  return input.facts().screwsNear(Kind.Role.CELL, least).map(row => {
    const gap = row.clearanceMm();
    const where = gap <= 0
      ? `goes ${(-gap).toFixed(1)} mm into ${row.name()}`
      : `ends ${gap.toFixed(1)} mm before ${row.name()}`;
    return input.finding(row.pointer())
      .title(gap <= 0 ? 'Screw goes into a cell' : 'Screw near a cell')
      .evidence(`${row.type()} is ${row.lengthMm()} mm long`)
      .evidence(`distance to keep: ${least} mm`)
      .says(`${row.joint()} ${where}.`, 'Measure screw and seat; use the shorter screw, or correct the file.');
  });
}
