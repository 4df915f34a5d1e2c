// All figures of the flagship example, warm: the torque assessment of every tie, the wait of every precaution, the mass and the limit of
// every lift, in every procedure and build. Prints the time of all of them together, best of some rounds. Run as a part of `npm run bench`.

import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { crewAt } from "../../language/bench/crew.ts";
import { massOf } from "../../language/bench/load.ts";
import { waitOf } from "../../language/bench/placement.ts";
import { judgedTorques } from "../../language/checks/torque-judged.ts";
import { diskWorld, findFiles } from "../../language/cli/files.ts";
import { liftLimit } from "../../language/figures/lift-limit.ts";
import { checkProject } from "../../language/workspace/check-project.ts";
import { defaultSettings } from "../../language/world/settings.ts";

const examples = fileURLToPath(new URL("../../examples", import.meta.url)),
  winch = join(examples, "mooring-winch");
const world = diskWorld([examples]),
  files = findFiles([winch], examples);
let best = Infinity,
  says = "";
for (let round = 0; round < 20; round++) {
  // Copies of the models: what the checks worked out is not kept with them.
  const { performances } = checkProject(world, files),
    models = [...new Set(performances.map(({ model }) => model))].map((model) => ({ ...model }));
  let torques = 0,
    waits = 0,
    lifts = 0;
  const start = performance.now();
  for (const model of models) {
    torques += judgedTorques(model, { settings: defaultSettings }).length;
    for (const hazard of model.hazards)
      for (const precaution of hazard.precautions) if (waitOf(hazard, precaution)) waits++;
  }
  for (const { model, events } of performances)
    for (const event of events) {
      if (event.kind !== "off") continue;
      if (
        massOf(model, event.moved).kg > 0 &&
        liftLimit(Math.max(event.act.people ?? 0, crewAt(event.around))).kilograms > 0
      )
        lifts++;
    }
  best = Math.min(best, performance.now() - start);
  says = `${models.length} models: ${torques} torques, ${waits} waits, ${lifts} lifts`;
}
console.log(JSON.stringify({ milliseconds: best, says }));
