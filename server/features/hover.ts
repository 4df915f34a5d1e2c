// What is known of the name or word under the cursor: a part's mass and what holds it, a fastener's torque against its thread, a
// hazard's wait. Figures come from the same functions as the checks and carry their source.

import type { Hover, Position } from "vscode-languageserver";
import { aidCaution, assessTorque, assumptionsFrom, chargeOf, formatQuantity, isFigureError, placeNames, placesOf, requiredWait, rounded, si, type Checked, type Hazard, type Model, type Part, type Tie } from "../../language/index.ts";
import { offsetOf, rangeOf } from "../places.ts";
import { symbolAt } from "../symbols.ts";

export function hover(checked: Checked, path: string, position: Position, assumptions: Readonly<Record<string, number | string>>): Hover | undefined {
  const offset = offsetOf(checked, path, position), at = symbolAt(checked, path, offset);
  if (at) {
    for (const { model } of checked.performances) {
      const thing = model.things.find((one) => one.at.file === at.declaration.file && one.at.start === at.declaration.start);
      if (!thing) continue;
      const lines = thing.is === "part" ? partLines(model, thing) : thing.is === "tie" ? tieLines(model, thing, assumptions) : thing.is === "hazard" ? hazardLines(thing) : [thing.about];
      return { contents: { kind: "markdown", value: [`**${escaped(thing.name)}**`, ...lines.filter((line) => line !== "").map(escaped)].join("\n\n") }, range: rangeOf(checked, at.span) };
    }
  }
  const token = checked.project.files.get(path)?.tree.scan.tokens.find((one) => one.startOffset <= offset && offset <= one.endOffset! + 1), entry = token && placesOf(token.text)[0];
  if (!token || !entry) return undefined;
  const value = [`**${entry.word}** (${[...new Set(placesOf(entry.word).map((one) => placeNames[one.place] ?? one.place))].join(", ")})`, entry.meaning, `\`${entry.example}\``].join("\n\n");
  return { contents: { kind: "markdown", value }, range: rangeOf(checked, { file: path, start: token.startOffset, end: token.endOffset! + 1 }) };
}

/** An author's text is shown as written, never as markup. */
const escaped = (text: string): string => text.replace(/[\\`*_{}[\]()<>#+!|~-]/g, "\\$&");

function partLines(model: Model, part: Part): string[] {
  const ties = model.ties.filter((tie) => tie.lowers.includes(part.index)), hidden = part.behind.map((index) => model.things[index]!.name);
  return [
    part.mass ? `Mass ${formatQuantity(part.mass, "metric")} (${formatQuantity(part.mass, "us")})` : "Mass not given",
    ties.length > 0 ? `Held by ${ties.map((tie) => `${tie.count > 1 ? `${tie.count} ` : ""}${tie.name}`).join(", ")}` : part.hosts.length > 0 ? `Fits ${part.hosts.map((host) => model.things[host]!.name).join(", ")}` : "",
    hidden.length > 0 ? `Behind ${hidden.join(", ")}` : "", part.renew ? `New: ${part.renew.when}` : "", part.about,
  ];
}

function tieLines(model: Model, tie: Tie, settings: Readonly<Record<string, number | string>>): string[] {
  const lines = [[tie.count > 1 ? `${tie.count} off` : "", tie.size ? `${tie.size.designation}${tie.propertyClass ? ` ${tie.propertyClass}` : ""}` : "", tie.drive ? `${tie.drive.kind} ${tie.drive.size?.written ?? ""}`.trim() : ""].filter((s) => s !== "").join(", ")];
  lines.push(tie.lowers.length > 0 ? `Joins ${tie.lowers.map((i) => model.things[i]!.name).join(", ")} to ${tie.uppers.map((i) => model.things[i]!.name).join(", ")}` : "");
  for (const { value } of tie.torques) {
    if (!value) continue;
    lines.push(`Torque ${formatQuantity(value, "metric")} (${formatQuantity(value, "us")})`);
    const className = tie.propertyClass ?? tie.grade;
    if (!tie.size || className === undefined) continue;
    const judged = assessTorque(si(value).high, { size: tie.size, className, head: tie.drive?.kind === "hex-socket" ? "socket-cap" : "hex" }, assumptionsFrom(settings).assumptions);
    if (isFigureError(judged)) continue;
    lines.push(`Preload ${rounded(judged.preload / 1000, 3)} kN, ${Math.round(judged.utilisation * 100)} % of its yield or proof stress${judged.verdict === "over" ? `: over ${rounded(judged.limit, 3)} N·m` : ""}`, `Rests on ${judged.assumptions.join(", ")}`, `Source: ${judged.source}`, aidCaution);
  }
  return lines;
}

function hazardLines(hazard: Hazard): string[] {
  const charge = chargeOf(hazard), needed = charge && requiredWait(charge);
  return [
    `${hazard.signal ?? ""} ${hazard.kind}`.trim(), hazard.precautions.length > 0 ? `In this order: ${hazard.precautions.map((p) => p.kind).join(", ")}` : "No precaution declared",
    needed?.seconds === undefined ? "" : `Wait at least ${Math.ceil(needed.seconds)} s (${needed.decidedBy!.name}), or longer as the maker says; no wait stands for a proof`, needed ? `Source: ${needed.source}` : "", needed ? aidCaution : "", hazard.about,
  ];
}
