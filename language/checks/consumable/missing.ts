// Something used up that the shop does not list.

import { check } from "../check.ts";
import { missingFrom } from "../missing-from-shop.ts";

export default check({
  code: "consumable/missing",
  title: "A consumable that the shop does not list",
  severity: "warning",
  why: "Stores order from the bill, and the bill knows only what is declared.",
  source: "common practice",
  fails: `
    unit spindle "Spindle" {
      base shaft
      part shaft "Shaft"
      part race bearing "Bearing" { fits shaft by press-fit }
    }
    procedure care "Grease it" for spindle {
      aim none
      step "Grease" {
        apply bearing-grease to race
    #         ^^^^^^^^^^^^^^ bearing-grease is no consumable that this file or any that it uses declares
      }
    }
  `,
  mended: `
    consumable bearing-grease "Bearing grease" { pack 400 g }
    unit spindle "Spindle" {
      base shaft
      part shaft "Shaft"
      part race bearing "Bearing" { fits shaft by press-fit }
    }
    procedure care "Grease it" for spindle {
      aim none
      step "Grease" {
        apply bearing-grease to race
      }
    }
  `,
  file(file, say, { project }) {
    missingFrom(project, file, "stores", "consumable", say);
  },
});
