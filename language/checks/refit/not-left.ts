// `leaves` that is not so at the end: it was put right on the way back, or was never made so.

import { benchCheck } from "../bench-check.ts";

export default benchCheck({
  code: "refit/not-left",
  title: "Said to be left so, and not so at the end",
  severity: "error",
  why: "Whoever goes on reads what is left. A gearbox that is said to be dry is filled a second time; a lid that is said to be off is not looked for.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      fastener plug plug "Drain plug" { into foot }
      fluid oil oil "Oil" { volume 2 L  drains at plug  fills at plug }
    }
    procedure strip "Strip" for box {
      aim none
      leaves drained oil
      step "Drain" {
        drain oil
        refit { fill oil }
    #           ^^^^^^^^ Oil is filled here, and said to be left drained
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      fastener plug plug "Drain plug" { into foot }
      fluid oil oil "Oil" { volume 2 L  drains at plug  fills at plug }
    }
    procedure strip "Strip" for box {
      aim none
      leaves drained oil
      step "Drain" { drain oil }
    }
  `,
  subject: () => "",
  reason: ({ thing, words: [is, how], numbers: [said = 0, all = 0] }, context) => {
    const name = context.name(thing!),
      never = how === "never";
    switch (is) {
      case "off":
        return never
          ? `${name} is said to be left off, and nothing takes it off`
          : `${name} goes back on here, and is said to be left off`;
      case "out": {
        const pieces = all === 1 ? name : `${said} of ${all} ${name}`,
          are = all === 1 ? "is" : "are";
        return never
          ? `${pieces} ${are} said to be left out, and not so many are undone`
          : `${name} ${all === 1 ? "goes" : "go"} back in here, and ${all === 1 ? "is" : `${said} of ${all} are`} said to be left out`;
      }
      case "finger-tight":
        return never
          ? `${name} ${all === 1 ? "is" : "are"} said to be left finger-tight, and never loosened`
          : `${name} ${all === 1 ? "is" : "are"} tightened here, and said to be left finger-tight`;
      default:
        return never
          ? `${name} is said to be left drained, and nothing drains it`
          : `${name} is filled here, and said to be left drained`;
    }
  },
});
