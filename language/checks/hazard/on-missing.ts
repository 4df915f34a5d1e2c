// A hazard with precautions that does not say what must not be touched while it stands.

import { hazardKinds, kindIn } from "../../tables/index.ts";
import { check } from "../check.ts";
import { surveyOf } from "../survey-of-names.ts";

export default check({
  code: "hazard/on-missing",
  title: "A hazard that nothing is under",
  severity: "question",
  why: "The bench asks for the precautions of a hazard before the things that it is on are touched. On nothing, they can be forgotten and nobody is told.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
      hazard mains electrical danger "Mains" {
    #        ^^^^^ Mains is on nothing: say what must not be touched while it stands
        source mains
        precaution isolate "Open the isolator, lock it."
        precaution prove-dead "Test all phases."
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
      hazard mains electrical danger "Mains" {
        on lid
        source mains
        precaution isolate "Open the isolator, lock it."
        precaution prove-dead "Test all phases."
      }
    }
  `,
  model(model, say, { project }) {
    for (const hazard of model.hazards) {
      if (hazard.on.length > 0 || hazard.pushes.length > 0 || hazard.precautions.length === 0) continue;
      // Of the kinds that are proved gone before hands go in; noise or a wet floor is on nothing in particular.
      if (kindIn(hazardKinds, hazard.kind)?.needsProof !== true) continue;
      const source = project.files.get(hazard.at.file);
      if (!source || source.tree.errors.length > 0 || surveyOf(project, source).unknown.length > 0) continue;
      say({ at: hazard.at, says: `${hazard.name} is on nothing: say what must not be touched while it stands` });
    }
  },
});
