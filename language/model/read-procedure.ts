// A procedure from its declaration. The same in every build, so it is read once and kept.

import type { Declaration, SourceFile } from "../names/project.ts";
import type { Aim, Leave, Message, Need, Photo, Procedure, Start, Task } from "./model.ts";
import type { Name } from "./act.ts";
import type { Item } from "../syntax/index.ts";
import {
  accept,
  cursorOf,
  headSpan,
  isNumber,
  linesByWord,
  linesIn,
  peek,
  peekText,
  takeLabel,
  takeName,
  takeNames,
  takeNumber,
  takeString,
  wholeSpan,
  wordOf,
  type Line,
} from "./cursor.ts";
import { readPoint } from "./read-act.ts";
import { holdsIn, type Choice } from "./conditions.ts";
import { issueWords, readIssue } from "./instructions.ts";
import { kept } from "./kept.ts";
import { readCondition, readEntries } from "./read-entries.ts";

const procedures = kept<Item, Procedure>();

/** Without a choice: as in the plain build. A procedure whose head holds no condition is one and the same in every build. */
export function readProcedure(declaration: Declaration, source: SourceFile, choice: Choice = plain): Procedure {
  const procedure = procedures(declaration.item, () => read(declaration, source, plain));
  return procedure.conditional && choice !== plain ? read(declaration, source, choice) : procedure;
}

const plain: Choice = { chosen: new Set(), variant: "" };

/** Words of a procedure's head that mean nothing inside a step. */
const headWords: ReadonlySet<string> = new Set([
  "aim",
  "crew",
  "needs",
  "starts",
  "leaves",
  "task",
  "role",
  "revision",
  "about",
  ...issueWords,
]);

/** The head as it stands in a build: its own lines, and those in conditions that hold. */
function headLines(lines: readonly Line[], choice: Choice): Line[] {
  return lines.flatMap((line) => {
    const word = wordOf(line);
    if (word !== "if" && word !== "unless") return [line];
    return holdsIn(readCondition(line), choice)
      ? headLines(linesIn(line), choice).filter((inner) => headWords.has(wordOf(inner)))
      : [];
  });
}

function hasConditionalHead(lines: readonly Line[]): boolean {
  return lines.some(
    (line) =>
      (wordOf(line) === "if" || wordOf(line) === "unless") &&
      linesIn(line).some((inner) => headWords.has(wordOf(inner)) || hasConditionalHead([inner])),
  );
}

const properties = new Set([
  ...headWords,
  "video",
  "photo",
  "base",
  "refit",
  "finish",
  "danger",
  "warning",
  "caution",
  "notice",
]);

function read(declaration: Declaration, source: SourceFile, choice: Choice): Procedure {
  const line: Line = { item: declaration.item, source },
    lines = linesIn(line),
    head = headLines(lines, choice);
  const of = linesByWord(head),
    first = (word: string): Line | undefined => of(word)[0];
  const text = (word: string): string | undefined => {
    const l = first(word);
    return l && (takeString(cursorOf(l)) ?? takeLabel(cursorOf(l)));
  };
  const unit = declaration.item.arguments.filter((a) => a.slot === "name").at(-1),
    refits = of("refit");
  const by = refits
    .map((l) => {
      const c = cursorOf(l);
      return accept(c, "by") ? takeName(c) : undefined;
    })
    .find((n) => n !== undefined);
  const role = first("role"),
    crew = first("crew");
  return {
    id: declaration.id,
    title: declaration.name,
    unit: unit && unit.first !== declaration.item.arguments[0]!.first ? source.tree.scan.tokens[unit.first]!.text : "",
    at: declaration.at,
    whole: wholeSpan(line),
    aims: of("aim").map(readAim),
    needs: of("needs").map(readNeed),
    starts: of("starts").map(readStart),
    leaves: of("leaves").map(readLeave),
    tasks: of("task").map(readTask),
    bases: of("base").flatMap((l) => takeNames(cursorOf(l))),
    crew: crew && takeNumber(cursorOf(crew)),
    crewAt: crew && wholeSpan(crew),
    role: role && takeName(cursorOf(role)),
    revision: text("revision"),
    issue: readIssue(of),
    video: text("video"),
    about: text("about") ?? "",
    messages: readMessages(lines),
    photos: of("photo").map(readPhoto),
    body: readEntries(lines.filter((l) => !properties.has(wordOf(l)))),
    finish: readEntries(of("finish").flatMap(linesIn)),
    refit: readEntries(refits.flatMap(linesIn)),
    conditional: hasConditionalHead(lines),
    refitAt: refits[0] && headSpan(refits[0]),
    refitBy: by,
    refitByAt: by && { file: source.path, start: by.start, end: by.end },
  };
}

export function readMessages(lines: readonly Line[]): Message[] {
  const messages: Message[] = [];
  for (const line of lines) {
    const word = wordOf(line);
    if (word !== "danger" && word !== "warning" && word !== "caution" && word !== "notice") continue;
    messages.push({ signal: word, text: takeString(cursorOf(line)) ?? "", at: headSpan(line) });
  }
  return messages;
}

export function readPhoto(line: Line): Photo {
  const c = cursorOf(line);
  return {
    file: takeString(c) ?? "",
    alt: takeString(c) ?? "",
    points: linesIn(line).flatMap((point) => readPoint(point)),
    at: headSpan(line),
  };
}

function readAim(line: Line): Aim {
  const c = cursorOf(line),
    at = headSpan(line);
  let is: Aim["is"] = "none",
    names: Name[] = [];
  if (accept(c, "all")) is = accept(c, "in") ? "all-in" : (accept(c, "apart"), "all-apart");
  else if (!accept(c, "none")) {
    names = takeNames(c);
    is = accept(c, "apart") ? "apart" : (accept(c, "off"), "off");
  }
  return { is, names, except: accept(c, "except") ? takeNames(c) : [], at };
}

function readNeed(line: Line): Need {
  const c = cursorOf(line),
    words = takeString(c),
    names = words === undefined ? takeNames(c) : [];
  return { names, words, then: accept(c, "then") ? takeString(c) : undefined, at: headSpan(line) };
}

function readStart(line: Line): Start {
  const c = cursorOf(line),
    at = headSpan(line);
  if (accept(c, "without")) return { is: "without", ...some(c), at };
  if (accept(c, "drained")) return { is: "drained", names: takeNames(c), at };
  if (accept(c, "with")) {
    const precaution = takeLabel(c) ?? "";
    return { is: "with", precaution, names: takeNames(c), at };
  }
  return { is: "on-bench", at };
}

function readLeave(line: Line): Leave {
  const c = cursorOf(line),
    word = peekText(c),
    is =
      word === "out" || word === "finger-tight" || word === "off" || word === "drained" || word === "turned"
        ? word
        : "off";
  c.at++;
  const of = some(c),
    words = takeString(c);
  return { is, ...of, words, until: accept(c, "until") ? takeName(c) : undefined, at: headSpan(line) };
}

function some(c: ReturnType<typeof cursorOf>): { count: number | undefined; names: Name[] } {
  let count: number | undefined;
  if (isNumber(peek(c)) && peekText(c, 1) === "of") {
    count = takeNumber(c);
    c.at++;
  } else if (peekText(c) === "rest" && peekText(c, 1) === "of") c.at += 2;
  return { count, names: takeNames(c) };
}

function readTask(line: Line): Task {
  const c = cursorOf(line),
    id = takeName(c)?.text ?? "",
    title = takeString(c) ?? id;
  accept(c, "does");
  return { id, title, does: takeNames(c), at: headSpan(line) };
}
