// Frases de documentos enteros, títulos del montaje y de la lista de materiales.

import type { BuildChoice } from "../../../model/model.ts";
import { capital, joined, sentence } from "../phrases.ts";
import type { Wording } from "../wording.ts";
import { counted, list, the, titled } from "./phrases.ts";

function choiceName(choice: BuildChoice): string {
  switch (choice.is) {
    case "named":
      return choice.name;
    case "fails":
      return `${choice.name} (no como debe ser)`;
    case "reading-before-fails":
      return "resultado anterior (no como debe ser)";
    case "optional":
      return choice.title || "parte opcional";
    case "choice":
      return `opción ${choice.number}`;
  }
}

export const document: Wording["document"] = {
  draftMark: "BORRADOR",
  draftLine: (openFindings, why) =>
    `${titled(
      "BORRADOR",
      joined(
        [
          why.includes("not-approved") ? "sin firma de aprobación" : "",
          openFindings > 0 ? counted(openFindings, "hallazgo abierto", "hallazgos abiertos") : "",
        ],
        ", ",
      ),
    )}. No trabajar según este documento.`,
  cautionLine:
    "Los datos del fabricante, las normas locales y las personas autorizadas tienen prioridad. Este documento es una ayuda y no es una evaluación de riesgos.",
  contentHash: (hash) => titled("Contenido", hash.slice(0, 16)),
  noSignal: "RIESGO",
  hazardFigure: (word, value) => `${word} ${value}`,
  titled,
  titles: (titles) => titles.join(": "),
  parts: (texts) => texts.join("; "),
  build: (choices) => {
    const names = choices.map(choiceName);
    return names.length < 2 ? (names[0] ?? "versión básica") : `${names[0]} con ${list(names.slice(1))}`;
  },
  colon: ":",
  hazardHead: (signal, kind, name) => titled(signal, titled(kind, name)),
  dated: (date) => sentence(titled("Fecha", date)),
  figures: (all) => sentence(all.join(", ")),
  harm: (what) => sentence(titled("Consecuencias posibles, en general", what)),
  keepOut: (distance) => sentence(`Mantener a las demás personas a ${distance} como mínimo`),
  wear: (things) => sentence(titled("Llevar puesto", list(things.map(the)))),
  who: (role) => sentence(titled("Solo para", the(role))),
  pushes: (what) => sentence(titled("Empuja", what)),
  source: (source) => sentence(titled("Fuente", the(source))),
  mustStand: (precautions) =>
    sentence(
      titled(
        `Antes de seguir, verificar que ${precautions.length === 1 ? "esta precaución sigue puesta" : "estas precauciones siguen puestas"}`,
        list(precautions.map(the)),
      ),
    ),
  on: (what) => `${capital(what)}:`,
  picture: (alt) => sentence(titled("Imagen", alt)),
};

export const refit: Wording["refit"] = {
  halves: { strip: "Desmontaje", refit: "Montaje", finish: "Pruebas finales" },
  columns: [
    "Borrador",
    "Procedimiento",
    "Fase",
    "Paso",
    "Línea",
    "Acción",
    "Cantidad",
    "Herramienta",
    "Par de apriete",
    "Lugar",
    "Otros datos",
  ],
  noRefit: "No se pudo establecer el montaje: ver los hallazgos.",
};

export const bill: Wording["bill"] = {
  title: "Lista de consumibles y repuestos",
  forUnits: (units) => sentence(`Para ${counted(units, "unidad", "unidades")}`),
  grades: {
    certain: "Se necesita en todo caso",
    worn: "Solo si está gastado, dañado o si una medida lo pide",
  },
  columns: [
    "Borrador",
    "Necesidad",
    "Artículo",
    "Tipo",
    "Tamaño",
    "Referencia",
    "Norma",
    "Para una",
    "Para todas",
    "Envases",
    "Envase",
    "Plazo de entrega",
    "Caducidad",
    "Por qué",
    "Usado en",
  ],
  sorts: {
    part: "Pieza",
    fastener: "Elemento de fijación",
    joint: "Unión",
    consumable: "Consumible",
    fluid: "Fluido",
  },
  pieces: (count) => counted(count, "pieza"),
  lots: {
    pair: (pieces, lots) => `${counted(pieces, "pieza")} (${counted(lots, "par", "pares")})`,
    set: (pieces, lots) => `${counted(pieces, "pieza")} (${counted(lots, "juego")})`,
    setWith: (pieces, lots, others) => `${counted(pieces, "pieza")} (${counted(lots, "juego")}, con: ${others})`,
    inSet: (pieces, first) => `${counted(pieces, "pieza")} (en el mismo juego que: ${first})`,
  },
  notGiven: (uses) => (uses === 1 ? "cantidad no indicada" : `cantidad no indicada para ${uses} usos`),
  and: (parts) => parts.join(" y "),
  packs: (count, atLeast) => `${atLeast ? "al menos " : ""}${counted(count, "envase")}`,
  packsOf: (packs, pack) => `${packs} (de ${pack})`,
  lead: (time) => `entrega ${time}`,
  shelfLife: (time) => `se conserva ${time}`,
  nothing: "No se gasta ni se cambia nada, según lo que dicen los procedimientos.",
  notGivenNote: "Donde no se indica una cantidad, buscarla antes de pedir: un blanco se leería como cero.",
  reasons: {
    rule: "siempre nuevo",
    "standing-rule": "siempre nuevo según la regla fija del taller",
    destroyed: "se destruye al soltarlo",
    act: "el procedimiento lo cambia",
    worn: "nuevo si está gastado",
    damaged: "nuevo si está dañado",
    "as-a-set": "nuevo por juego",
    "by-pairs": "nuevo por pares",
    reading: "si la medida lo pide",
    chosen: "del tamaño que pide la medida",
    scrap: "el viejo se desecha",
    "kind-not-said": "de un tipo de un solo uso; el procedimiento no dice si nuevo o viejo",
  },
  every: (strips) => (strips === 1 ? "nuevo en cada desmontaje" : `nuevo cada ${strips} desmontajes`),
  each: (text) => titled("para una", text),
  usedOn: (things) => `para ${things.map(the).join("; ")}`,
};
