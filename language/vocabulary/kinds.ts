// The closed lists that shapes refer to as <kind:…>, by the name they have there: only the names, taken from the tables.

import { drives } from "../tables/drives.ts";
import { fastenerKinds } from "../tables/fastener-kinds.ts";
import { fluidKinds } from "../tables/fluid-kinds.ts";
import { hazardKinds } from "../tables/hazard-kinds.ts";
import { jointKinds } from "../tables/joint-kinds.ts";
import { partKinds } from "../tables/part-kinds.ts";
import { precautions } from "../tables/precautions.ts";
import { sequences } from "../tables/sequences.ts";
import { signals } from "../tables/signals.ts";
import { sources } from "../tables/sources.ts";
import { tappedIn } from "../tables/tapped.ts";

export type KindList =
  | "part"
  | "fastener"
  | "joint"
  | "fluid"
  | "precaution"
  | "hazard"
  | "source"
  | "signal"
  | "drive"
  | "sequence"
  | "tapped";

/** What an entry of any of the tables has. */
export type KindText = { readonly title: string; readonly about: string };

/** Title and meaning of every kind, by list and name. */
export const kindTexts: Readonly<Record<KindList, Readonly<Record<string, KindText>>>> = {
  part: partKinds,
  fastener: fastenerKinds,
  joint: jointKinds,
  fluid: fluidKinds,
  precaution: precautions,
  hazard: hazardKinds,
  source: sources,
  signal: signals,
  drive: drives,
  sequence: sequences,
  tapped: tappedIn,
};

/** The names of each list. */
export const kinds: Readonly<Record<KindList, ReadonlySet<string>>> = {
  part: namesOf("part"),
  fastener: namesOf("fastener"),
  joint: namesOf("joint"),
  fluid: namesOf("fluid"),
  precaution: namesOf("precaution"),
  hazard: namesOf("hazard"),
  source: namesOf("source"),
  signal: namesOf("signal"),
  drive: namesOf("drive"),
  sequence: namesOf("sequence"),
  tapped: namesOf("tapped"),
};

/** How each list is called in a sentence: "circlip is no kind of fastener". */
export const kindListNames: Readonly<Record<KindList, string>> = {
  part: "kind of part",
  fastener: "kind of fastener",
  joint: "kind of joint",
  fluid: "kind of fluid",
  precaution: "precaution",
  hazard: "kind of hazard",
  source: "source",
  signal: "signal word",
  drive: "drive",
  sequence: "sequence",
  tapped: "material that a thread is cut in",
};

function namesOf(list: KindList): ReadonlySet<string> {
  return new Set(Object.keys(kindTexts[list]));
}
