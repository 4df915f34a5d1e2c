// Plain words for how a unit lies and which way a part faces, as data. An author names positions and facings freely; one of these words
// prints in the language of the paper, every other one as it is written.

/** Written as an author writes them, each with what is printed for it in English. */
const positions = {
  upright: "upright",
  "upside-down": "upside down",
  lying: "lying",
  flat: "flat",
  horizontal: "horizontal",
  vertical: "vertical",
  "on-feet": "on its feet",
  "feet-down": "on its feet",
  "on-side": "on its side",
  "on-left-side": "on its left side",
  "on-right-side": "on its right side",
  "on-back": "on its back",
  "on-front": "on its front",
  "on-end": "on end",
  up: "up",
  down: "down",
} as const;

const facings = {
  in: "in",
  inward: "inward",
  inwards: "inwards",
  out: "out",
  outward: "outward",
  outwards: "outwards",
  up: "up",
  upward: "upward",
  upwards: "upwards",
  down: "down",
  downward: "downward",
  downwards: "downwards",
  left: "left",
  right: "right",
  front: "the front",
  forward: "forward",
  forwards: "forwards",
  back: "the back",
  rear: "the rear",
  backward: "backward",
  backwards: "backwards",
} as const;

export type PositionName = keyof typeof positions;
export type FacingName = keyof typeof facings;
export const positionWords: Readonly<Record<PositionName, string>> = positions;
export const facingWords: Readonly<Record<FacingName, string>> = facings;
