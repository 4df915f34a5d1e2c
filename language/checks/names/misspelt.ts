// A name from an open list (what to wear, what a tool is) that is nearly one of the usual ones.

import { takeLabel, takeNames, cursorOf } from "../../model/cursor.ts";
import { editDistance } from "../../syntax/near-names.ts";
import { protectiveEquipment } from "../../tables/protective-equipment.ts";
import { toolKinds } from "../../tables/tool-kinds.ts";
import { check } from "../check.ts";
import { itemsWith } from "../items-of.ts";

const worn: ReadonlySet<string> = new Set(Object.keys(protectiveEquipment));

export default check({
  code: "names/misspelt",
  title: "Nearly a usual name",
  severity: "warning",
  why: "These lists are open, since a shop has gear of its own: so a slip of the hand is printed as it stands, and a torque wrench of a misspelt kind is no torque wrench. A name that is near none of the usual ones is taken.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
      hazard rim sharp caution "Sharp rim" {
        on lid
        precaution other "Hold it by the handle."
        wear glovs
    #        ^^^^^ glovs is no usual name of what is worn, but gloves is
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
      hazard rim sharp caution "Sharp rim" {
        on lid
        precaution other "Hold it by the handle."
        wear gloves, knee-pads
      }
    }
  `,
  file(file, say, { project }) {
    const { tokens } = file.tree.scan,
      names: { readonly text: string; readonly start: number; readonly what: "wear" | "kind" }[] = [];
    for (const item of itemsWith(file, "wear"))
      if (item.entry!.place === "hazard" && !item.broken)
        for (const name of takeNames(cursorOf({ item, source: file })))
          names.push({ text: name.text, start: name.start, what: "wear" });
    for (const item of itemsWith(file, "kind")) {
      if (item.entry!.place !== "tool" || item.broken) continue;
      const label = takeLabel(cursorOf({ item, source: file }));
      if (label !== undefined) names.push({ text: label, start: tokens[item.first + 1]!.startOffset, what: "kind" });
    }
    for (const { text, start, what } of names) {
      const usual = what === "wear" ? worn : toolKinds;
      // What the shop declares as a tool may be worn, whatever it is called.
      if (
        usual.has(text) ||
        project
          .seen(file.path)
          .get(text)
          ?.some((one) => one.word === "tool")
      )
        continue;
      const near = nearByParts(text, usual);
      if (near === undefined) continue;
      const at = { file: file.path, start, end: start + text.length };
      say({
        at,
        says: `${text} is no usual name of ${what === "wear" ? "what is worn" : "what a tool is"}, but ${near} is`,
        fixes: [{ title: `Write ${near}`, edits: [{ ...at, text: near }], certain: false }],
      });
    }
  },
});

/**
 * One slip in a part between hyphens, or hyphens and capitals alone. More would take a name of the shop's own for a slip: arm-protection
 * is no ear-protection.
 */
function nearByParts(written: string, usual: ReadonlySet<string>): string | undefined {
  const bare = (name: string): string => name.toLowerCase().replaceAll("-", ""),
    parts = written.toLowerCase().split("-");
  const isNear = (name: string): boolean => {
    if (bare(name) === bare(written)) return true;
    const own = name.split("-");
    return (
      own.length === parts.length &&
      own.every((part, i) => part === parts[i] || (part.length >= 4 && editDistance(part, parts[i]!, 1) === 1))
    );
  };
  return [...usual].find(isNear);
}
