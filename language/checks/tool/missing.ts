// A tool or container that the shop does not list.

import { check } from "../check.ts";
import { missingFrom } from "../missing-from-shop.ts";

export default check({
  code: "tool/missing",
  title: "A tool that the shop does not list",
  severity: "warning",
  why: "The list of tools at the head of the manual is what is laid out in the morning: what is not declared is not there when it is needed.",
  source: "common practice",
  fails: `
    unit spindle "Spindle" {
      base shaft
      part shaft "Shaft"
      part race bearing "Bearing" { fits shaft by press-fit }
    }
    procedure strip "Strip" for spindle {
      aim race off
      step "Bearing off" {
        remove race with puller
    #                    ^^^^^^ puller is no tool that this file or any that it uses declares
      }
    }
  `,
  mended: `
    tool puller "Two-leg puller"
    unit spindle "Spindle" {
      base shaft
      part shaft "Shaft"
      part race bearing "Bearing" { fits shaft by press-fit }
    }
    procedure strip "Strip" for spindle {
      aim race off
      step "Bearing off" {
        remove race with puller
      }
    }
  `,
  file(file, say, { project }) {
    missingFrom(project, file, "tool", "tool", say);
  },
});
