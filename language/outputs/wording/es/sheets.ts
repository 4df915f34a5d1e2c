// Palabras de las etiquetas y de las hojas para el banco.

import { joined, sentence } from "../phrases.ts";
import type { Wording } from "../wording.ts";
import { counted, the, titled } from "./phrases.ts";

export const labels: Wording["labels"] = {
  title: "Etiquetas para bolsas y bandejas",
  printAt: "Imprimir al 100 %, sin márgenes propios de la impresora.",
  nothing: "Ninguna línea pone nada en una bolsa o una bandeja.",
  place: (kind, label) => `${kind === "tray" ? "Bandeja" : "Bolsa"} ${label}`,
  from: (unit, procedure) => joined([unit, procedure], ": "),
  count: (count) => counted(count, "pieza"),
  some: (count, of) => `${count} de ${of}`,
  countNotGiven: "cantidad no indicada",
  discard: "no guardar: se monta nuevo",
  item: (item) =>
    joined(
      [
        item.name,
        item.count,
        item.size,
        `[${item.id}]`,
        `línea ${item.line}`,
        item.discard ? "no guardar: se monta nuevo" : "",
      ],
      ", ",
    ),
  columns: [
    "Borrador",
    "Lugar",
    "Id",
    "Nombre",
    "Cantidad",
    "Tamaño",
    "Paso",
    "Línea",
    "Nota",
    "Unidad",
    "Procedimiento",
  ],
};

export const torqueSheet: Wording["torqueSheet"] = {
  title: "Hoja de apriete",
  nothing: "En el montaje no se aprieta nada.",
  columns: {
    line: "Línea",
    fastener: "Elemento de fijación",
    count: "Cantidad",
    thread: "Rosca, clase",
    passes: "Pasadas, orden",
    metric: "Métrico",
    us: "EE. UU.",
    tool: "Herramienta, llave dinamométrica",
    note: "Nota",
    set: "Ajustado a",
    wrenchNo: "Llave n.º",
    initials: "Iniciales",
  },
  csv: [
    "Borrador",
    "Procedimiento",
    "Paso",
    "Línea",
    "Id",
    "Elemento de fijación",
    "Cantidad",
    "Rosca",
    "Clase",
    "Métrico",
    "EE. UU.",
    "Pasadas",
    "Orden",
    "Números",
    "Herramienta",
    "Llave dinamométrica",
    "Nota",
    "Ajustado a",
    "Llave n.º",
    "Iniciales",
  ],
  pass: (number, share, metric, us) => titled(String(number), `${share} = ${metric} (${us})`),
  passes: (count) => counted(count, "pasada"),
  order: (numbers) => titled("Orden", numbers),
  forPieces: (value, pieces) => (pieces === "rest" ? `${value} para los demás` : `${value} para ${pieces}`),
  stage: (number, value) => titled(`etapa ${number}`, value),
  whileDoing: (value, what) => `${value}, ${titled("mientras", what)}`,
  notGiven: "no indicado",
  none: "sin par de apriete",
  fresh: { certain: "nuevo", worn: "nuevo si está gastado" },
  lubricant: (name) => `con ${name}`,
  threadLocker: (name) => titled("en la rosca", the(name)),
  leftHand: "rosca a izquierdas",
  noWrench: "ninguna de la lista lo cubre",
  note: "Solo uno de los dos sistemas lleva la cifra del propio autor. Donde no se indica un par de apriete, averiguarlo antes de apretar.",
};

export const layoutSheet: Wording["layoutSheet"] = {
  title: "Hoja de colocación",
  nothing: "Con este procedimiento no se desmonta ninguna pieza.",
  note: "Dejar las piezas en este orden, de izquierda a derecha. Se montan como dice el montaje, más o menos de la última a la primera.",
  csv: [
    "Borrador",
    "Procedimiento",
    "Sitio",
    "Línea",
    "Id",
    "Nombre",
    "Cantidad",
    "Sale con ello",
    "Masa",
    "Lugar",
    "Nota",
    "Paso",
  ],
  count: (count) => (count === undefined ? "cantidad no indicada: contar" : count === 1 ? "" : counted(count, "pieza")),
  goesTo: (where) => sentence(titled("Dejar en", where)),
  tray: (label) => `bandeja ${label}`,
  bag: (label) => `bolsa ${label}`,
  massOf: (mass, unknown) =>
    unknown === 0
      ? mass
      : mass === ""
        ? "masa no indicada"
        : `${mass} y ${counted(unknown, "pieza")} sin masa indicada`,
  discard: "No guardar: se monta nuevo.",
  line: (line, step) => joined([line, step], " "),
};
