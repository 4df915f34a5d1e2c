// A refit that ends without any test. Off unless a project asks for it.

import { check } from "../check.ts";

export default check({
  code: "refit/no-test",
  title: "No test after the refit",
  severity: "off",
  why: "Put together is not the same as working. One line in `finish` says how it is tried.",
  source: "ISO 12100, IEC/IEEE 82079-1 (check after reassembly)",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
    }
    procedure strip "Strip" for box {
    #         ^^^^^ Strip ends without a test
      aim lid off
      step "Open" { remove lid }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
    }
    procedure strip "Strip" for box {
      aim lid off
      step "Open" { remove lid }
      finish { test "The lid sits flat" }
    }
  `,
  performance({ procedure, strip, finish, refit, written }, say) {
    if (strip.every((one) => one.from === one.to)) return; // an inspection takes nothing apart
    const acts = [
      ...finish.map((f) => f.act),
      ...written.map((w) => w.act),
      ...refit.flatMap((r) => (r.op.act ? [r.op.act] : [])),
    ];
    if (!acts.some((act) => act.verb === "test" || act.verb === "measure" || act.verb === "inspect"))
      say({ at: procedure.at, says: `${procedure.title} ends without a test` });
  },
});
