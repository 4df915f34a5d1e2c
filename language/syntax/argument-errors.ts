// The one error of a token that does not fit its item, with the place of the shape to go on from, if one can be guessed, and a fix
// where one is at hand. It never proposes a unit of torque, force, pressure, voltage, time or temperature.

import { findUnit, nearestUnits, unitWords, type Dimension, type UnitGroup } from "../quantities/index.ts";
import { kindListNames, kinds, type KindList } from "../vocabulary/kinds.ts";
import { unitsInSpeech } from "../tables/signs-of-speech.ts";
import { turns, type Turn } from "../tables/speech.ts";
import { placesOf } from "../vocabulary/index.ts";
import { at, endOf, error, replacing, type Mended, type Misfit } from "./misfit.ts";
import { fillerWord, linkWord, mayBeOneName, nameInQuotes, nameInTwoWords } from "./name-errors.ts";
import { step, type Leaf } from "./shapes.ts";
import { suggestKind } from "./suggestions.ts";
import { Num, Piece, Str, Unit, Word } from "./tokens.ts";
import type { SyntaxError, SyntaxFix, Token } from "./tree.ts";
import { beginsWith } from "./word-errors.ts";
import { expected, likelyUnits, measureOf, named, oneOf, shown, unitDue, unitsOf } from "./wording.ts";

export function argumentError(misfit: Misfit): Mended {
  const { word, state, last, token, after, figure } = misfit;
  if (misfit.decimal || isDecimalLabel(misfit)) return decimalComma(misfit);
  const range = rangeByHyphen(misfit);
  if (range) return range;
  const late = kindBehindName(misfit);
  if (late) return late;
  const spoken = turnOfSpeech(misfit);
  if (spoken) return { error: spoken, next: undefined };
  const unit = unitDue(state),
    afterUnit = unit && step(unit, token);
  if (unit && (afterUnit || token.tokenType !== Word || token.opensLine))
    return { error: unitMissing(word, state, last, figure)!, next: afterUnit };
  if (token.tokenType === Word && !token.opensLine) {
    const due = state.follow.find((leaf) => leaf.is === "unit" || leaf.is === "kind");
    const without = due?.is === "kind" ? step(due, token) : undefined;
    if (due && without) return { error: kindMissing(word, due, token), next: without };
    if (due?.is === "unit") return rangeInWords(misfit) ?? { error: unknownUnit(word, due, token), next: due };
    if (due) return { error: unknownKind(misfit, due), next: due };
  }
  const link = linkWord(misfit);
  if (link) return link;
  const filler = fillerWord(misfit);
  if (filler) return filler;
  const name = nameInTwoWords(misfit) ?? nameInQuotes(misfit);
  if (name) return name;
  for (const due of likeliest(misfit)) {
    // one thing is missing before it
    const next = step(due, token);
    if (!next || (state.ends && due.is === "word" && !goesOnTo(next, after))) continue;
    if (due.is === "kind" && kinds[due.text as KindList].has(last.text)) {
      const says = `${last.text} is the ${kindListNames[due.text as KindList]}: a name of your own comes before it, as in ${word.text} ${word.text}-1 ${last.text}`;
      return { error: at(last, "syntax/argument-missing", says), next };
    }
    const end = endOf(last),
      what = named(due);
    const fix =
      due.text === "," || due.is === "word"
        ? {
            title: `Put ${what} in`,
            edits: [{ start: end, end, text: due.text === "," ? "," : ` ${due.text}` }],
            certain: false,
          }
        : undefined;
    return {
      error: error(
        "syntax/argument-missing",
        end,
        end,
        last.endLine,
        `${what.charAt(0).toUpperCase()}${what.slice(1)} is missing before ${shown(token)}${due.text === "," && mayBeOneName(misfit) ? `, or a hyphen if ${last.text}-${token.text} is one name` : ""}`,
        fix,
      ),
      next,
    };
  }
  const size = sizeMeant(misfit);
  if (size) return size;
  if (state.ends && token.text === "," && misfit.lead?.text === "with" && last !== word)
    return {
      error: at(
        token,
        "syntax/unexpected",
        "A comma is out of place: a further tool has a with of its own",
        replacing(token, " with", "Write with", false),
      ),
      next: state.follow.find((leaf) => leaf.is === "word" && leaf.text === "with"),
    };
  if (state.ends && token.text === "," && after.tokenType === Word && !after.opensLine)
    return {
      error: at(token, "syntax/unexpected", "A comma parts names only: what follows simply follows, without one", {
        title: "Take it out",
        edits: [{ start: token.startOffset, end: endOf(token), text: "" }],
        certain: false,
      }),
      next: state,
    };
  const says = state.ends
    ? `${shown(token)} is out of place after ${shown(last)}${token.tokenType === Word && state.follow.some((leaf) => leaf.is === "string") ? ": what is printed stands in quotes" : token.tokenType === Num && state.follow.some((leaf) => leaf.is === "name") ? ": a name begins with a letter" : isAct(word.text) ? "" : saidNext(misfit.place)}`
    : `${shown(token)} is out of place: ${expected(state)} is due`;
  return { error: at(token, "syntax/unexpected", says), next: undefined };
}

