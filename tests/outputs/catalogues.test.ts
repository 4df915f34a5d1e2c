// The catalogues themselves: complete, honest about who has read them, without a word that clears, in the style of their language.

import { globSync, readFileSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { expect, test } from "vitest";
import { manual } from "../../language/outputs/manual/manual.ts";
import { write } from "../../language/outputs/output.ts";
import { refit } from "../../language/outputs/refit/refit.ts";
import { outputs } from "../../language/outputs/registry.ts";
import { reviewLines } from "../../language/outputs/wording/review.ts";
import { defaultWording, wordingFor, wordings } from "../../language/outputs/wording/languages.ts";
import type { Wording } from "../../language/outputs/wording/wording.ts";
import { signals, type SignalName } from "../../language/tables/index.ts";
import { fixedTexts } from "../support/fixed-texts.ts";
import { everyText, machines } from "./languages.ts";
import { compiledExample, compiledText, options } from "./outputs-of.ts";

/** Everything of all machines is read, in a language. */
const patience = 120_000;

const root = join(import.meta.dirname, "../../language/outputs/wording"),
  tags = Object.keys(wordings),
  of = (tag: string): Wording => wordings[tag]!;

const folders = ["en-gb", "en-us", "de", "fr", "es"],
  files = (folder: string): string[] => globSync(join(root, folder, "*.ts")).sort();

/**
 * Words that would clear a danger, by language: safe, made safe, OK, passed, all clear, complies, certified, and dead or discharged as a
 * state. The names of acts that ask (prove dead, Spannungsfreiheit feststellen, vérifier l'absence de tension) are none of them.
 */
const clearing: Readonly<Record<string, RegExp>> = {
  "en-gb":
    /\bsafe\b|\bsafely\b|\bOK\b|\bokay\b|\bpassed\b|\ball clear\b|\bcompl(?:y|ies|iant)\b|\bcertified\b|(?<!prove )(?<!proving )(?<!prove-)\bdead\b|\bdischarged\b|\bharmless\b|\bde-energi[sz]ed\b|\bno (?:danger|risk|hazard)\b(?! assessment)/i,
  de: /\bi\. ?O\.|\b(?:sicher|sichere[nmrs]?|gefahrlos\w*|ungefährlich\w*|unbedenklich\w*|harmlos\w*|OK|okay|in Ordnung|bestanden|entspricht|konform\w*|zertifiziert\w*|spannungsfrei(?!heit)\w*|spannungslos(?!ig)\w*|stromlos(?!ig)\w*|drucklos(?!ig)\w*|kraftlos(?!ig)\w*|entladen\w*|entspannt|energiefrei\w*|keine Gefahr|ohne Gefahr|(?<!nicht )freigegeben(?! ist| von))\b/i,
  fr: /\b(?:sûre?s?|sans (?:danger|risque)|en sécurité|sécurisée?s?|inoffensi\w+|OK|conformes?|conformité|certifiée?s?|réussie?s?|validée?s?|déchargée?s?|hors tension|consignée?s?|aucun (?:danger|risque)|rien à signaler)(?![\p{L}])/iu,
  es: /\b(?:segur[oa]s?|sin (?:peligro|riesgo)|inofensiv[oa]s?|inocu[oa]s?|OK|conformes?|conformidad|certificad[oa]s?|superad[oa]s?|apt[oa]s?|aprobad[oa]s?|cumple[n]?|descargad[oa]s?|sin tensión|desenergizad[oa]s?|ningún (?:peligro|riesgo)|todo en orden)(?![\p{L}])/iu,
};

test.each(folders)("%s: no sentence clears anything", (folder) => {
  const words = clearing[folder === "en-us" ? "en-gb" : folder]!,
    shared = folder.startsWith("en") ? globSync(join(root, "../../tables/*.ts")) : [];
  const all = [...files(folder), ...shared.filter((path) => !/synonyms|speech/.test(path))].flatMap((path) =>
    fixedTexts(path).map(({ text, line }) => ({ text, at: `${basename(path)}:${line}` })),
  );
  expect(all.length).toBeGreaterThan(folder === "en-us" ? 50 : 300);
  // Names of kinds are no texts that anybody reads.
  const said = all.filter(({ text }) => !/^[a-z-]+$/.test(text));
  expect(said.filter(({ text }) => words.test(text))).toEqual([]);
});

test.each([
  ["en-gb", ["The unit is safe.", "Test passed", "The bus is dead", "OK", "It complies with the rule"]],
  [
    "de",
    [
      "Die Anlage ist sicher.",
      "Prüfung bestanden",
      "Die Sammelschiene ist spannungsfrei",
      "i. O.",
      "Kondensator entladen",
    ],
  ],
  ["fr", ["La machine est sûre.", "Essai réussi", "Le bus est hors tension", "conforme", "condensateur déchargé"]],
  ["es", ["La máquina es segura.", "Prueba superada", "El bus está sin tensión", "conforme", "condensador descargado"]],
] as const)("%s: the list of words finds each of these", (language, texts) => {
  for (const text of texts) expect(text).toMatch(clearing[language]!);
});

test.each(tags.filter((tag) => tag !== "en-GB"))(
  "%s: the same sentences as the first catalogue, of the same kind",
  (tag) => {
    const shape = (value: unknown): unknown =>
      Array.isArray(value)
        ? value.length
        : typeof value === "object" && value !== null
          ? Object.fromEntries(Object.entries(value).map(([key, each]) => [key, shape(each)]))
          : typeof value;
    const { review: _, ...own } = of(tag),
      { review: __, ...first } = defaultWording;
    expect(shape(own)).toEqual(shape(first));
  },
);

test("no sentence stands in the catalogue that nothing prints: each is named in the program outside of the catalogues", () => {
  const program = globSync(join(root, "../../../{language,client,server}/**/*.ts"))
    .filter((path) => !/[\\/](?:wording|node_modules)[\\/]|[\\/]tablet[\\/]script\.ts$/.test(path))
    .map((path) => readFileSync(path, "utf8"))
    .join("\n");
  const unnamed = (value: object, path: string): string[] =>
    Object.entries(value).flatMap(([key, each]) =>
      typeof each === "object" && each !== null && !Array.isArray(each)
        ? unnamed(each as object, `${path}${key}/`)
        : new RegExp(`(?<![\\w-])${key}(?![\\w-])`).test(program)
          ? []
          : [`${path}${key}`],
    );
  expect(unnamed(defaultWording, "")).toEqual([]);
  // The test itself: a sentence of this name is found missing.
  expect(unnamed({ nobodyAsksForIt: "A sentence." }, "")).toEqual(["nobodyAsksForIt"]);
});

// ISO 3864-2 and ANSI Z535.6 as harmonised in the languages: the words as instructions for use print them (from memory; common practice).
test.each([
  ["en-GB", "DANGER WARNING CAUTION NOTICE"],
  ["en-US", "DANGER WARNING CAUTION NOTICE"],
  ["de", "GEFAHR WARNUNG VORSICHT HINWEIS"],
  ["fr", "DANGER AVERTISSEMENT ATTENTION AVIS"],
  ["es", "PELIGRO ADVERTENCIA ATENCIÓN AVISO"],
])("%s: the signal words", (tag, words) => {
  expect((Object.keys(signals) as SignalName[]).map((signal) => of(tag).kinds.signal(signal)).join(" ")).toBe(words);
});

test("figures: decimal sign, unit words, and done twice they are the same", () => {
  const figure = "24.95 to 25.05 mm, 0.5 turn, 2 turns, 24 months, 60 V dc, 1200 rpm, 22 kohm, 1.5 rad";
  expect(of("en-GB").figures.number(figure)).toBe(figure);
  expect(of("de").figures.number(figure)).toBe(
    "24,95 to 25,05 mm, 0,5 Umdrehung, 2 Umdrehungen, 24 Monate, 60 V DC, 1200 min⁻¹, 22 kΩ, 1,5 rad",
  );
  expect(of("fr").figures.number(figure)).toBe(
    "24,95 to 25,05 mm, 0,5 tour, 2 tours, 24 mois, 60 V CC, 1200 tr/min, 22 kΩ, 1,5 rad",
  );
  expect(of("es").figures.number(figure)).toBe(
    "24,95 to 25,05 mm, 0,5 vuelta, 2 vueltas, 24 meses, 60 V CC, 1200 r/min, 22 kΩ, 1,5 rad",
  );
  expect(of("de").figures.number("1 turns, 11 turns, 2.1 turns, 90 deg, 1 month")).toBe(
    "1 Umdrehung, 11 Umdrehungen, 2,1 Umdrehungen, 90°, 1 Monat",
  );
  for (const tag of tags) {
    const { number } = of(tag).figures;
    expect(number(number(figure))).toBe(number(figure));
    expect(number("3 turnbuckles, 2 dayshifts")).toBe("3 turnbuckles, 2 dayshifts");
  }
});

test("a property class keeps its point where figures have a comma", () => {
  const input = compiledExample("mooring-winch/strip.strip"),
    made = write(manual, "html", input, { ...options, wording: of("de") });
  expect(made).toContain("M16x40 8.8");
  expect(made).not.toMatch(/\b(?:8,8|10,9|12,9)\b/);
});

test.each([
  ["en-GB", "on its side", "out"],
  ["en-US", "on its side", "out"],
  ["de", "auf der Seite liegend", "nach außen"],
  ["fr", "couchée sur le côté", "vers l'extérieur"],
  ["es", "tumbada de lado", "hacia fuera"],
])("%s: a plain word of position is the language's, an author's own stays as written", (tag, position, facing) => {
  const input = compiledText(`
unit u "U" { base a  positions feet-down, on-side, drum-up  part a "A"  part b "B"  part c "C"  fastener f screw "F" { torque 9 N·m  joins b to a }  fastener g screw "G" { torque 9 N·m  joins c to b  needs drum-up } }
procedure p "P" for u { aim b, c off  step "S" { turn to on-side  turn to drum-up  undo g  remove c  undo f  remove b  refit { fit b facing out  fit c facing peg-side  reverse } } }`),
    said = write(refit, "text", input, { ...options, wording: of(tag) }).replace(/\s+/g, " ");
  for (const word of [position, facing, "drum up", "peg side"]) expect(said).toContain(word);
  expect(said).not.toMatch(/on side|upright|facing-out/);
});

test("a list in Spanish takes e before the sound of i, in no other place", () => {
  const { list } = of("es").acts;
  expect(list(["bomba", "impulsor"])).toBe("bomba e impulsor");
  expect(list(["eje", "hilo"])).toBe("eje e hilo");
  expect(list(["arena", "hierro"])).toBe("arena y hierro");
  expect(list(["eje", "tapa"])).toBe("eje y tapa");
});

test.each([
  ["en-AU", "en-GB"],
  ["EN", "en-GB"],
  ["en-us", "en-US"],
  ["de-AT", "de"],
  ["de-Latn-CH", "de"],
  ["fr-CA", "fr"],
  ["es-419", "es"],
  ["nl", undefined],
  ["d", undefined],
  ["", undefined],
])("RFC 4647, 3.4 (lookup): %s is answered by %s", (asked, answer) => {
  expect(wordingFor(asked)?.tag).toBe(answer);
});

test("a language that nobody has read says so in one line on every paper, English says nothing", () => {
  const input = machines["recorded"]!();
  for (const tag of tags) {
    const lines = reviewLines(of(tag));
    expect(lines).toHaveLength(tag.startsWith("en") ? 0 : 1);
    for (const { of: name, text } of everyText("recorded", input, { ...options, wording: of(tag) })) {
      // A table for a spreadsheet and a label have no head.
      if (name.endsWith("csv")) continue;
      for (const line of lines)
        expect(
          text.replace(/\s+/g, " ").split(line.replace(/\s+/g, " ").slice(0, 60)).length - 1,
          `${tag} ${name}`,
        ).toBe(1);
    }
  }
});

/**
 * A second word for a thing that has one already, or no word of the trade: by language, each with the word that stands. Terms of ISO 1891,
 * ISO 6789 and EN 50110-1 in the language where they name the thing, else common practice; all from memory.
 */
const second: Readonly<Record<string, readonly (readonly [RegExp, string])[]>> = {
  "en-gb": [
    [/\bway back\b(?!, as it follows)/i, "refit"],
    [/(?<!torque )\bwrench(?:es)?\b(?! no\.| of the workshop)/i, "spanner"],
    [/\b(?:color|center|ground|liter|meter|gray|authoriz)/i, "the British spelling"],
  ],
  de: [
    [/Rückweg|Montage/, "Zusammenbau"],
    [/\bDrehmoment\b|Anzugs(?:dreh)?moment|Anziehmoment/, "Anziehdrehmoment"],
    [/Schraubenzieher|In?[bm]us|Torx/, "Schraubendreher, Innensechskant, Innensechsrund"],
    [/Seegerring|Sprengring/, "Sicherungsring"],
    [/Unterlegscheibe|Beilagscheibe/, "Scheibe"],
    [/wie es sein soll/, "wie vorgesehen"],
    [/\bdas alte\b|\bein neues\b/, "Altteil, Neuteil"],
  ],
  fr: [
    [/\bretour\b(?! à)/i, "remontage"],
    [/\b(?:un|le|au|du|sans|de) couple\b(?! de serrage)/i, "couple de serrage"],
    [/\bcirclips?\b/i, "anneau élastique"],
    [/\bserre-?câble/i, "collier de câblage"],
    [/hors de (?:ses|leurs) limites/, "hors limites"],
    [/comme il faut|comme écrit/, "comme prévu, comme décrit"],
    [/pas comme décrit/i, "différent de la description"],
    [/\busée?s?\b/, "usagé"],
    [/\((?:neuf|déposé|vidangé)s?\)/, "à l'état neuf, whatever the gender of the name"],
  ],
  es: [
    [/\bvuelta\b(?! a su sitio)/i, "montaje"],
    [/\b(?:un|el|sin|del) par\b(?! de apriete)|\btorque\b/i, "par de apriete"],
    [/\bllave (?:de torsión|de torque)/i, "llave dinamométrica"],
    [/fuera de (?:sus|los) límites/, "fuera de límites"],
    [/\bcomproba\w+/, "verificación, verificar"],
    [/no como está escrito/i, "distinto de lo descrito"],
    [/\((?:nuevo|desmontado|vaciado)s?\)/, "en estado nuevo, whatever the gender of the name"],
  ],
};

test.each(Object.keys(second))("%s: one word for one thing", (folder) => {
  const found = files(folder).flatMap((path) =>
    fixedTexts(path).flatMap(({ text, line }) =>
      // Names of kinds and of units, as the tables and the figures have them, are read by programs.
      /^[a-z-]+$/.test(text)
        ? []
        : second[folder]!.filter(([words]) => words.test(text.replaceAll("\u00ad", ""))).map(
            ([, term]) => `${basename(path)}:${line} ${term}: ${text}`,
          ),
    ),
  );
  expect(found).toEqual([]);
});

// Imprimerie nationale, Lexique des règles typographiques (from memory): before a colon, a semicolon, ! and ?, inside guillemets and
// before a per cent sign stands a space at which no line ends.
test("fr: no line ends before a colon, inside guillemets or before a per cent sign, and one apostrophe is used", () => {
  const wrong = /(?:^|[^\u00a0])[:;!?](?=\s|$)|«(?!\u00a0)|(?<!\u00a0)»|(?<!\u00a0)%|’/;
  const found = files("fr").flatMap((path) =>
    fixedTexts(path)
      .filter(({ text }) => wrong.test(text))
      .map(({ text, line }) => `${basename(path)}:${line} ${text}`),
  );
  expect(found).toEqual([]);
  for (const text of ["Ligne: faite", "Comme prévu ?", "à 100 %", "l’outil", "« mot »"]) expect(text).toMatch(wrong);
});

test(
  "fr: what is printed has that space before each colon and semicolon of ours",
  () => {
    const said = { ...options, wording: of("fr"), baseAddress: "https://example.test/" },
      found = Object.keys(machines).flatMap((name) => {
        const input = machines[name]!(),
          own = [...input.texts.values()].join(" ").replace(/\s+/g, " ").toLowerCase();
        return everyText(name, input, said)
          .filter(({ of: output }) => !output.endsWith("csv"))
          .flatMap(({ of: output, text }) =>
            // What the author wrote so stands in his source.
            [...text.replace(/[^\S\u00a0]+/g, " ").matchAll(/\S{0,4}[\p{L}\p{N}).%”][:;] .{0,3}/gu)]
              .filter(([at]) => !own.includes(at.toLowerCase()))
              .map(([at]) => `${name} ${output}: ${at}`),
          );
      });
    expect([...new Set(found)]).toEqual([]);
  },
  patience,
);

