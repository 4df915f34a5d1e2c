// Fasteners and joints of which nothing says what they hold: what the bench finds of their unit rests on a guess.

import { kept } from "../model/kept.ts";
import type { Model, Tie } from "../model/model.ts";
import type { Project } from "../names/project.ts";
import { saysWord, wasReadWhole } from "./read-whole.ts";

const joining: ReadonlySet<string> = new Set(["joins", "into"]);
const known = kept<Model, readonly Tie[]>();

export const tiesOfNothing = (project: Project, model: Model): readonly Tie[] =>
  known(model, () =>
    model.ties.filter((tie) => {
      if (tie.lowers.length > 0 || tie.uppers.length > 0 || tie.into !== undefined) return false;
      // It may say what it holds by names that nothing has: then those names are what is wrong, and are reported there.
      const source = project.files.get(tie.at.file);
      return source !== undefined && wasReadWhole(project, tie.whole) && !saysWord(source, tie.whole, joining);
    }),
  );
