// Every example of the pages is checked: what its marks say is found, and nothing else that a reader would have to mend.

import { expect, test } from "vitest";
import { fencesOf, judged, pages, read, whole } from "./fences.ts";

test("each page of the language has examples", () => {
  for (const page of [
    "README.md",
    "language/reference/language.md",
    "language/reference/bench.md",
    "language/reference/core.md",
    "language/reference/tour.md",
  ]) {
    expect(fencesOf(page, "strip").length, page).toBeGreaterThan(0);
  }
});

for (const page of pages.filter((one) => one !== "language/reference/tour.md" && one !== "README.md")) {
  for (const fence of fencesOf(page, "strip")) {
    test(`${page}:${fence.line} gives what its marks say`, () => {
      const { found, wanted } = judged(whole(fence));
      expect(found).toEqual(wanted);
    });
  }
}

test("Core by example is the dairy pump, word for word", () => {
  expect(fencesOf("language/reference/language.md", "strip").map((fence) => fence.text)).toContain(
    read("examples/dairy-pump/pump.strip"),
  );
});

test("a wrong example is found, so that these tests can fail", () => {
  expect(judged(whole({ page: "", line: 1, text: "# stage\nremove cover\n" })).found.join()).toContain(
    "sequence/still-held",
  );
  expect(judged(whole({ page: "", line: 1, text: "# stage\nundo nobody\n" })).found.join()).toContain("names/unknown");
  expect(judged(whole({ page: "", line: 1, text: '# stage\npart x "X" { mass 3 }\n' })).found.join()).toContain(
    "syntax/unit-missing",
  );
});
