/* reseat-script
id: many-flips
title: Device turned too often
finds: A plan that changes the posture of the device more often than a given number.
matters: Each turn shifts loose parts, strains hanging ones, and takes time at the bench.
severity: warning
tags: [plan]
needs: [plan]
parameters:
  most: {says: Number of turns that are fine, unit: "1", usual: 4}
from: Quay Lane Bench
*/
function run(input) {
  const most = input.number('most');
  const turns = input.planFacts().get().postureChanges();
  if (turns.length <= most) {
    return [];
  }
  const over = turns[most];
  const draft = input.finding(over.pointer())
    .evidence(turns.map(turn => turn.to()).join(', '))
    .evidence(`${turns.filter(turn => turn.loose()).length} of them with something loose or hanging`);
  return [draft.says(`The plan turns the device ${turns.length} times; ${most} are fine. The first too many is for ${over.act()}.`,
    'See whether another way of one of these joints works in the posture before.')];
}
