// A part that is a unit of its own is turned while it is fixed to the machine around it.

import { benchCheck } from "../bench-check.ts";

export default benchCheck({
  code: "sequence/turned-in-place",
  title: "Turned while it is still on the machine",
  severity: "error",
  why: "The procedure of a unit that is done on a part turns that part alone. Bolted to its machine it turns with all of it, or not at all: it has to be taken off first, or stripped as it stands.",
  source: "geometry",
  fails: `
    unit gear "Gear head" {
      positions upright, upside-down
      base case
      no pressure "Breather in the lid."
      part case "Case"
      part plug "Plug" { fits case  needs upside-down }
    }
    unit drive "Drive" {
      base frame
      no pressure "Open to air."
      part frame "Frame"
      part head "Gear head" { is unit gear }
      fastener feet bolt "Foot bolts" { count 4  joins head to frame }
    }
    procedure plug-out "Plug out" for gear {
      aim plug off
      step "Turn" {
        turn upside-down
    #   ^^^^^^^^^^^^^^^^ Gear head is turned to upside-down while it is still on the machine: take it off first
        remove plug
      }
    }
    procedure strip "Strip" for drive {
      aim head off
      step "Inside" { do plug-out on head }
      step "Head off" { undo feet  remove head }
    }
  `,
  mended: `
    unit gear "Gear head" {
      positions upright, upside-down
      base case
      no pressure "Breather in the lid."
      part case "Case"
      part plug "Plug" { fits case  needs upside-down }
    }
    unit drive "Drive" {
      base frame
      no pressure "Open to air."
      part frame "Frame"
      part head "Gear head" { is unit gear }
      fastener feet bolt "Foot bolts" { count 4  joins head to frame }
    }
    procedure plug-out "Plug out" for gear {
      aim plug off
      step "Turn" {
        turn upside-down
        remove plug
      }
    }
    procedure strip "Strip" for drive {
      aim head off
      step "Head off" { undo feet  remove head }
      step "Inside" { do plug-out on head }
    }
  `,
  subject: () => "",
  reason: ({ thing, words: [to] }, context) =>
    `${context.name(thing!)} is turned to ${to} while it is still on the machine: take it off first`,
});
