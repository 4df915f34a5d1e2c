// Performs every procedure and says what it found.

import { findingsAsAnnotations } from "../../outputs/findings/annotations.ts";
import { findingsAsJson } from "../../outputs/findings/json.ts";
import { findingsAsJunit } from "../../outputs/findings/junit.ts";
import { codeOf, reportOf, type Report } from "../../outputs/findings/report.ts";
import { findingsAsSarif } from "../../outputs/findings/sarif.ts";
import { findingsAsText } from "../../outputs/findings/text.ts";
import { allChecks } from "../../workspace/check-project.ts";
import { CannotRun, command } from "../command.ts";
import { isOn, option, runSurvey } from "../project-run.ts";
import { version } from "../version.ts";

const formats = ["text", "json", "sarif", "junit", "annotations"] as const;

export default command({
  name: "check",
  summary: "Perform the procedures on the bench and say what is wrong, where, why and what to do",
  usage: "check [FILE | FOLDER | GLOB | -]…",
  example: "stripdown check examples/dairy-pump --as text",
  options: [
    { name: "as", value: formats.join("|"), about: "How findings are written (text if not said)" },
    { name: "json", about: "The same as --as json" },
    { name: "strict", about: "Exit 1 for questions and hints too" },
    { name: "unknowns", about: "List the figures that nobody gave, and what each would let the tool check" },
    { name: "quiet", about: "Findings only, no summary" },
  ],
  async run(args, io) {
    const as = isOn(args, "json") ? "json" : (option(args, "as") ?? "text"),
      format = formats.find((one) => one === as);
    if (!format) throw new CannotRun(`--as ${as}: it is one of ${formats.join(", ")}`);
    const unknowns = isOn(args, "unknowns");
    if (unknowns && format !== "text" && format !== "json")
      throw new CannotRun(`--unknowns goes with --as text or json, not with ${format}`);
    const { checked, show, texts } = await runSurvey(args, io, unknowns),
      report = reportOf(checked, show, texts);
    io.out(written(report, format, { colour: io.colour, quiet: isOn(args, "quiet") }));
    return codeOf(report, isOn(args, "strict"));
  },
});

function written(
  report: Report,
  format: (typeof formats)[number],
  options: { colour: boolean; quiet: boolean },
): string {
  switch (format) {
    case "text":
      return findingsAsText(report, options);
    case "json":
      return findingsAsJson(report);
    case "sarif":
      return findingsAsSarif(report, (code) => allChecks().byCode(code), version);
    case "junit":
      return findingsAsJunit(report);
    case "annotations":
      return findingsAsAnnotations(report);
  }
}
