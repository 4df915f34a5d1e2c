// A hazard on things that no procedure for the unit touches: its precautions are asked for nowhere.

import type { Project } from "../../names/project.ts";
import { kept } from "../../model/kept.ts";
import type { Hazard, Model } from "../../model/model.ts";
import { eachItem } from "../../syntax/index.ts";
import { hazardKinds, kindIn } from "../../tables/index.ts";
import { check } from "../check.ts";
import { unitOfProcedure } from "../space-of-names.ts";
import { surveyOf } from "../survey-of-names.ts";

export default check({
  code: "hazard/never-touched",
  title: "A hazard that no line comes near",
  severity: "hint",
  why: "The bench asks for the precautions of a hazard before the things that it is on are touched. Where no line touches them, a precaution can be left out and nobody is told: look whether it is on what the hands are on.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
      hazard heat hot warning "Hot oil" {
    #        ^^^^ Hot oil is on Foot, and no line of a procedure touches it: its precautions are asked for nowhere
        on foot  temperature 80 °C
        precaution cool "Let it stand."
      }
    }
    procedure strip "Strip" for box {
      aim lid off
      step "Open" { cool heat  remove lid }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
      hazard heat hot warning "Hot oil" {
        on lid  temperature 80 °C
        precaution cool "Let it stand."
      }
    }
    procedure strip "Strip" for box {
      aim lid off
      step "Open" { cool heat  remove lid }
    }
  `,
  asksAllFiles: true,
  model(model, say, { project, name }) {
    const named = namedFor(project, model.unit);
    // Nothing is said of a unit without procedures, nor while a name or a line cannot be read.
    if (
      !named ||
      [...project.files.values()].some((one) => one.tree.errors.length > 0 || surveyOf(project, one).unknown.length > 0)
    )
      return;
    for (const hazard of model.hazards) {
      if (hazard.prefix !== "" || hazard.precautions.length === 0 || hazard.on.length === 0) continue;
      if (kindIn(hazardKinds, hazard.kind)?.isWeight === true || isNear(model, hazard, named)) continue;
      const [first] = hazard.on;
      say({
        at: hazard.at,
        // The procedure that is missing would touch them all.
        answer: { key: `no procedure touches it: ${model.unit}` },
        says: `${hazard.name} is on ${name(first!)}, and no line of a procedure touches ${hazard.on.length > 1 ? "any of its things" : "it"}: its precautions are asked for nowhere`,
      });
    }
  },
});

/** Named in a line, opened by what drains or fills, or opened on the way to a precaution. */
function isNear(model: Model, hazard: Hazard, named: ReadonlySet<string>): boolean {
  const things = [...hazard.on, ...hazard.pushes, ...hazard.precautions.flatMap(({ behind }) => behind)];
  if (things.some((thing) => named.has(model.things[thing]!.declared))) return true;
  return model.fluids.some(
    (fluid) =>
      named.has(fluid.declared) && [...fluid.drainsAt, ...fluid.fillsAt].some((thing) => things.includes(thing)),
  );
}

const known = kept<Project, Map<string, ReadonlySet<string> | undefined>>();

/** Every name that a procedure for this unit, or for one that has it inside, speaks of; undefined where there is none. */
function namedFor(project: Project, unit: string): ReadonlySet<string> | undefined {
  const all = known(project, () => new Map());
  if (all.has(unit)) return all.get(unit);
  const names = new Set<string>();
  let isOne = false;
  for (const file of project.files.values())
    for (const { word, item } of file.declarations) {
      if (word !== "procedure") continue;
      isOne ||= unitOfProcedure(file, item) === unit;
      eachItem(item.block?.items ?? [], (line) => {
        for (const { slot, first } of line.arguments)
          if (slot === "name" || slot === "item")
            for (const id of file.tree.scan.tokens[first]!.text.split(".")) names.add(id);
      });
    }
  const found = isOne ? names : undefined;
  all.set(unit, found);
  return found;
}
