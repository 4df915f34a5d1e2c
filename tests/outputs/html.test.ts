// The manuals of the examples as HTML: closed elements, heads in order, links and labels that meet, nothing fetched.

import { createHash } from "node:crypto";
import { expect, test } from "vitest";
import { manual } from "../../language/outputs/manual/manual.ts";
import { write } from "../../language/outputs/output.ts";
import { outputs } from "../../language/outputs/registry.ts";
import { html } from "../../language/outputs/text/markup.ts";
import { wordings } from "../../language/outputs/wording/languages.ts";
import { compiledExample, options } from "./outputs-of.ts";

const examples = [
  ["dairy-pump/pump.strip"],
  ["mooring-winch/strip.strip"],
  ["mooring-winch/strip.strip", "mooring-winch/insulation.strip"],
  ["valve-actuator/actuator.strip"],
];
const pages = new Map(
  examples.map((paths) => [paths.join(" and "), write(manual, "html", compiledExample(...paths), options)]),
);
const voids = new Set(["meta", "input", "img", "br"]);

interface Tag {
  readonly name: string;
  readonly close: boolean;
  readonly attributes: ReadonlyMap<string, string>;
}

const tagsOf = (html: string): Tag[] =>
  [
    ...html
      .replace(/<style>[^]*?<\/style>/, "<style></style>")
      .replace(/(<script[^>]*>)[^]*?<\/script>/g, "$1</script>")
      .matchAll(/<(\/?)([a-zA-Z][\w-]*)((?:\s[^<>"]+(?:="[^"]*")?)*)\s*\/?>/g),
  ].map(([, slash, name = "", rest = ""]) => ({
    name,
    close: slash === "/",
    attributes: new Map([...rest.matchAll(/([\w-]+)="([^"]*)"/g)].map(([, key = "", value = ""]) => [key, value])),
  }));

test.each([...pages])("%s: every element is closed in its place", (_, html) => {
  const open: string[] = [];
  for (const { name, close } of tagsOf(html)) {
    if (voids.has(name) || /^(?:path|circle|rect)$/.test(name)) continue;
    if (close) expect(open.pop()).toBe(name);
    else open.push(name);
  }
  expect(open).toEqual([]);
});

test.each([...pages])("%s: one h1, no level skipped, ids once, every link and label has its target", (_, html) => {
  const tags = tagsOf(html).filter((tag) => !tag.close),
    levels = tags.filter(({ name }) => /^h[1-6]$/.test(name)).map(({ name }) => Number(name[1]));
  expect(levels.filter((level) => level === 1)).toHaveLength(1);
  levels.forEach((level, i) => expect(level - (levels[i - 1] ?? 0)).toBeLessThanOrEqual(1));
  const ids = tags.flatMap(({ attributes }) => attributes.get("id") ?? []);
  expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
  for (const { name, attributes } of tags) {
    if (name === "a") expect(ids).toContain(attributes.get("href")!.slice(1));
    for (const key of ["for", "aria-labelledby"])
      for (const id of attributes.get(key)?.split(" ") ?? []) expect(ids).toContain(id);
    if (name === "input")
      expect(
        attributes.has("aria-label") || tags.some((tag) => tag.attributes.get("for") === attributes.get("id")),
      ).toBe(true);
    if (name === "img") expect(attributes.get("alt")).not.toBe("");
    if (name === "th") expect(["row", "col"]).toContain(attributes.get("scope"));
  }
});

test.each([...pages])("%s: lets in nothing but its own style and script, by their hashes", (_, html) => {
  const style = /<style>([^]*?)<\/style>/.exec(html)![1]!,
    scripts = [...html.matchAll(/<script([^>]*)>([^]*?)<\/script>/g)].map(([, about = "", text = ""]) => ({
      about,
      text,
    })),
    policy = /Content-Security-Policy" content="([^"]*)"/.exec(html)![1]!.replaceAll("&#39;", "'"),
    hash = (text: string): string => createHash("sha256").update(text).digest("base64");
  expect(scripts.map(({ about }) => about)).toEqual([' type="application/json" id="tablet-data"', ""]);
  expect(policy).toBe(
    `default-src 'none'; img-src data:; style-src 'sha256-${hash(style)}'; script-src 'sha256-${hash(scripts[1]!.text)}'; base-uri 'none'; form-action 'none'`,
  );
  expect(html.replace(/<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg"/g, "<svg")).not.toMatch(/\sstyle="|https?:\/\//);
  JSON.parse(scripts[0]!.text);
});

test.each([...pages])("%s: every panel says its signal word, and a notice has no alert triangle", (_, html) => {
  for (const [, signal = "", body = ""] of html.matchAll(
    /<div class="panel (\w+)" role="note"[^>]*>(<p class="head">[^]*?<\/p>)/g,
  )) {
    expect(body).toContain(signal === "none" ? "HAZARD" : signal.toUpperCase());
    expect(body.includes('class="alert"')).toBe(signal !== "notice");
  }
});

test.each([...pages])("%s: says DRAFT at the head, in the title and at the end", (_, html) => {
  expect(html).toMatch(/<title>DRAFT: /);
  expect(html.match(/DRAFT: not approved\. Do not work by it\./g)).toHaveLength(2);
});

test("a picture is shown only where the caller gives it, and why not stands in its place", () => {
  const input = compiledExample("dairy-pump/pump.strip");
  expect(
    write(manual, "html", input, { ...options, picture: () => ({ type: "image/png", base64: "AAAA" }) }),
  ).toContain('<img src="data:image/png;base64,AAAA" alt="Casing off, impeller in view"/>');
  expect(
    write(manual, "html", input, { ...options, picture: () => ({ problem: "it lies outside the project" }) }),
  ).toContain("is not shown: it lies outside the project.");
});

test.each([...pages])("%s: no cell begins with the sign that parts two texts, one of which is missing", (_, html) => {
  expect(html).not.toMatch(/<td[^>]*>(<[^>]+>)*\s*:/);
});

// ISO 80000-1, 7.1.4 (from memory): a space stands between a figure and its unit; that no line ends there is common practice.
test.each(Object.values(wordings).map((wording) => [wording.tag, wording] as const))(
  "%s: no line of a page ends between a figure and its unit",
  (_, wording) => {
    const input = compiledExample("mooring-winch/strip.strip"),
      parted =
        /.{0,12}\d (?:[mkµ]?m|in|ft|kg|lb|N·m|lbf(?:·(?:ft|in))?|k?N|bar|kPa|psi|k?V|m?A|µF|k?Ω|°C|°F|s|min|h|L|%)(?![\p{L}\d]).{0,8}|\d\u00a0V (?:[ad]c|[AD]C|C[CA])(?!\p{L}).{0,8}|.{0,8}± \d/gu;
    for (const output of outputs) {
      const { html } = output.formats;
      if (!html) continue;
      const page = html.write(output.data(input, { ...options, wording }), { ...options, wording }),
        text = page.replace(/<(style|script)\b[^]*?<\/\1>|<[^>]*>/g, "\n");
      expect(
        [...text.matchAll(parted)].map(([at]) => at),
        output.name,
      ).toEqual([]);
    }
  },
);

test("a figure in an attribute stays as it is, in a text it keeps its unit", () => {
  const length = "4 mm";
  expect(html`<p title="${length}" class="a ${length}">${length} ${[length, html`<b>${length}</b>`]}</p>`.source).toBe(
    '<p title="4 mm" class="a 4 mm">4\u00a0mm 4\u00a0mm<b>4\u00a0mm</b></p>',
  );
});