const saidNext = (place: string): string => {
  const words = beginsWith(place);
  return words === "" ? "" : `: whatever else is said begins with a word${words}`;
};

/** What comes behind a guessed word fits too; else it was no such word that was left out. */
const goesOnTo = (next: Leaf, after: Token): boolean =>
  after.opensLine || (after.tokenType !== Num && after.tokenType !== Unit && after.tokenType !== Word)
    ? next.ends
    : step(next, after) !== undefined;

/** What the trade says there, where the language has another way to say it. */
function turnOfSpeech({ word, state, last, token, after }: Misfit): SyntaxError | undefined {
  if (token.opensLine) return undefined;
  if (token.tokenType === Piece && state.follow.some((leaf) => leaf.declares))
    return at(
      token,
      "syntax/unexpected",
      `${token.text} is no name here: pieces of one thing are declared together, pieces left, right in its block`,
    );
  if (kinds.precaution.has(token.text) && word.text === "on")
    return at(token, "syntax/unexpected", `What is done against it is written precaution ${token.text} "…"`, {
      title: `Write precaution ${token.text}`,
      edits: [{ start: token.startOffset, end: token.startOffset, text: "precaution " }],
      certain: false,
    });
  const act = isAct(word.text),
    said = token.text.toLowerCase();
  const found = turns.find(
    (turn) =>
      (turn.in === "act" ? act : turn.in.includes(word.text)) &&
      (typeof turn.says === "string"
        ? turn.says === said.slice(0, said.startsWith('"') ? 1 : undefined)
        : turn.says.test(said)) &&
      (turn.after === undefined || turn.after.test(last.text)) &&
      (turn.then === undefined || (!after.opensLine && turn.then.test(after.text))) &&
      !(token.tokenType === Num && turn.in === "act" && turn.then === undefined && isUnit(after)) &&
      !(isConjunction(said) && state.follow.some((leaf) => leaf.text === ",")),
  );
  return (
    found &&
    at(
      token,
      "syntax/unexpected",
      `${capital(shown(token))} is out of place: ${found.instead}`,
      mended(found, last, token),
    )
  );
}
/** Is this token a turn of speech in this item, so that it is no new one? */
export const isSpoken = (misfit: Misfit): boolean =>
  kindBehindName(misfit) !== undefined || turnOfSpeech(misfit) !== undefined;
const isUnit = ({ tokenType, text, opensLine }: Token): boolean =>
  tokenType === Unit || (!opensLine && findUnit(text) !== undefined);
/** Between names it stands for a comma. */
const isConjunction = (said: string): boolean => said === "and" || said === "plus";
const capital = (text: string): string => text.replace(/^this/, "This");
const isAct = (word: string): boolean =>
  placesOf(word).some(({ place, shape }) => place === "step" && /<manner>|<reading>/.test(shape));
function mended({ write }: Turn, last: Token, token: Token): SyntaxFix | undefined {
  if (write === undefined) return undefined;
  if (write === "")
    return { title: "Take it out", edits: [{ start: endOf(last), end: endOf(token), text: "" }], certain: false };
  if (write === ",")
    return { title: "Write a comma", edits: [{ start: endOf(last), end: endOf(token), text: "," }], certain: false };
  return replacing(token, write, `Write ${write}`, false);
}

/** `class 8,8`. */
const isDecimalLabel = ({ state, last, token, after }: Misfit): boolean =>
  state.is === "label" &&
  last.tokenType === Num &&
  token.text === "," &&
  token.glued &&
  after.tokenType === Num &&
  after.glued;

