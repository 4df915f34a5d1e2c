// A name that is declared twice and another that nothing has are one slip: the second of the two should have borne it.

import type { Span } from "../findings/finding.ts";
import { kept } from "../model/kept.ts";
import type { Project, SourceFile } from "../names/project.ts";
import type { Due } from "./due-names.ts";
import { unitNames, type Named, type UnitNames } from "./space-of-names.ts";
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

/** The second of any two in a unit that share a name and whose builds both have them. */
export const doubledIn = (file: SourceFile): readonly Named[] =>
  file.declarations.flatMap(({ word, item }) => (word === "unit" ? secondOf(unitNames(file, item)) : []));

const secondOf = ({ repeated }: UnitNames): readonly Named[] => repeated.flatMap((list) => together(list).slice(1));

const together = (list: readonly Named[]): readonly Named[] => {
  const always = list.filter(({ under }) => under.length === 0);
  return always.length > 1 ? always : [];
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
      const [second, ...more] = secondOf(unitNames(file, item));
      if (!second || more.length > 0) continue;
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
