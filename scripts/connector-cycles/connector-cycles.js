/* reseat-script
id: connector-cycles
title: Connector nearly worn out
finds: A connector that has been made, or will have been after the plan, as often as its kind allows, less a reserve.
matters: A worn connector fails in the field, and the board it sits on costs more than the repair.
severity: warning
tags: [connectors, wear]
parameters:
  reserve: {says: Number of times that must be left, unit: "1", usual: 2}
from: Quay Lane Bench
*/
const times = n => `${n} ${n === 1 ? 'time' : 'times'}`;

function run(input) {
  const reserve = input.number('reserve');
  const rows = new Map(input.facts().connectors().map(row => [row.joint(), row]));
  if (input.planFacts().isPresent()) {
    input.planFacts().get().wear().forEach(row => rows.set(row.joint(), row));
  }
  return [...rows.values()].filter(row => row.left() < reserve).map(row =>
    input.finding(row.pointer())
      .severity(row.left() < 0 ? Severity.ERROR : Severity.WARNING)
      .evidence(`made ${times(row.made())}, rated for ${row.rated()}`)
      .says(
        row.left() < 0
          ? `${row.joint()} is made ${times(-row.left())} more often than it may be.`
          : `${row.joint()} may be made ${times(row.left())} more.`,
        'Leave it connected if a plan can, or order the part that carries its socket.'));
}