/** `22-26 N·m`: read by the scanner as 22 and -26. */
function rangeByHyphen({ state, last, token }: Misfit): Mended | undefined {
  if (token.tokenType !== Num || !token.glued || last.tokenType !== Num || !/^[-\u2212]/.test(token.text))
    return undefined;
  return range(state, last, token, token.text.slice(1), token);
}
/** `22 to 26 N·m` */
function rangeInWords({ state, last, token, after }: Misfit): Mended | undefined {
  if (token.text !== "to" || after.tokenType !== Num || last.tokenType !== Num) return undefined;
  return range(state, last, after, after.text, token);
}
function range(state: Leaf, last: Token, until: Token, upper: string, told: Token): Mended | undefined {
  const dots = state.follow.find((leaf) => leaf.text === ".."),
    next = told === until ? dots?.follow.find((leaf) => leaf.is === "number") : dots;
  if (!next) return undefined;
  const text = `${last.text}..${upper}`;
  return {
    error: at(told, "syntax/unexpected", `A range is written with two points between: ${text}`, {
      title: `Write ${text}`,
      edits: [{ start: last.startOffset, end: endOf(until), text }],
      certain: false,
    }),
    next,
  };
}

/** `part ring "Ring" o-ring`: the kind stands before the printed name. */
function kindBehindName({ word, state, last, token }: Misfit): Mended | undefined {
  if (last.tokenType !== Str || !state.ends || !Object.hasOwn(kinds, word.text)) return undefined;
  const list = word.text as KindList;
  if (!kinds[list].has(token.text)) return undefined;
  return {
    error: at(
      token,
      "syntax/unexpected",
      `${token.text} stands before the printed name: it is the ${kindListNames[list]}`,
      {
        title: `Write ${token.text} before ${last.text}`,
        edits: [
          { start: last.startOffset, end: last.startOffset, text: `${token.text} ` },
          { start: endOf(last), end: endOf(token), text: "" },
        ],
        certain: false,
      },
    ),
    next: state,
  };
}

/** `m8x60`, `M8x60mm`: a size but for its writing. */
function sizeMeant({ state, token }: Misfit): Mended | undefined {
  const next = state.follow.find((leaf) => leaf.is === "thread"),
    meant = /^m(\d+(?:x\d+){0,2})(?:mm)?$/i.exec(token.text)?.[1];
  if (!next || meant === undefined) return undefined;
  return {
    error: at(
      token,
      "syntax/unexpected",
      `${shown(token)} is out of place: a size such as M8x35 is due`,
      replacing(token, `M${meant}`, `Write M${meant}`, false),
    ),
    next,
  };
}

/** A figure whose unit must come and does not. The fix only offers the likely unit, and only where a wrong one cannot hurt. */
export function unitMissing(word: Token, state: Leaf, last: Token, figure: Token | undefined): SyntaxError | undefined {
  const unit = unitDue(state);
  if (!unit) return undefined;
  const group = unit.text as UnitGroup,
    start = figure ?? last,
    end = endOf(last),
    likely = likelyUnits[group];
  const fix =
    likely === undefined
      ? undefined
      : {
          title: `Write ${last.text} ${likely}, if that is meant`,
          edits: [{ start: end, end, text: ` ${likely}` }],
          certain: false,
        };
  const says = `${last.text} has no unit: ${measureOf(group) === "" ? "write what it is measured in," : `${subject(word, group)} takes`} ${unitsOf(group)}`;
  return error("syntax/unit-missing", start.startOffset, end, last.line, says, fix);
}

function unknownUnit(word: Token, due: Leaf, token: Token): SyntaxError {
  const group = due.text as UnitGroup,
    measure = measureOf(group),
    spoken = unitsInSpeech[token.text.toLowerCase()];
  if (spoken !== undefined && unitWords[group === "stage" ? "any" : group].includes(spoken))
    return at(
      token,
      "syntax/unit-unknown",
      `${shown(token)} is no unit: here it is written ${spoken}`,
      likelyUnits[group] === undefined ? undefined : replacing(token, spoken, `Write ${spoken}`, false),
    );
  const near = nearestUnits(token.text, measure === "" || group === "stage" ? undefined : (group as Dimension));
  const fix =
    near.length === 1 && likelyUnits[group] !== undefined
      ? replacing(token, near[0]!, `Write ${near[0]}`, false)
      : undefined;
  const says =
    measure === ""
      ? `${shown(token)} is no unit: units are ${unitsOf(group)}`
      : `${shown(token)} is no unit: ${subject(word, group)} takes ${unitsOf(group)}`;
  return at(token, "syntax/unit-unknown", says, fix);
}

