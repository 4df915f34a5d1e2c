// A thing of a kind that is mostly renewed goes back, and nothing says that it is new.

import type { Span } from "../../findings/finding.ts";
import type { Declaration, Project } from "../../names/project.ts";
import { benchCheck, listed } from "../bench-check.ts";
import { unitKey } from "../unit-key.ts";

export default benchCheck({
  code: "refit/seal-reused",
  title: "Is the old seal used again?",
  severity: "question",
  why: 'Seals, gaskets and split pins take a set. Say that it is new, or say that the old one goes back, and why: `renew always` on it or on its kind, `renew when damaged`, or `reuse X "the reason"` in the refit, which is printed. What keeps a fastener from coming undone, and what a hazard is on, is asked for whatever the reason.',
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      part ring o-ring "Lid ring" { between lid and foot }
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
    }
    procedure strip "Strip" for box {
      aim ring off
      step "Open" {
        undo lid-screws
        remove lid
        remove ring
    #   ^^^^^^^^^^^ Nothing says whether Lid ring goes back new or used
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      part ring o-ring "Lid ring" { between lid and foot  renew always }
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
    }
    procedure strip "Strip" for box {
      aim ring off
      step "Open" {
        undo lid-screws
        remove lid
        remove ring
      }
    }
  `,
  subject: () => "",
  // A standing rule of the unit would answer for all of them; a line with `reuse` is asked about for itself.
  answer({ reasons: [first] }, { model, project }) {
    if (first!.words[1] !== undefined) return undefined;
    const unit = unitAround(project, model.things[first!.thing!]!.at);
    return {
      key: unit ? `${unit.file} ${unit.id}` : unitKey(model),
      because: {
        says: `a standing rule of ${unit?.name || model.title} would answer for each kind: renew always ${first!.words[0]}`,
        at: unit?.at ?? model.at,
      },
    };
  },
  reason: (reason, context) =>
    reason.words[1] === "secures"
      ? `${context.name(reason.thing!)} is used again, and it keeps what it secures from coming undone`
      : reason.words[1] === "hazard"
        ? `${context.name(reason.thing!)} is used again, and ${listed(reason.by.map((thing) => context.name(thing)))} is on it`
        : reason.words[1] === "no reason"
          ? `${context.name(reason.thing!)} is used again, and nothing says why`
          : `nothing says whether ${context.name(reason.thing!)} goes back new or used`,
});

/** The unit that this declaration stands in: of a part of a unit inside, that one. */
function unitAround(project: Project, { file, start }: Span): Declaration | undefined {
  const source = project.files.get(file),
    tokens = source?.tree.scan.tokens;
  return source?.declarations.find(
    ({ word, item }) =>
      word === "unit" && tokens![item.first]!.startOffset <= start && tokens![item.last]!.endOffset! >= start,
  );
}