/** British words that have another one in American English (Oxford and Merriam-Webster mark each so; from memory). */
const british =
    /\b(?:spanners?|anticlockwise|circlips?|split pins?|authoris\w+|colour\w*|moulds?|(?:milli|newton )?metres?|litres?|\d+ off)\b|\$\{\w+\} off\b/i,
  /** Words of the trade on one side only (common practice). In the source of a sentence they may be the name of a value. */
  britishTrade =
    /\b(?:refits?|strips?|(?:un)?tick(?:s|ed)?|renew(?:s|ed)?|prov(?:e|ing) dead|draw (?:out|off|in)|unsolder|(?:in|out|up|down|back|for)wards)\b/i;

test(
  "en-US: no British word is left, in the fixed sentences and in what is printed",
  () => {
    const words = Object.keys(machines).flatMap((name) => {
      const input = machines[name]!();
      return everyText(name, input, { ...options, wording: of("en-US") }).flatMap(({ of: output, text }) =>
        [british, britishTrade]
          .flatMap((words) => [...text.matchAll(new RegExp(words, "gi"))])
          .filter(([found]) => !input.own.has(found))
          .map(([found]) => `${name}, ${output}: ${found}`),
      );
    });
    expect(words).toEqual([]);
    const fixed: string[] = [];
    const visit = (value: unknown, path: string): void => {
      if (typeof value === "string" || typeof value === "function") {
        const text = typeof value === "string" ? value : value.toString().replace(/\b(?:acts|words|kinds)\.\w+/g, "");
        const found = british.exec(text)?.[0] ?? (typeof value === "string" ? britishTrade.exec(text)?.[0] : undefined);
        if (found !== undefined) fixed.push(`${path}: ${found}`);
      } else if (typeof value === "object" && value !== null)
        for (const [key, each] of Object.entries(value)) visit(each, `${path}/${key}`);
    };
    visit(of("en-US"), "");
    expect(fixed).toEqual([]);
  },
  patience,
);

