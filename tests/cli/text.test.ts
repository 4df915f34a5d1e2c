// The authors' texts out to a translator and back, and the papers in the other language.

import { globSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { decodePDFRawStream, PDFDocument, PDFRawStream } from "@cantoo/pdf-lib";
import { expect, test } from "vitest";
import { withLangRuns } from "../../language/outputs/texts/lang-runs.ts";
import { folderWith, stripdown } from "../support/command-line.ts";
import { foreign } from "../support/pseudo-language.ts";

const pump = readFileSync("examples/dairy-pump/pump.strip", "utf8");

/** Every text translated: each letter of the source by a foreign one. */
const translate = (xliff: string, which: (source: string) => boolean = () => true): string =>
  xliff.replace(/(\s*)<source>([^]*?)<\/source>/g, (whole, blank: string, source: string) =>
    which(source)
      ? `${whole}${blank}<target>${source.replace(/&\w+;|[^&]+/g, (part) => (part.startsWith("&") ? part : foreign(part)))}</target>`
      : whole,
  );

async function translatedPump(which?: (source: string) => boolean): Promise<string> {
  const folder = folderWith({ "pump.strip": pump });
  const { status } = await stripdown(folder, ["text", "export", ".", "--lang", "de", "--to", "pump.xlf"]);
  expect(status).toBe(0);
  const path = join(folder, "pump.xlf");
  writeFileSync(path, translate(readFileSync(path, "utf8"), which));
  return folder;
}

test("out and back: the papers print the translations, with the source's content hash", async () => {
  const folder = await translatedPump(),
    { status, out, err } = await stripdown(folder, ["text", "import", "pump.xlf", "."]);
  expect([status, err]).toEqual([0, ""]);
  expect(out).toMatch(/^Written: pump\.de\.texts\.json: \d+ texts taken\n$/);
  const plain = (await stripdown(folder, ["refit", ".", "--quiet"])).out,
    german = (await stripdown(folder, ["refit", ".", "--lang", "de", "--quiet"])).out,
    hash = /Content: (\w+)/.exec(plain)?.[1];
  expect(german).toContain(`Inhalt: ${hash}`);
  expect(german).toContain(foreign("Change the shaft seal"));
  expect(german).toContain(foreign("Make sure that the motor cannot start"));
  expect(german).not.toMatch(/shaft|casing nuts|impeller key/i);
  // Without a language, and in one that nobody translated into, nothing changes.
  expect(plain).toContain("Change the shaft seal");
  expect((await stripdown(folder, ["refit", ".", "--lang", "fr", "--quiet"])).out).toContain("Change the shaft seal");
});

test("lines, acts and places are the source's in every format for programs", async () => {
  const folder = await translatedPump();
  await stripdown(folder, ["text", "import", "pump.xlf", ".", "--quiet"]);
  const read = async (more: string[]): Promise<unknown> => {
    const { out } = await stripdown(folder, ["refit", ".", "--json", "--quiet", ...more]),
      [procedure] = JSON.parse(out).procedures;
    return [procedure.strip, procedure.refit].map(
      (acts: { id: string; verb: string; at: unknown; needs: unknown[] }[]) =>
        acts.map(({ id, verb, at, needs }) => [id, verb, at, needs.length]),
    );
  };
  expect(await read(["--lang", "de"])).toEqual(await read([]));
});

test("what is not translated prints as written, is marked with its language, and is listed", async () => {
  const folder = await translatedPump((source) => !source.includes("punch mark"));
  const back = await stripdown(folder, ["text", "import", "pump.xlf", "."]);
  expect([back.status, back.err]).toEqual([0, ""]);
  expect(back.out).toContain("1 without a translation, which print as written");
  const { out, err } = await stripdown(folder, ["manual", ".", "--lang", "de"]);
  expect(err).toContain("pump.strip: 1 text is not translated into de and printed as written: line");
  expect(err).toContain('"One punch mark across the joint."');
  expect(out).toContain('<html lang="de">');
  expect(out).toContain("Deutsch; Übersetzung von: English");
  expect(out).toContain('<bdi lang="en">One punch mark across the joint.</bdi>');
  expect(out.match(/<bdi lang=/g)).toHaveLength(1);
  const pdf: Uint8Array[] = [];
  const made = await stripdown(folder, ["manual", ".", "--lang", "de", "--as", "pdf"], "", {
    outBytes: (bytes) => pdf.push(bytes),
  });
  expect([made.out, pdf.length > 0]).toEqual(["", true]);
  // The catalogue of the file, and the one text, wherever it stands.
  // Named where the words are painted, or on the tag around them.
  const objects = (await PDFDocument.load(Buffer.concat(pdf), { updateMetadata: false })).context
      .enumerateIndirectObjects()
      .map(([, object]) =>
        object instanceof PDFRawStream
          ? Buffer.from(decodePDFRawStream(object).decode()).toString("latin1")
          : String(object),
      ),
    languages = objects.flatMap((object) => [...object.matchAll(/\/Lang ?\(([\w-]+)\)/g)].map(([, tag]) => tag));
  expect(new Set(languages)).toEqual(new Set(["de", "en"]));
});

test("a text that changed since is not taken, and no old translation of it is printed", async () => {
  const folder = await translatedPump();
  await stripdown(folder, ["text", "import", "pump.xlf", ".", "--quiet"]);
  writeFileSync(
    join(folder, "pump.strip"),
    pump.replace("Press start: nothing may turn.", "Press start twice: nothing may turn."),
  );
  const back = await stripdown(folder, ["text", "import", "pump.xlf", "."]);
  expect(back.status).toBe(1);
  expect(back.err).toBe(
    'pump.strip: "Press start: nothing may turn." is not taken: the text has changed since it was exported\n',
  );
  const { out } = await stripdown(folder, ["refit", ".", "--lang", "de", "--quiet"]);
  expect(out).toContain("Press start twice: nothing may turn.");
  expect(out).not.toContain(foreign("Press start"));
});

test("a figure that differs is refused with its place; the other texts are taken", async () => {
  const folder = folderWith({
    "pump.strip": pump.replace("Press start: nothing may turn.", "Wait 5 min: nothing may turn."),
  });
  await stripdown(folder, ["text", "export", ".", "--lang", "de", "--to", "pump.xlf", "--quiet"]);
  const path = join(folder, "pump.xlf");
  writeFileSync(path, translate(readFileSync(path, "utf8")).replace(/(<target>[^<]*) 5 /, "$1 15 "));
  const { status, err } = await stripdown(folder, ["text", "import", "pump.xlf", "."]);
  expect(status).toBe(1);
  expect(err).toMatch(
    /^pump\.strip:\d+: ".* 15 .*" is not taken: its figures are not those of the source \(without 5; with 15\)\n$/,
  );
});

test("exported again, what is translated is there and only the rest is open", async () => {
  const folder = await translatedPump((source) => !source.includes("punch mark"));
  await stripdown(folder, ["text", "import", "pump.xlf", ".", "--quiet"]);
  const { out } = await stripdown(folder, ["text", "export", ".", "--lang", "de"]);
  expect(out.match(/state="initial"/g)).toHaveLength(1);
});

test("every example comes back complete", async () => {
  const folder = folderWith(
    Object.fromEntries(
      globSync("examples/*/*.strip")
        .filter((path) => !path.includes("mistakes"))
        .map((path) => [path.slice("examples/".length), readFileSync(path, "utf8")]),
    ),
  );
  await stripdown(folder, ["text", "export", ".", "--lang", "de", "--to", "all.xlf", "--quiet"]);
  const path = join(folder, "all.xlf");
  writeFileSync(path, translate(readFileSync(path, "utf8")));
  const { status, out, err } = await stripdown(folder, ["text", "import", "all.xlf", "."]);
  expect([status, err]).toEqual([0, ""]);
  expect(out).not.toContain("without a translation");
  for (const machine of [
    "mooring-winch",
    "valve-actuator",
    "hand-chain-hoist",
    "reducer-family",
    "pressure-vessel-inspection",
  ]) {
    const made = await stripdown(folder, ["manual", machine, "--lang", "de"]);
    expect(made.err.replace(/^\d+ findings? .*\n$/, ""), machine).toBe("");
    expect(made.out, machine).not.toContain("<bdi lang=");
  }
}, 60_000);

test.each([
  [["text"], "text what? It is export or import"],
  [["text", "send"], "text send: it is export or import, then the files"],
  [["text", "export", "."], "into which language?"],
  [["text", "export", ".", "--lang", "../de"], "a language tag is due"],
  [["text", "export", ".", "--lang", "en"], "there is nothing to do"],
  [["text", "import", "."], "which translation?"],
  [["text", "import", "bad.xlf", "."], "bad.xlf is no translation"],
])("%s is answered in words", async (args, says) => {
  const { status, out, err } = await stripdown(folderWith({ "pump.strip": pump, "bad.xlf": "no" }), args);
  expect([status, out]).toEqual([2, ""]);
  expect(err).toContain(says);
});

test("a file of translations that is none stops the paper in words", async () => {
  const folder = folderWith({ "pump.strip": pump, "pump.de.texts.json": "{}" });
  const { status, err } = await stripdown(folder, ["refit", ".", "--lang", "de"]);
  expect(status).toBe(2);
  expect(err).toBe('stripdown: pump.de.texts.json holds no translations: its format is not "stripdown-texts"\n');
});

test("a drawing's words that are not translated are marked with their language", async () => {
  const folder = await translatedPump((source) => !/^Casing nuts$/.test(source));
  await stripdown(folder, ["text", "import", "pump.xlf", ".", "--quiet"]);
  const { out } = await stripdown(folder, ["draw", "strip", ".", "--lang", "de", "--quiet"]);
  expect(out).toMatch(/<text [^>]*><tspan lang="en">Casing nuts<\/tspan> \(8\)<\/text>/);
  expect((await stripdown(folder, ["draw", "strip", ".", "--quiet"])).out).not.toContain("lang=");
});

test("texts of another language are found in the sentences that they stand in, whole words alone", () => {
  const par = (says: unknown) => ({ is: "par", says }),
    document = { front: [], blocks: [par("Lid screws: Lid entfernen, Lids"), par([{ t: "Lid", b: true }])] } as never,
    { blocks } = withLangRuns(document, new Set(["Lid", "Lid screws", "B"]), "en");
  expect(blocks).toEqual([
    par([{ t: "Lid screws", l: "en" }, { t: ": " }, { t: "Lid", l: "en" }, { t: " entfernen, Lids" }]),
    par([{ t: "Lid", b: true, l: "en" }]),
  ]);
});
