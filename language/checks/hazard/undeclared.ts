// Something on the unit that brings a danger by its kind, and nobody has answered for it.

import { jointKinds, kindIn, partKinds } from "../../tables/index.ts";
import type { Thing } from "../../model/model.ts";
import type { Span } from "../../findings/finding.ts";
import type { SourceFile } from "../../names/project.ts";
import { eachItem } from "../../syntax/index.ts";
import { check } from "../check.ts";
import { heatingIn } from "../heating-in.ts";
import { lostHazard } from "../lost-thing.ts";
import { lostHeads } from "../lost-heads.ts";
import { hazardSkeleton } from "../hazard-skeleton.ts";

export default check({
  code: "hazard/undeclared",
  title: "A danger that nobody has answered for",
  severity: "error",
  why: "A capacitor, a battery, a supply, a loaded spring, a part that is heated: each brings its danger whether it is written down or not. Declare the hazard with its precautions, or dismiss it with the reason (`no electrical` and why).",
  source: "ISO 12100 (list of significant hazards); common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot" { supply 400 V ac }
    #      ^^^^ Foot is fed with 400 V ac, and no hazard of kind electrical is declared or dismissed
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot" { supply 400 V ac }
      hazard mains electrical danger "Mains" {
        on foot  source mains
        precaution isolate "Open the isolator, lock it."
        precaution prove-dead "Test all phases."
      }
    }
  `,
  asksAllFiles: true,
  model(model, say, { project }) {
    const answered = new Set([...model.hazards.map((h) => h.kind), ...model.dismissed.keys()]);
    for (const thing of model.things) {
      const asked = askedBy(thing);
      if (!asked || answered.has(asked.kind)) continue;
      answered.add(asked.kind); // said once for each kind
      say({
        at: thing.at,
        says: `${thing.name} ${asked.why}, and no hazard of kind ${asked.kind} is declared or dismissed`,
        within: unreadOn(project.files.get(model.at.file), thing) ?? lostHazard(project, model),
        fixes: hazardSkeleton(project.files.get(thing.at.file), thing, asked.kind),
      });
    }
    if (answered.has("hot")) return;
    const [act] = heatingIn(model);
    if (!act) return;
    const thing = model.scopes.get("")?.get(act.names[0]?.text ?? "")?.[0];
    say({
      at: act.at,
      says: `${thing === undefined ? "What is heated here" : model.things[thing]!.name} is hot after this, and no hazard of kind hot is declared or dismissed`,
      within:
        unreadOn(project.files.get(model.at.file), thing === undefined ? undefined : model.things[thing]) ??
        lostHazard(project, model),
      fixes:
        thing === undefined
          ? []
          : hazardSkeleton(project.files.get(model.things[thing]!.at.file), model.things[thing]!, "hot"),
    });
  },
});

/** A hazard on this very thing whose kind could not be read, or whose first line is missing: which hazard was meant is said there. */
function unreadOn(file: SourceFile | undefined, thing: Thing | undefined): Span | undefined {
  if (!file || !thing) return undefined;
  const { tokens } = file.tree.scan,
    errors = file.tree.errors.filter((error) => error.code === "syntax/kind-unknown"),
    heads = lostHeads(file);
  if (errors.length === 0 && heads.length === 0) return undefined;
  let found: Span | undefined;
  eachItem(file.tree.items, (item) => {
    if (item.entry?.word !== "hazard" || !item.block) return;
    const from = tokens[item.first]!.startOffset,
      to = tokens[item.block.first]!.startOffset,
      error = errors.find((one) => one.start >= from && one.end <= to),
      head = heads.find((one) => one.item === item),
      on = item.block.items.filter((line) => line.entry?.word === "on").flatMap((line) => line.arguments);
    // Its kind may be any.
    if (head) found ??= head.at;
    else if (error && on.some((name) => tokens[name.first]!.text === thing.declared))
      found ??= { file: file.path, start: error.start, end: error.end };
  });
  return found;
}

function askedBy(thing: Thing): { kind: string; why: string } | undefined {
  if (thing.is === "part") {
    if (thing.supply) return { kind: "electrical", why: `is fed with ${thing.supply.written}` };
    const kind = kindIn(partKinds, thing.kind)?.asksHazard;
    return kind === undefined ? undefined : { kind, why: `is a ${thing.kind}` };
  }
  if (thing.is !== "tie" || thing.fastener || thing.force === undefined) return undefined;
  const kind = kindIn(jointKinds, thing.kind)?.asksHazard;
  return kind === undefined ? undefined : { kind, why: `holds ${thing.force.written} by a ${thing.kind} joint` };
}