test("each catalogue has a folder of its own, and every folder is offered", () => {
  const found = [...new Set(globSync(join(root, "*/*.ts")).map((path) => basename(dirname(path))))].sort();
  expect(found).toEqual([...folders].sort());
  expect(tags.map((tag) => tag.toLowerCase()).sort()).toEqual(found);
});

test.each(tags)(
  "%s: beside a place to write stands the unit as the limit writes it, and a label has its colon as the language sets it",
  (tag) => {
    const with_ = { ...options, wording: of(tag) },
      input = compiledText(
        `unit u "Unit" { base a  part a "A"  hazard h electrical danger "H" { on a  precaution isolate "Open."  precaution prove-dead "Both." at most 12 V dc } }
procedure p "P" for u { step "S" { isolate h  prove-dead h  work a "Wipe it." } }`,
      ),
      unit = /12\u00a0(V\u00a0\w+)/.exec(write(manual, "html", input, with_))![1]!.replace("\u00a0", " "),
      print = manual.print!(manual.data(input, with_), with_);
    expect(unit).toBe({ "en-GB": "V dc", "en-US": "V dc", de: "V DC", fr: "V CC", es: "V CC" }[tag]);
    expect(write(manual, "html", input, with_)).toContain(`"decimal"/>${unit}</p>`);
    expect(JSON.stringify(print.blocks)).toContain(`"after":"${unit}"`);
    expect(print.colon).toBe(tag === "fr" ? "\u00a0:" : ":");
    expect(JSON.stringify(print.blocks)).toContain(`${of(tag).kinds.hazard("electrical")}${print.colon} H`);
  },
);

test.each(tags)("%s: every paper of a catalogue that nobody of the trade has read says so at its head", (tag) => {
  const with_ = { ...options, wording: of(tag) },
    input = compiledExample("dairy-pump/pump.strip"),
    lines = reviewLines(of(tag));
  for (const output of outputs) {
    if (!output.print || output.name === "labels") continue;
    const front = JSON.stringify(output.print(output.data(input, with_), with_).front);
    for (const line of lines) expect(front, output.name).toContain(JSON.stringify(line).slice(1, -1));
  }
});
