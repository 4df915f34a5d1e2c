// Heated for fitting beyond what parts of this kind are mostly given. It asks, and says nothing of a lower temperature: the maker's figure decides.

import { kindIn, partKinds } from "../../tables/index.ts";
import { si } from "../../quantities/index.ts";
import { check } from "../check.ts";
import { heatingIn } from "../heating-in.ts";

const zeroCelsius = 273.15;

/** What makers of such parts mostly name as the most for heating, °C; common practice, from memory. Their own figure may be lower. */
const mostByKind: Readonly<Record<string, number>> = { bearing: 125, "o-ring": 100, seal: 100 };
/** Hardened and tempered steel loses its hardness above its tempering; common practice, from memory. */
const mostOfOthers = 300;

export default check({
  code: "figure/heat-limit",
  title: "Heated beyond what such parts are mostly given",
  severity: "question",
  why: "A bearing that was too hot has lost its hardness, its grease and its seals, and looks as before. What the part may be given says its maker; a slip between °C and °F, or a nought too many, shows here alone.",
  source: "common practice, from memory: rolling bearings 125 °C, rubber 100 °C, other parts 300 °C",
  fails: `
    unit hub "Hub" {
      base shaft
      part shaft "Shaft"
      part race bearing "Bearing" { fits shaft by press-fit }
      no hot "Gloves and tongs by the rule of the shop."
    }
    procedure strip "Strip" for hub {
      aim race off
      step "Off" {
        remove race
        refit {
          heat race to 800 °C
    #     ^^^^^^^^^^^^^^^^^^^ Bearing is heated to 800 °C: parts of its kind are mostly given 125 °C at most; ask the maker's data
          reverse
        }
      }
    }
  `,
  mended: `
    unit hub "Hub" {
      base shaft
      part shaft "Shaft"
      part race bearing "Bearing" { fits shaft by press-fit }
      no hot "Gloves and tongs by the rule of the shop."
    }
    procedure strip "Strip" for hub {
      aim race off
      step "Off" {
        remove race
        refit {
          heat race to 80 °C
          reverse
        }
      }
    }
  `,
  model(model, say) {
    for (const act of heatingIn(model)) {
      if (!act.amount) continue;
      const { high } = si(act.amount);
      for (const { text } of act.names) {
        const thing = model.things[model.scopes.get("")?.get(text)?.[0] ?? -1];
        if (thing?.is !== "part") continue;
        const most = mostByKind[thing.kind] ?? mostOfOthers;
        if (high <= most + zeroCelsius) continue;
        const whose = kindIn(partKinds, thing.kind) && mostByKind[thing.kind] ? "parts of its kind" : "steel parts";
        say({
          at: act.at,
          says: `${thing.name} is heated to ${act.amount.written}: ${whose} are mostly given ${most} °C at most; ask the maker's data`,
        });
        break; // one figure, one question
      }
    }
  },
});