/** Whose unit it is: the word's own, or a quantity among its arguments. */
const subject = (word: Token, group: UnitGroup): string =>
  word.text.length > 0 && group === word.text
    ? word.text
    : `${word.text} ${measureOf(group) === "share" ? "" : `(${measureOf(group)}) `}`.trim();

/** What may be left out is told so; of a list that must be chosen from, all is told, since nothing else can stand there. */
function unknownKind({ state, last, token, after }: Misfit, due: Leaf): SyntaxError {
  const list = due.text as KindList,
    what = kindListNames[list],
    meant = suggestKind(token.text, list);
  if (meant) {
    return at(
      token,
      "syntax/kind-unknown",
      `${shown(token)} is no ${what}: here it is called ${meant.word}${meant.why ? ` (${meant.why})` : ""}`,
      replacing(token, meant.word, `Write ${meant.word}`, false),
    );
  }
  const titled = due.follow.some((leaf) => leaf.is === "string"),
    isTitled = after.tokenType === Str && !after.opensLine,
    needed = !state.ends && !state.follow.some((leaf) => leaf.is === "string");
  const known = `known are ${oneOf(needed ? [...kinds[list]] : few([...kinds[list]]))}`;
  if (needed) return at(token, "syntax/kind-unknown", `${shown(token)} is no ${what}: ${known}`);
  if (isTitled)
    return at(token, "syntax/kind-unknown", `${shown(token)} is no ${what}: ${known}, or none at all`, {
      title: `Leave ${token.text} out`,
      edits: [{ start: endOf(last), end: endOf(token), text: "" }],
      certain: false,
    });
  return at(
    token,
    "syntax/kind-unknown",
    `${shown(token)} is no ${what}: ${known}${titled ? ", and a printed name stands in quotes" : ""}`,
    titled ? replacing(token, `"${token.image}"`, "Put it in quotes, as a printed name", false) : undefined,
  );
}

/** The word that comes after the kind stands in its place. */
function kindMissing(word: Token, due: Leaf, token: Token): SyntaxError {
  const list = due.text as KindList;
  return at(
    token,
    "syntax/argument-missing",
    `${word.text} needs its kind before ${shown(token)}: known are ${oneOf(few([...kinds[list]]))}`,
  );
}

const few = (names: readonly string[]): string[] => (names.length <= 8 ? [...names] : [...names.slice(0, 6), "others"]);

/** `3,5 kg`. Three figures after the comma may mean thousands: then nothing is proposed. */
function decimalComma({ state, token, last, after }: Misfit): Mended {
  const figure: Leaf = { ...state, opens: false }; // the figure after the comma goes on with this one
  const next: Leaf = { ...figure, ends: false, follow: [figure] },
    thousands = /^\d{3}$/.test(after.text) && /^[+-]?[1-9]\d{0,2}$/.test(last.text);
  return thousands
    ? {
        error: at(
          token,
          "syntax/decimal-comma",
          `A comma cannot stand in a figure: write ${last.text}${after.text}, or ${last.text}.${after.text} with a decimal point`,
        ),
        next,
      }
    : {
        error: at(
          token,
          "syntax/decimal-comma",
          "A decimal point is due here, not a comma",
          replacing(token, ".", `Write ${last.text}.${after.text}`, true),
        ),
        next,
      };
}

/**
 * What authors forget: a word behind which nothing but this one stands (`into` before `tray`), then a comma, never a bracket. Of a comma
 * and a word that must come, the word, unless it comes yet.
 */
function likeliest({ state, token, after }: Misfit): Leaf[] {
  const leading = state.follow.find((leaf) => leaf.is === "word" && step(leaf, token)?.is === "word");
  if (leading) return [leading];
  const comma = state.follow.filter((leaf) => leaf.text === ","),
    others = state.follow.filter((leaf) => leaf.is !== "sign");
  const due = state.ends ? undefined : others.find((leaf) => leaf.is === "word");
  return due && after.text !== "," && after.text !== due.text ? [...others, ...comma] : [...comma, ...others];
}
