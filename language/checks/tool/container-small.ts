// More is let out at once than the container holds.

import { si } from "../../quantities/index.ts";
import { check } from "../check.ts";

export default check({
  code: "tool/container-small",
  title: "The container is too small",
  severity: "warning",
  why: "What does not fit is on the floor, under the feet of who stands at the plug, and in the drain.",
  source: "common practice",
  fails: `
    tool pan "Oil pan 2 L" { capacity 2 L }
    consumable gear-oil "Gear oil" { pack 5 L }
    unit box "Gearbox" {
      base case
      part case "Case"
      fastener drain-plug plug "Drain plug" { into case }
      fluid oil oil "Oil" { volume 6 L  drains at drain-plug  fills at drain-plug  uses gear-oil }
    }
    procedure change "Change the oil" for box {
      aim none
      step "Out" {
        drain oil into pan
    #   ^^^^^^^^^^^^^^^^^^ 6 L of Oil do not go into Oil pan 2 L, which holds 2 L
      }
    }
  `,
  mended: `
    tool pan "Oil pan 8 L" { capacity 8 L }
    consumable gear-oil "Gear oil" { pack 5 L }
    unit box "Gearbox" {
      base case
      part case "Case"
      fastener drain-plug plug "Drain plug" { into case }
      fluid oil oil "Oil" { volume 6 L  drains at drain-plug  fills at drain-plug  uses gear-oil }
    }
    procedure change "Change the oil" for box {
      aim none
      step "Out" {
        drain oil into pan
      }
    }
  `,
  performance({ model, events }, say) {
    for (const { kind, thing, act } of events) {
      const into = kind === "drained" && act.into?.kind === "container" ? act.into.label : undefined,
        tool = into === undefined ? undefined : model.library.tools.get(into),
        fluid = model.things[thing];
      if (!tool?.capacity || fluid?.is !== "fluid" || !fluid.volume) continue;
      const one = si(tool.capacity).high,
        count = tool.count ?? 1,
        much = si(fluid.volume).low;
      if (tool.capacity.dimension !== "volume" || much <= one) continue;
      const because = [{ says: `${tool.name}: ${tool.capacity.written}`, at: tool.at }];
      // Several that hold it together are changed under a plug that runs.
      if (much <= one * count)
        say({
          at: act.at,
          severity: "hint",
          says: `${fluid.volume.written} of ${fluid.name} fill ${Math.ceil(much / one)} of ${tool.name}, which are changed while it runs: a plug does not stop for that`,
          because,
        });
      else
        say({
          at: act.at,
          says: `${fluid.volume.written} of ${fluid.name} do not go into ${count > 1 ? `${count} of ` : ""}${tool.name}, which holds ${tool.capacity.written}${count > 1 ? " each" : ""}`,
          because,
        });
    }
  },
});
