// A name that is declared twice and another that nothing has are one slip: the second of the two should have borne it.

import type { Span } from "../findings/finding.ts";
import { kept } from "../model/kept.ts";
import type { Project } from "../names/project.ts";
import type { Due } from "./due-names.ts";
import { unitNames } from "./space-of-names.ts";
import { surveyOf, type Unknown } from "./survey-of-names.ts";

/** What may bear a name that is due. */
const bearers: Partial<Record<Due, readonly string[]>> = {
  part: ["part"],
  washer: ["part"],
  thing: ["part", "fastener", "joint", "fluid", "hazard"],
  "step or thing": ["part", "fastener", "joint"],
  fluid: ["fluid"],
  hazard: ["hazard"],
};

const known = kept<Project, ReadonlyMap<string, Span>>();

/** Where the second of two that share a name is declared, if it alone can be what the unknown name means. */
export function doubledFor(project: Project, unknown: Unknown): Span | undefined {
  return known(project, () => doubled(project)).get(`${unknown.unit} ${unknown.text}`);
}

/** By unit and unknown name. Where a unit has several of either, nobody can tell which belongs to which. */
function doubled(project: Project): ReadonlyMap<string, Span> {
  const found = new Map<string, Span>(),
    unknown = [...project.files.values()].flatMap((file) => surveyOf(project, file).unknown);
  if (unknown.length === 0) return found;
  for (const file of project.files.values())
    for (const { word, item, name, id } of file.declarations) {
      if (word !== "unit") continue;
      const twice = [...unitNames(file, item).things.values()].filter(
          (list) => list.filter(({ under }) => under.length === 0).length > 1,
        ),
        second = twice[0]?.filter(({ under }) => under.length === 0)[1];
      if (twice.length !== 1 || !second) continue;
      const lost = unknown.filter(
        (one) => one.unit === (name || id) && one.is === undefined && bearers[one.due]?.includes(second.word),
      );
      const names = new Set(lost.map(({ text }) => text));
      if (names.size === 1)
        found.set(`${name || id} ${lost[0]!.text}`, {
          file: second.source.path,
          start: second.start,
          end: second.end,
        });
    }
  return found;
}
