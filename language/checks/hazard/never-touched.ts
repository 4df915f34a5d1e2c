// A hazard on things that no procedure for the unit touches: its precautions are asked for nowhere.

import type { Project } from "../../names/project.ts";
import { kept } from "../../model/kept.ts";
import type { Hazard, Model } from "../../model/model.ts";
import { eachItem } from "../../syntax/index.ts";
import { hazardKinds, kindIn } from "../../tables/index.ts";
import { actsOf } from "../acts-of.ts";
import { check } from "../check.ts";
import { unitOfProcedure } from "../space-of-names.ts";
import { surveyOf } from "../survey-of-names.ts";
import { unitKey } from "../unit-key.ts";

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
    const asked = model.hazards.filter(
      ({ prefix, precautions, on, kind }) =>
        prefix === "" && precautions.length > 0 && on.length > 0 && kindIn(hazardKinds, kind)?.isWeight !== true,
    );
    for (const hazard of asked) {
      const near = namesNear(model, hazard);
      if (isActedOn(model, near)) continue;
      // Nothing is said of a unit without procedures, nor while a name or a line cannot be read.
      const named = canAllBeRead(project) ? namedFor(project, model.unit) : undefined;
      if (!named) return;
      if (near.some((one) => named.has(one))) continue;
      const [first] = hazard.on;
      say({
        at: hazard.at,
        // The procedure that is missing would touch them all.
        answer: { key: `no procedure touches it: ${unitKey(model)}` },
        says: `${hazard.name} is on ${name(first!)}, and no line of a procedure touches ${hazard.on.length > 1 ? "any of its things" : "it"}: its precautions are asked for nowhere`,
      });
    }
  },
});

/** What it is on or pushes, what is opened on the way to a precaution, and what drains or fills there. */
function namesNear(model: Model, hazard: Hazard): readonly string[] {
  const things = [...hazard.on, ...hazard.pushes, ...hazard.precautions.flatMap(({ behind }) => behind)],
    fluids = model.fluids.filter(({ drainsAt, fillsAt }) =>
      things.some((thing) => drainsAt.includes(thing) || fillsAt.includes(thing)),
    );
  return [...things.map((thing) => model.things[thing]!), ...fluids].map(({ declared }) => declared);
}

/** Nearly every hazard is on something that a line takes off: then no name has to be looked up in any file. */
const isActedOn = (model: Model, near: readonly string[]): boolean =>
  [...model.procedures.values()].some(
    (procedure) =>
      procedure.unit === model.unit &&
      actsOf(procedure).some(({ names }) => names.some(({ text }) => near.includes(text))),
  );

const canAllBeRead = (project: Project): boolean =>
  [...project.files.values()].every(
    (one) => one.tree.errors.length === 0 && surveyOf(project, one).unknown.length === 0,
  );

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
