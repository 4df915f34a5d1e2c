// What a name is due to stand for, by the place it is written in, the word that opens its line, and the word before it. One table:
// a word that takes names has its row here, and a test holds the vocabulary to that.

/** `any`: a name that is nowhere looked up (what to wear, labels of pieces). */
export type Due =
  | "part"
  | "thing"
  | "fluid"
  | "hazard"
  | "position"
  | "step"
  | "step or thing"
  | "procedure"
  | "procedure or step"
  | "unit"
  | "tool"
  | "washer"
  | "stores"
  | "role"
  | "table"
  | "temporary"
  | "condition"
  | "kind"
  | "kind or thing"
  | "like"
  | "hazard type"
  | "piece"
  | "any";

/** By place and word; `word context` where the word before the name decides. */
const rows: Readonly<Record<string, Due>> = {
  "file procedure for": "unit",
  "file warn": "kind or thing",
  "unit base": "part",
  "unit renew": "kind",
  "unit torque": "table",
  "unit order": "step or thing",
  "unit warn": "kind or thing",
  "part fits": "part",
  "part rests": "part",
  "part matched": "part",
  "part between": "part",
  "part behind": "thing",
  "part needs": "position",
  "part into": "part",
  "part like": "like",
  "part lift": "tool",
  "part is": "unit",
  "part count": "thing",
  "part pieces": "any",
  "fastener joins": "part",
  "fastener into": "part",
  "fastener behind": "thing",
  "fastener needs": "position",
  "fastener with": "washer",
  "fastener thread-locker": "stores",
  "fastener lubricant": "stores",
  "fastener torque": "table",
  "fastener like": "like",
  "fastener count": "thing",
  "fastener pieces": "any",
  "joint joins": "part",
  "joint behind": "thing",
  "joint needs": "position",
  "joint uses": "stores",
  "joint opens": "fluid",
  "joint like": "like",
  "joint count": "thing",
  "joint pieces": "any",
  "unit pieces": "any",
  "fluid drains": "thing",
  "fluid fills": "thing",
  "fluid bleeds": "thing",
  "fluid recover": "tool",
  "fluid uses": "stores",
  "fluid path": "thing",
  "hazard on": "thing",
  "hazard pushes": "part",
  "hazard wear": "any",
  "hazard precaution": "thing",
  "hazard precaution with": "tool",
  "hazard like": "like",
  "hazard role": "role",
  "consumable hazard": "hazard type",
  "photo point": "thing",
  "procedure aim": "thing",
  "procedure base": "part",
  "procedure needs": "procedure",
  "procedure starts": "thing",
  "procedure starts drained": "fluid",
  "procedure starts with": "hazard",
  "procedure leaves": "thing",
  "procedure leaves drained": "fluid",
  "procedure leaves turned": "position",
  "procedure leaves until": "procedure",
  "procedure task": "step",
  "procedure role": "role",
  "procedure refit": "procedure",
};

/** Acts, in steps, refit blocks and `finish`, and what may stand among the steps of a procedure. */
const acts: Readonly<Record<string, Due>> = {
  turn: "position",
  drain: "fluid",
  recover: "fluid",
  fill: "fluid",
  bleed: "fluid",
  purge: "fluid",
  evacuate: "fluid",
  restore: "hazard",
  align: "any",
  apply: "stores",
  put: "temporary",
  take: "temporary",
  do: "procedure or step",
  repeat: "piece",
  "repeat from": "step",
  base: "part",
  refit: "procedure",
  order: "step or thing",
};

const actPlaces: ReadonlySet<string> = new Set(["step", "refit", "finish", "procedure"]);

/**
 * What a name is due to be. `isPrecaution`: the word is a precaution, done as an act. `earlier` is the word before `context`.
 */
export function dueName(place: string, word: string, context: string, earlier: string, isPrecaution: boolean): Due {
  if (word === "if" || word === "unless") return "condition";
  const own = rows[`${place} ${word} ${context}`] ?? rows[`${place} ${word}`];
  if (own !== undefined) return own;
  if (!actPlaces.has(place)) return "any";
  switch (context) {
    case "with":
    case "into":
      return "tool";
    case "after":
    case "before":
      return "step or thing";
    case "from":
      return word === "repeat" || earlier === "repeat" ? "step" : "any";
    case "to":
      if (word === "apply" || word === "fit" || word === "press") return "thing";
      break;
    case "on":
    case "onto":
    case "renew":
    case "scrap":
    case "choose":
      if (context !== word) return context === "on" && word === "do" ? "part" : "thing";
      break;
    default:
  }
  return isPrecaution ? "hazard" : (acts[word] ?? "thing");
}

/** Has the word a row of its own in that place? Outside acts every word that takes names needs one. */
export function hasDueRow(place: string, word: string): boolean {
  return Object.keys(rows).some((key) => key === `${place} ${word}` || key.startsWith(`${place} ${word} `));
}
