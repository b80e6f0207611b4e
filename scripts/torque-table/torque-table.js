/* reseat-script
id: torque-table
title: Torque against the shop's table
finds: A seat whose torque lies outside the shop's table for its thread and material, or that has none although the table gives one.
matters: A torque copied from the wrong line strips the thread or works loose.
severity: warning
tags: [screws, torque]
from: Quay Lane Bench
*/
// Quay Lane Bench's own table, in newton metres: from, to. These values have held in the shop's practice;
// a maker's document takes precedence.
const TABLE = {
  'M1.4x0.3': { brass: [0.04, 0.08], any: [0.04, 0.08] },
  'M1.6x0.35': { brass: [0.07, 0.14], magnesium: [0.06, 0.12], any: [0.06, 0.12] },
  'M2x0.4': { brass: [0.14, 0.25], steel: [0.14, 0.25], any: [0.12, 0.2] },
  'M2.5x0.45': { brass: [0.25, 0.4], steel: [0.3, 0.5], any: [0.25, 0.4] },
};

function run(input) {
  const found = [];
  for (const row of input.facts().torques()) {
    const line = TABLE[row.thread()];
    if (line === undefined) {
      continue;
    }
    const [from, to] = line[row.material()] ?? line.any;
    const table = `${row.thread()} in ${row.material() || 'any material'}: ${from} to ${to} N·m`;
    const given = row.givenNm();
    if (given.isEmpty()) {
      found.push(input.finding(row.pointer()).severity(Severity.NOTE).title('No torque, but the table knows one')
        .evidence(table)
        .says(`${row.joint()} has no torque.`, 'Look into the maker\'s document; failing that, take the table\'s.'));
    } else if (given.getAsDouble() < from || given.getAsDouble() > to) {
      const which = given.getAsDouble() < from ? 'below' : 'above';
      found.push(input.finding(row.pointer())
        .evidence(table)
        .evidence(`given: ${given.getAsDouble()} N·m, ${row.from()}`)
        .says(`${row.joint()} gets ${given.getAsDouble()} N·m, ${which} the shop's table.`,
          'Look it up again; if the maker means it, write down why.'));
    }
  }
  return found;
}
