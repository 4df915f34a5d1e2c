// One name that lines speak of and that nothing declares, in any file: a part or fastener of the unit that may be what its other things
// hang on.

import type { Span } from "../findings/finding.ts";
import { kept } from "../model/kept.ts";
import type { Model } from "../model/model.ts";
import type { Project } from "../names/project.ts";
import type { Due } from "./due-names.ts";
import { surveyOf } from "./survey-of-names.ts";

const thingDue: ReadonlySet<Due> = new Set<Due>(["part", "thing", "washer"]),
  hazardDue: ReadonlySet<Due> = new Set<Due>(["hazard"]);
const known = kept<Project, Map<string, Span | undefined>>();

/** Where it is first spoken of; undefined where there is none, or more than one. */
export const lostThing = (project: Project, model: Model): Span | undefined => lost(project, model.title, thingDue);

/** The same for a hazard. */
export const lostHazard = (project: Project, model: Model): Span | undefined => lost(project, model.title, hazardDue);

function lost(project: Project, title: string, dues: ReadonlySet<Due>): Span | undefined {
  const all = known(project, () => new Map()),
    key = `${dues === hazardDue ? "hazard" : "thing"} ${title}`;
  if (!all.has(key)) all.set(key, find(project, title, dues));
  return all.get(key);
}

function find(project: Project, title: string, dues: ReadonlySet<Due>): Span | undefined {
  const names = [...project.files.values()].flatMap((file) =>
    surveyOf(project, file)
      .unknown.filter(({ due, is, unit }) => dues.has(due) && is === undefined && unit === title)
      .map(({ text, start, end }) => ({ text, at: { file: file.path, start, end } })),
  );
  return new Set(names.map(({ text }) => text)).size === 1 ? names[0]!.at : undefined;
}
