// What the bench finds of a unit of which nothing says what some of its fasteners hold, or what stays on the stand, or of a procedure
// that builds up and does not say so, rests on that fault: it is among the reasons there, and makes it as grave as itself.

import type { Problem, Reason } from "../bench/trace.ts";
import type { Span } from "../findings/finding.ts";
import { unsaidAim } from "./aims.ts";
import { allowsOf } from "./allow.ts";
import type { Met } from "./check.ts";
import { lacksBase } from "./lacks-base.ts";
import { tiesOfNothing } from "./ties-of-nothing.ts";

/** It falls whatever else is so. A light part falls by what is on it: with that off, by an act that could not be read, it does not. */
export const fallsByItself = ({ rule, words }: Reason): boolean =>
  rule === "sequence/falls" && words[0] !== "with what is on it";

/** The place of that fault; undefined for hazards and what falls, which always speak for themselves, and where the author allows it. */
export function faultOf({ reasons }: Problem, { project, performance: { model, procedure } }: Met): Span | undefined {
  if (reasons.some((reason) => fallsByItself(reason) || !/^(?:sequence|removal|refit)\//.test(reason.rule)))
    return undefined;
  const isAllowed = (code: string, { file }: Span): boolean => {
    const source = project.files.get(file);
    return source !== undefined && allowsOf(source).some((allow) => allow.code === code);
  };
  const source = project.files.get(procedure.at.file),
    declaration = source?.declarations.find(({ at }) => at.start === procedure.at.start);
  if (
    source &&
    declaration &&
    unsaidAim(project, source, declaration) === "builds up" &&
    !isAllowed("removal/no-aim", declaration.at)
  )
    return declaration.at;
  const tie = tiesOfNothing(project, model).find(({ at }) => !isAllowed("removal/joins-nothing", at));
  if (tie) return tie.at;
  return lacksBase(project, model) && !isAllowed("names/base-missing", model.at) ? model.at : undefined;
}
