// A joint of a circuit is opened, or a part on its path removed, before the fluid is out.

import { benchCheck, insertFix, written } from "../bench-check.ts";

export default benchCheck({
  code: "sequence/fluid-aboard",
  title: "A fluid is still aboard and would run out",
  severity: "error",
  why: "Oil on the floor is a fall; fuel or acid is worse.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part pipe "Pipe"
      joint pipe-union pipe-union "Pipe union" { joins pipe to foot  opens oil }
      fastener plug plug "Drain plug" { into foot }
      fluid oil oil "Oil" { volume 2 L  drains at plug }
    }
    procedure strip "Strip" for box {
      aim pipe off
      step "Take the pipe off" {
        undo pipe-union
    #   ^^^^^^^^^^^^^^^ Pipe union cannot be undone: Oil is still aboard and would run out
        remove pipe
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part pipe "Pipe"
      joint pipe-union pipe-union "Pipe union" { joins pipe to foot  opens oil }
      fastener plug plug "Drain plug" { into foot }
      fluid oil oil "Oil" { volume 2 L  drains at plug }
    }
    procedure strip "Strip" for box {
      aim pipe off
      step "Take the pipe off" {
        drain oil
        undo pipe-union
        remove pipe
      }
    }
  `,
  fixes: (problem, context) => {
    const reason = problem.reasons.find((r) => r.rule === "sequence/fluid-aboard")!,
      fluid = reason.by[0]!,
      of = context.model.things[fluid]!,
      name = written(fluid, problem, context);
    const verb = of.is === "fluid" && of.recover ? "recover" : "drain";
    // Draining opens what it drains at: instead of the act, not before it.
    if (of.is === "fluid" && of.drainsAt.includes(reason.thing!)) {
      const only = problem.act?.names.length === 1 ? problem.act.names[0] : undefined;
      if (!only || name === undefined) return [];
      const edit = { file: problem.at.file, start: problem.at.start, end: only.end, text: `${verb} ${name}` };
      return [{ title: `Write ${verb} ${name}`, edits: [edit], certain: false }];
    }
    return insertFix(problem, context, `Insert: ${verb} ${name ?? ""}`, [
      name === undefined ? undefined : `${verb} ${name}`,
    ]);
  },
  reason: (reason, context) => `${context.name(reason.by[0]!)} is still aboard and would run out`,
});
