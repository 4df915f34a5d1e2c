// The command that answers questions to the figures: one as typed, or a sheet of them as JSON. It reads nothing of a procedure.

import { answerSheet, answerWords, figureNamed, isAnswer, type AssumptionSettings } from "../../calc/answer.ts";
import {
  boldHeading,
  plainHeading,
  printAnswer,
  printFigure,
  printList,
  printUnanswered,
  type Heading,
} from "../../calc/print-answer.ts";
import { figures, figureTopics } from "../../figures/registry.ts";
import { CannotRun, command, type Command, type Io, type ParsedArgs } from "../command.ts";

/** `calc NAME …`: a figure with its formula, steps, source and caution. Exit 0 answered, 1 with a question that has no answer, 2 could not run. */
export const calc: Command = command({
  name: "calc",
  summary: "Work out a torque, a wait, a lift or another figure, with its formula, source and caution",
  usage: "calc NAME [FIGURES…] | calc NAME | calc --list | calc --json [FILE | -]",
  example: "stripdown calc wait 560 V 1200 uF 22 kohm",
  notes: [
    "calc --list shows the figures by topic; calc NAME alone says what a figure takes, where it holds and what to try.",
    "Figures stand with their units, in any order that is plain: 560 V 1200 uF 22 kohm. A name says which is meant where it is not: reach 45 cm, maker-wait 5 min.",
    "A range is 60..80 N·m, a tolerance 70 ± 5 N·m: of a load, a torque or a danger the end that asks for more counts, of a measured size the nominal one. Inch sizes are 1/4-20, 3/8-16 UNC, #10-32.",
    "Nothing goes below 0 but a temperature, and no unit is guessed: a wrong one is an error with the nearest that fit.",
    "What nobody said is assumed and printed: as stripdown.json of this folder or one above has it under assumptions, or by --assume, which goes first, such as surface=dry, friction-thread=0.14 or yield-share=0.8.",
    'A sheet of questions is JSON: [{ "id": "1", "name": "torque", "inputs": { "size": "M8", "class": "8.8" } }]. Answers come in its order; the shape of both is language/schemas/calc.schema.json.',
    "Exit status: 0 answered, 1 a question without an answer, 2 could not run.",
    "Every figure is an aid: the maker's data, local codes and licensed or authorised persons come first.",
  ],
  options: [
    { name: "list", about: "List every figure there is" },
    {
      name: "json",
      about: "Print the answer as JSON; without a NAME read a sheet of questions from FILE or standard input",
    },
    { name: "system", value: "metric|us", about: "System of units for the results" },
    {
      name: "assume",
      value: "NAME=VALUE,…",
      about: "Set assumptions that nobody stated, such as friction-thread=0.14",
    },
  ],
  async run(args, io) {
    const json = args.options.get("json") !== undefined;
    const heading = io.colour ? boldHeading : plainHeading;
    if (args.options.get("list") !== undefined) return list(io, json, heading);
    // What the project assumes, and over it what this question does.
    const { settingsHolding } = await import("../project-run.ts"),
      ofProject = (await settingsHolding(io.cwd ?? process.cwd())).assumptions,
      wishes = { assumptions: { ...ofProject, ...assumptionsOf(args) }, system: systemOf(args) };
    const [name, ...words] = args.positionals;
    if (name === undefined || (json && words.length === 0 && isFile(name))) {
      if (!json) throw new CannotRun("calc needs the name of a figure: calc --list shows them all");
      return sheet(
        io,
        name === undefined || name === "-" ? await io.readStdin() : await io.readFile(name),
        wishes.assumptions,
      );
    }
    const figure = figureNamed(name);
    // A name alone asks what the figure takes, unless it answers without any input.
    if (words.length === 0 && !json && "arguments" in figure && figure.arguments.some((one) => one.optional !== true)) {
      io.out(printFigure(figure, heading));
      return 0;
    }
    const answer = answerWords(name, words, wishes);
    if (json) io.out(`${JSON.stringify(answer, null, 2)}\n`);
    else if (isAnswer(answer)) io.out(printAnswer(answer, heading));
    else io.err(printUnanswered(answer));
    return isAnswer(answer) ? 0 : 1;
  },
});

export default calc;

/** A name that can only be a file: a dash for standard input, or one with a dot or a slash. */
const isFile = (name: string): boolean => name === "-" || /[./\\]/.test(name);

function list(io: Io, json: boolean, heading: Heading): number {
  const all = [...figures].sort((a, b) => (a.name < b.name ? -1 : 1));
  const described = all.map(({ name, title, arguments: taken, validity, source, examples }) => ({
    name,
    title,
    arguments: taken,
    validity,
    source,
    examples,
  }));
  io.out(json ? `${JSON.stringify(described, null, 2)}\n` : printList(figureTopics, heading));
  return 0;
}

function sheet(io: Io, text: string, assumptions: AssumptionSettings): number {
  const answers = answerSheet(text, assumptions);
  if ("problem" in answers) throw new CannotRun(answers.problem);
  io.out(`${JSON.stringify({ answers }, null, 2)}\n`);
  return answers.every(isAnswer) ? 0 : 1;
}

function systemOf(args: ParsedArgs): "metric" | "us" | undefined {
  const given = args.options.get("system");
  if (given === undefined || given === "metric" || given === "us") return given;
  throw new CannotRun("--system is metric or us");
}

/** Reads `friction-thread=0.14,surface=dry`; whether the names and values hold, the figures say. */
function assumptionsOf(args: ParsedArgs): AssumptionSettings {
  const given = args.options.get("assume");
  if (given === undefined) return {};
  if (given === true) throw new CannotRun("--assume needs NAME=VALUE, such as friction-thread=0.14");
  return Object.fromEntries(
    given.split(",").map((pair) => {
      const [, name, value] = /^\s*([a-z-]+)\s*=\s*(\S+)\s*$/.exec(pair) ?? [];
      if (name === undefined || value === undefined)
        throw new CannotRun(`--assume needs NAME=VALUE, such as friction-thread=0.14, not "${pair}"`);
      return [name, Number.isNaN(Number(value)) ? value : Number(value)];
    }),
  );
}
