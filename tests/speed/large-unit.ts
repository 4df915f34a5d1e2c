// One large unit, warm: 1,000 parts in a tower of 10 columns, each held by one tie, stripped to the base and fitted again. Prints the
// time of strip, refit and end together, best of some rounds. Run as a part of `npm run bench`.

import { performProcedure } from "../../language/bench/perform-procedure.ts";
import { buildModel } from "../../language/model/build-model.ts";
import { buildsOf } from "../../language/model/builds.ts";
import { loadProject } from "../../language/names/load.ts";
import type { World } from "../../language/world/world.ts";

/** A unit of so many parts and as many ties, each part on the one below it in its column. */
export function largeUnit(parts: number, columns = 10): string {
  const out = ['unit tower "Tower" {', "  base foot", '  part foot "Foot"'],
    steps: string[] = [];
  for (let k = 0; k < parts; k++) {
    const under = k < columns ? "foot" : `part-${k - columns}`;
    out.push(
      `  part part-${k} "Part ${k}"`,
      `  fastener screws-${k} screw "Screws ${k}" { count 4  joins part-${k} to ${under} }`,
    );
    steps.unshift(`  step { undo screws-${k}  remove part-${k} }`);
  }
  return [...out, "}", 'procedure strip "Strip" for tower {', "  aim all apart", ...steps, "}", ""].join("\n");
}

if (import.meta.main) {
  const text = largeUnit(1000),
    path = "tower.strip";
  const world: World = {
    read: () => ({ text }),
    exists: () => false,
    inside: () => true,
    resolve: (_, written) => written,
  };
  const project = loadProject(world, [path]);
  let best = Infinity,
    says = "";
  for (let round = 0; round < 20; round++) {
    // A model of its own each round: nothing that follows from it is known yet.
    const model = buildModel(project, path, "tower", buildsOf(project, path, "tower")[0]!)!,
      start = performance.now();
    const { strip, refit, problems } = performProcedure(model, "strip");
    best = Math.min(best, performance.now() - start);
    says = `${model.parts.length - 1} parts, ${model.ties.length} ties, ${strip.length} acts of the strip, ${refit.length} of the refit, ${problems.length} problems`;
  }
  console.log(JSON.stringify({ milliseconds: best, says }));
}
