// A called procedure, or a written refit, needs one that was not performed.

import { benchCheck } from "../bench-check.ts";

export default benchCheck({
  code: "sequence/needs",
  title: "What it needs was not done before it",
  severity: "error",
  why: "A procedure that builds on another is right only after that one.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
    }
    procedure drain-down "Drain down" for box {
      aim none
      step "Look" { note "The pan is empty." }
    }
    procedure open-up "Open up" for box {
      aim lid off
      needs drain-down
      step "Open" { remove lid }
    }
    procedure whole "Whole" for box {
      aim lid off
      step "All" {
        do open-up
    #   ^^^^^^^^^^ Open up needs Drain down done before it
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
    }
    procedure drain-down "Drain down" for box {
      aim none
      step "Look" { note "The pan is empty." }
    }
    procedure open-up "Open up" for box {
      aim lid off
      needs drain-down
      step "Open" { remove lid }
    }
    procedure whole "Whole" for box {
      aim lid off
      step "All" {
        do drain-down
        do open-up
      }
    }
  `,
  subject: () => "",
  reason: (reason) => `${reason.words[0]} needs ${reason.words[1]} done before it`,
});
