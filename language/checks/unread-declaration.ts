// A declaration that lacks something and could not be read whole: the lack is a reason of what is wrong with its text.

import type { Problem } from "../bench/trace.ts";
import type { Span } from "../findings/finding.ts";
import type { Model } from "../model/model.ts";
import type { Project } from "../names/project.ts";
import { unreadIn } from "./read-whole.ts";

/** The declaration of the hazard that a precaution was taken for and that does not ask for it. */
export function undeclaredAt({ reasons: [reason] }: Problem, model: Model): Span | undefined {
  return reason?.rule === "hazard/order" && reason.words[0] === "undeclared" && reason.thing !== undefined
    ? model.things[reason.thing]!.whole
    : undefined;
}

/** What keeps the declaration that a problem is about from saying all that its author wrote. */
export function unreadDeclaration(problem: Problem, model: Model, project: Project): Span | undefined {
  const thing = problem.phase === "declared" ? problem.reasons[0]?.thing : undefined,
    declaration = thing === undefined ? undeclaredAt(problem, model) : model.things[thing]!.whole;
  return declaration && unreadIn(project, declaration);
}
