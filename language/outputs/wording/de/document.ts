// Sätze ganzer Dokumente, Überschriften des Zusammenbaus und der Stückliste.

import type { BuildChoice } from "../../../model/model.ts";
import type { Wording } from "../wording.ts";
import { capital, joined, sentence } from "../phrases.ts";
import { counted, list } from "./phrases.ts";

const findings = (count: number): string => counted(count, "Befund offen", "Befunde offen");

function choiceName(choice: BuildChoice): string {
  switch (choice.is) {
    case "named":
      return choice.name;
    case "fails":
      return `${choice.name} (nicht wie vorgesehen)`;
    case "reading-before-fails":
      return "Ergebnis davor (nicht wie vorgesehen)";
    case "optional":
      return choice.title || "wahlweises Teil";
    case "choice":
      return `Wahl ${choice.number}`;
  }
}

export const document: Wording["document"] = {
  draftMark: "ENTWURF",
  draftLine: (openFindings, why) =>
    `ENTWURF: ${joined([why.includes("not-approved") ? "nicht freigegeben" : "", openFindings > 0 ? findings(openFindings) : ""], ", ")}. Nicht danach arbeiten.`,
  cautionLine:
    "Angaben des Herstellers, örtliche Vorschriften und befugte Fachkräfte gehen vor. Dieses Dokument ist eine Hilfe und keine Gefährdungsbeurteilung.",
  contentHash: (hash) => `Inhalt: ${hash.slice(0, 16)}`,
  noSignal: "GEFÄHRDUNG",
  hazardFigure: (word, value) => `${word} ${value}`,
  titled: (title, text) => `${title}: ${text}`,
  titles: (titles) => titles.join(": "),
  parts: (texts) => texts.join("; "),
  build: (choices) => {
    const names = choices.map(choiceName);
    return names.length < 2 ? (names[0] ?? "Grundausführung") : `${names[0]} mit ${list(names.slice(1))}`;
  },
  colon: ":",
  hazardHead: (signal, kind, name) => `${signal}: ${kind}: ${name}`,
  dated: (date) => `Datum: ${date}.`,
  figures: (all) => sentence(all.join(", ")),
  harm: (what) => sentence(`Mögliche Folgen, allgemein: ${what}`),
  keepOut: (distance) => sentence(`Andere Personen mindestens ${distance} fernhalten`),
  wear: (things) => sentence(`Tragen: ${list(things)}`),
  who: (role) => sentence(`Nur für: ${role}`),
  pushes: (what) => sentence(`Drückt auf: ${what}`),
  source: (source) => sentence(`Quelle: ${source}`),
  mustStand: (precautions) =>
    sentence(
      `Vor dem Weiterarbeiten prüfen, ob ${precautions.length === 1 ? "diese Vorkehrung" : "diese Vorkehrungen"} noch ${precautions.length === 1 ? "besteht" : "bestehen"}: ${list(precautions)}`,
    ),
  on: (what) => `${capital(what)}:`,
  picture: (alt) => sentence(`Bild: ${alt}`),
};

export const refit: Wording["refit"] = {
  halves: { strip: "Zerlegen", refit: "Zusammenbau", finish: "Schlussprüfungen" },
  columns: [
    "Entwurf",
    "Anleitung",
    "Phase",
    "Schritt",
    "Zeile",
    "Handgriff",
    "Anzahl",
    "Werkzeug",
    "Anziehdrehmoment",
    "Ablage",
    "Weiteres",
  ],
  noRefit: "Der Zusammenbau ließ sich nicht ermitteln: siehe Befunde.",
};

export const bill: Wording["bill"] = {
  title: "Liste der Verbrauchsstoffe und Ersatzteile",
  forUnits: (units) => sentence(`Für ${counted(units, "Einheit", "Einheiten")}`),
  grades: {
    certain: "Wird in jedem Fall gebraucht",
    worn: "Nur wenn verschlissen, beschädigt oder durch einen Messwert verlangt",
  },
  columns: [
    "Entwurf",
    "Bedarf",
    "Artikel",
    "Art",
    "Größe",
    "Teilenummer",
    "Norm",
    "Für eine",
    "Für alle",
    "Packungen",
    "Packung",
    "Lieferzeit",
    "Haltbarkeit",
    "Warum",
    "Verwendet bei",
  ],
  sorts: {
    part: "Teil",
    fastener: "Verbindungselement",
    joint: "Verbindung",
    consumable: "Verbrauchsstoff",
    fluid: "Flüssigkeit",
  },
  pieces: (count) => `${count} Stück`,
  lots: {
    pair: (pieces, lots) => `${pieces} Stück (${counted(lots, "Paar", "Paare")})`,
    set: (pieces, lots) => `${pieces} Stück (${counted(lots, "Satz", "Sätze")})`,
    setWith: (pieces, lots, others) => `${pieces} Stück (${counted(lots, "Satz", "Sätze")}, zusammen mit: ${others})`,
    inSet: (pieces, first) => `${pieces} Stück (im selben Satz wie: ${first})`,
  },
  notGiven: (uses) => (uses === 1 ? "Menge nicht angegeben" : `Menge für ${uses} Verwendungen nicht angegeben`),
  and: (parts) => parts.join(" und "),
  packs: (count, atLeast) => `${atLeast ? "mindestens " : ""}${counted(count, "Packung", "Packungen")}`,
  packsOf: (packs, pack) => `${packs} (Packung zu ${pack})`,
  lead: (time) => `Lieferzeit ${time}`,
  shelfLife: (time) => `haltbar ${time}`,
  nothing: "Nach dem, was die Anleitungen sagen, wird nichts verbraucht und nichts erneuert.",
  notGivenNote:
    "Wo eine Menge nicht angegeben ist, vor der Bestellung nachsehen: Ein leeres Feld würde als „keine“ gelesen.",
  reasons: {
    rule: "immer neu",
    "standing-rule": "immer neu nach der festen Regel der Werkstatt",
    destroyed: "wird beim Lösen zerstört",
    act: "wird nach der Anleitung erneuert",
    worn: "neu, wenn verschlissen",
    damaged: "neu, wenn beschädigt",
    "as-a-set": "neu als Satz",
    "by-pairs": "neu paarweise",
    reading: "wenn der Messwert es verlangt",
    chosen: "in der Größe, die der Messwert verlangt",
    scrap: "das Altteil wird ausgesondert",
    "kind-not-said": "von einer Art, die einmal verwendet wird; die Anleitung sagt nicht, ob neu oder alt",
  },
  every: (strips) => (strips === 1 ? "neu nach jeder Zerlegung" : `neu nach je ${strips} Zerlegungen`),
  each: (text) => `für eine: ${text}`,
  usedOn: (things) => `für ${things.join("; ")}`,
};
