// A part that nothing holds, carries or clamps, and that holds nothing.

import { check } from "../check.ts";
import { surveyOf } from "../survey-of-names.ts";

/** Words that say how a part is held, even where what they name is not found. */
const held = /\b(?:fits|rests|between|into|is|like)\b/;

export default check({
  code: "names/part-unattached",
  title: "A part that nothing holds",
  severity: "hint",
  why: "Its fasteners are missing from the text, or one of them names another part: the bench lets it come off at any time.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
    #      ^^^ Lid is tied to nothing, rests on nothing and lies between nothing: say what holds it
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
    }
  `,
  *model(model, { project }) {
    const attached = new Set<number>(model.base);
    for (const part of model.parts) {
      const to = [...part.hosts, ...part.rests, ...(part.between ? [...part.between[0], ...part.between[1]] : [])];
      if (to.length > 0 || part.into !== undefined) attached.add(part.index);
      for (const other of to) attached.add(other);
    }
    for (const tie of model.ties) {
      for (const part of [...tie.lowers, ...tie.uppers]) attached.add(part);
      for (const washer of tie.washers) attached.add(washer.part);
      if (tie.into !== undefined) attached.add(tie.into);
    }
    for (const part of model.parts) {
      if (attached.has(part.index) || part.prefix !== "") continue;
      const source = project.files.get(part.at.file);
      // A misspelt name elsewhere may be what holds it: that is said there.
      if (
        !source ||
        surveyOf(project, source).unknown.length > 0 ||
        source.tree.errors.length > 0 ||
        held.test(source.text.slice(part.whole.start, part.whole.end))
      )
        continue;
      yield {
        at: part.at,
        says: `${part.name} is tied to nothing, rests on nothing and lies between nothing: say what holds it`,
      };
    }
  },
});
