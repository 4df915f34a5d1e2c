// Findings as JUnit XML: one suite a file, one case a finding, so that a build server shows them among its tests.

import { plainReasons } from "./reasons.ts";
import { noAssessment, notConsidered, type Report, type Reported } from "./report.ts";
import { shownLine } from "./shown-line.ts";

export function findingsAsJunit(report: Report): string {
  const files = new Map<string, Reported[]>();
  for (const finding of report.findings) {
    const list = files.get(finding.at.file);
    if (list) list.push(finding);
    else files.set(finding.at.file, [finding]);
  }
  const isFailure = (f: Reported): boolean => f.severity === "error" || f.severity === "warning";
  const suites = [...files].map(([file, list]) => {
    const cases = list.map((f) => {
      const body = escape([f.says, ...plainReasons(f, report)].join("\n"));
      const inside = isFailure(f)
        ? `<failure message="${escape(f.says)}" type="${escape(f.code)}">${body}</failure>`
        : `<system-out>${body}</system-out>`;
      return testcase(`${f.code} line ${f.at.line}`, file, inside);
    });
    return suite(file, list.length, list.filter(isFailure).length, 0, cases);
  });
  for (const { file, says } of report.unreadable) {
    suites.push(
      suite(file, 1, 0, 1, [
        testcase("read", file, `<error message="${escape(says)}" type="unreadable">${escape(says)}</error>`),
      ]),
    );
  }
  const open = [...notConsidered(report), noAssessment].join("\n");
  suites.push(
    suite("stripdown check", 1, 0, 0, [
      testcase(shownLine(report), "stripdown", `<system-out>${escape(open)}</system-out>`),
    ]),
  );
  return `<?xml version="1.0" encoding="UTF-8"?>\n<testsuites name="stripdown">\n${suites.join("\n")}\n</testsuites>\n`;
}

function suite(name: string, tests: number, failures: number, errors: number, cases: readonly string[]): string {
  return `  <testsuite name="${escape(name)}" tests="${tests}" failures="${failures}" errors="${errors}" time="0">\n${cases.join("\n")}\n  </testsuite>`;
}

/** `inside` is XML already. */
function testcase(name: string, classname: string, inside: string): string {
  return `    <testcase name="${escape(name)}" classname="${escape(classname)}" time="0">\n      ${inside}\n    </testcase>`;
}

/** Text in XML 1.0: markup escaped, signs that XML does not allow shown as U+FFFD. */
function escape(text: string): string {
  return text
    .replace(/[^\t\n\r\u0020-\ud7ff\ue000-\ufffd]/gu, "\ufffd")
    .replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`);
}
