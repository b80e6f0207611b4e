/* reseat-script
id: drawer-tools
title: Tool not in the drawer
finds: A tool of the plan that the shop does not have, by its list of drives and its stock of tools.
matters: The job stops with the device open.
severity: error
tags: [plan, tools]
needs: [plan, drives]
from: Quay Lane Bench
*/
function run(input) {
  return input.planFacts().get().tools()
    .filter(tool => tool.owned().isPresent() && !tool.owned().get())
    .map(tool =>
      input.finding(tool.pointer())
        .evidence(`used for ${tool.acts()} acts, first for ${tool.first()}`)
        .evidence(`drawer: ${input.drives().get().join(', ')}`)
        .says(`The plan needs ${tool.name()}, which is not in the drawer.`,
          tool.drive().isPresent() ? `Get a ${tool.drive().get()} driver before the device is opened.`
            : 'Get it before the device is opened.'));
}
