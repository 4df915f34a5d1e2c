// Las frases impresas de las acciones, en el desmontaje y en el montaje.

import { ifAny, joined, lowerFirst, sentence } from "../phrases.ts";
import type { Wording } from "../wording.ts";
import { counted, list, people, some, the, titled, told, withTool } from "./phrases.ts";

const by = (count: number | undefined): string => (count ? people(count) : "");
const passes = (count: number): string => counted(count, "pasada");
const under = (title: string, text: string | undefined): string => (text ? titled(title, text) : "");

export const acts: Wording["acts"] = {
  the,
  some,
  list,
  givenOtherwise: "solo si el resultado anterior no es como debe ser",
  givenState: (title, state) =>
    `${title}${{ "": "", fails: " (no como debe ser)", removed: " (en estado desmontado)" }[state]}`,
  givenPieces: (unless, any, pieces) =>
    `${unless ? "excepto para: " : "solo para: "}${pieces.join(any ? " o " : " y ")}`,
  givenCondition: (unless, any, states) => `${unless ? "salvo si: " : "solo si: "}${states.join(any ? " o " : " y ")}`,

  undo: (verb, what, tool) => told(verb, what, withTool(tool)),
  loosen: (what, amount, tool) => told("Aflojar", what, amount, withTool(tool), "dejar puesto"),
  backOut: (what, amount, tool) => told("Desenroscar en parte", what, amount, withTool(tool), "dejar en el agujero"),
  remove: (verb, what, how, tool, count) => told(verb, what, withTool(tool), by(count), how),
  removeTogether: (what, tool, count) => told("Desmontar juntos, como una pieza", what, withTool(tool), by(count)),
  lift: (what, tool, count) => told("Levantar y retirar", what, withTool(tool), by(count)),
  support: (what, tool) => told("Sostener", what, withTool(tool), "no soltar"),
  hold: (what, tool) => told("Sujetar para que no gire", what, withTool(tool)),
  release: (what, tool) => told("Quitar el apoyo de", what, tool && the(tool)),
  aside: (verb, what, amount) =>
    told({ open: "Abrir", swing: "Girar a un lado", slide: "Deslizar a un lado" }[verb], what, amount, "no separar"),
  back: (verb, what) =>
    told({ open: "Cerrar", swing: "Girar de vuelta a su sitio", slide: "Deslizar de vuelta a su sitio" }[verb], what),
  turn: (position, part) => (part === undefined ? told("Girar la unidad", position) : told("Girar", part, position)),
  turnBack: (position) => told("Volver a girar la unidad", position),
  rotate: (what, amount) => told("Girar a mano", what, amount),
  drain: (what, volume, into) => told("Vaciar", `${what} (${volume})`, under("en", into && the(into))),
  recover: (what, volume, into, tool) =>
    told("Recuperar", `${what} (${volume})`, under("en", into && the(into)), withTool(tool), "no dejar escapar nada"),
  fill: (what, volume, at) => told("Llenar", `${what} (${volume})`, under("por", at)),
  topUp: (what, at) => told("Completar el nivel", what, under("por", at)),
  bleed: (what, at) => told("Purgar el aire", what, under("por", at)),
  evacuate: (what, tool) => told("Hacer el vacío en el circuito", what, withTool(tool)),
  purge: (what, tool) => told("Barrer el circuito", what, withTool(tool)),
  cap: (what) => told("Tapar", what),
  uncap: (what) => told("Quitar el tapón de", what),
  restore: (hazard) => told("Levantar las precauciones contra este peligro para la prueba con energía", the(hazard)),
  precaution: (title, hazard) => told(title, the(hazard)),
  precautionTitle: (title) => `${title}:`,
  mark: (what, label) => told("Marcar", what, `marca ${label}`),
  tag: (what, labels) => told("Etiquetar", what, labels),
  align: (labels) => told("Alinear las marcas", labels),
  measure: (what, on, tool) => told("Medir", what, under("en", on), withTool(tool)),
  inspect: (what, on) => told("Examinar", what, under("en", on)),
  test: (what, tool) => told("Probar", what, withTool(tool)),
  set: (on, what, tool) => told("Ajustar", on, withTool(tool), what),
  clean: (what, tool) => told("Limpiar", what, withTool(tool)),
  apply: (consumable, what, amount) => told("Aplicar", the(consumable), amount, under("en", what)),
  heat: (what, to, tool) => told("Calentar", what, under("hasta", to), withTool(tool)),
  wait: (time) => sentence(`Esperar al menos ${time}`),
  renew: (what) => told("Cambiar por nuevo", what),
  scrap: (what) => told("Desechar", what, "marcar, guardar aparte"),
  reuse: (what) => told("Volver a usar la pieza vieja", what),
  work: (what) => `En ${what}:`,
  put: (thing, on) => told("Poner provisionalmente", the(thing), under("en", on), "se vuelve a quitar"),
  take: (thing) => told("Quitar", the(thing)),
  press: (what, onto, tool) => told("Calar a presión", what, under("en", onto), withTool(tool)),
  fit: (verb, what, of) =>
    told(
      verb,
      of.fresh && !verb.endsWith(" nuevo") ? `${what} (en estado nuevo)` : what,
      under("en", of.onto),
      under("orientación", of.facing),
      withTool(of.tool),
      by(of.people),
      of.how,
    ),
  lowerIn: (what, tool, count) => told("Bajar a su sitio", what, withTool(tool), by(count)),
  fingerTight: (what) => told("Enroscar a mano, sin apretar", what),
  tighten: (what, stage) => told(stage === undefined ? "Apretar" : `Apretar a la etapa ${stage}`, what),
  precautionBackTitle: (title) => `Levantar la precaución (${lowerFirst(title)}):`,
  starts: {
    without: (what) => told("Al empezar, sin", what),
    drained: (what) => told("Al empezar, vaciado ya hecho", what),
    with: (title, hazard) => told("Al empezar, ya puesta", `${lowerFirst(title)}, ${the(hazard)}`),
    onBench: "Al empezar: en el banco, fuera de la unidad.",
  },
  leaves: (how, what, until, words) =>
    joined(
      [
        told(
          "Queda al final",
          how === "turned" ? `unidad en posición ${what}` : what,
          {
            turned: "",
            out: "en estado desenroscado",
            "finger-tight": "apriete solo a mano",
            off: "en estado desmontado",
            drained: "en estado vaciado",
          }[how],
          under("hasta", until),
        ),
        words,
      ],
      " ",
    ),
  afterwards: (text) => titled("Después", text),
  stillStands: (title, hazard) =>
    told("No se levanta aquí, queda trabajo abierto", `${lowerFirst(title)}, ${the(hazard)}`),
  standAgain: (title, hazard) => told("Volver a tomar la precaución", `${lowerFirst(title)}, ${the(hazard)}`),
  repeatFrom: (step) => told("Repetir desde", step),
  doProcedure: (title) => told("Hacer", title),
  secondCheck: "Una segunda persona revisa y firma.",
  holdPoint: "Detenerse aquí hasta que se libere este punto de espera.",
  time: (time) => told("Tiempo", `aproximadamente ${time}`),
  people: (count) => told("Personas", String(count)),
  video: (from, to, file) => told(`Vídeo${ifAny(" ", file)}`, `de ${from} a ${to}`),

  spanner: (tool, size) => joined([tool, size], " "),
  leftHand: "Rosca a izquierdas: aflojar en sentido horario, apretar en sentido antihorario.",
  comesAway: (what) => told("Sale con ello", what),
  withWashers: (what) => told("Con", what),
  massHere: (mass, notGiven) =>
    notGiven === 0
      ? told("Masa suspendida en ese momento", mass)
      : mass
        ? told("Masa suspendida en ese momento", `${mass} y ${counted(notGiven, "pieza")} sin masa indicada`)
        : "Masa no indicada: pesar o preguntar antes de levantar.",
  into: (kind, label) =>
    sentence(
      kind === "container" ? titled("En", the(label)) : `En la ${kind === "tray" ? "bandeja" : "bolsa"} ${label}`,
    ),
  opens: (what) => told("Abrir para ello", what),
  closesAfter: (what) => told("Volver a cerrar", what),
  against: (hazard) => told("Contra", the(hazard)),
  waitLeast: (time, why) => sentence(`Esperar al menos ${time}${why ? ` (${why})` : ""}`),
  waitWhy: {
    maker: "como se indica con la precaución",
    "to-60-V": "calculado, hasta 60 V CC; ninguna espera sustituye la verificación",
    "to-0.2-J": "calculado, hasta 0,2 J; ninguna espera sustituye la verificación",
  },
  inPasses: (count, shares) => (shares ? titled(`en ${passes(count)}`, shares) : `en ${passes(count)}`),
  undoInPasses: (count) => sentence(`En ${passes(count)}, un poco cada vez`),
  sequence: (title) => lowerFirst(title),
  order: (order, round) =>
    told(round ? "Orden, contado en sentido horario, comienzo libre" : "Orden, contado a lo largo del trazado", order),
  torqueNone: "sin par de apriete pedido",
  torqueNotGiven: "par de apriete no indicado",
  torqueFor: (value, forWhat, whileText) =>
    joined(
      [
        `${value}${forWhat === undefined ? "" : forWhat === "rest" ? " para los demás" : ` para ${forWhat}`}`,
        under("mientras", whileText),
      ],
      ", ",
    ),
  stages: (stages) => stages.join(", luego "),
  backOutAfter: (angle, until) => `luego aflojar ${angle}${until ? `, ${titled("hasta que", until)}` : ""}`,
  torqueLine: (torque) =>
    /^(?:sin )?par de apriete\b/.test(torque) ? sentence(torque) : told("Par de apriete", torque),
  tightenLater: "El par de apriete viene después.",
  threadLocker: (name) => told("En la rosca", the(name)),
  lubricant: (name) => told("Lubricar con", the(name)),
  newIf: {
    worn: "Nuevo si está gastado.",
    damaged: "Nuevo si está dañado.",
    "as-a-set": "Si es nuevo: el juego completo.",
    "by-pairs": "Si es nuevo: por pares.",
    reading: "Nuevo si la medida lo pidió.",
    chosen: "Del tamaño que la medida pidió.",
    "kind-not-said": "De un tipo de un solo uso: el procedimiento no dice si nuevo o viejo.",
  },
  isNew: "Montar nuevo.",
  aNew: (name, count) => `${the(name)} (${count > 1 ? `${count} piezas, ` : ""}en estado nuevo)`,
  hows: (verbs) => (verbs.length === 0 ? undefined : verbs.map(lowerFirst).join(", ")),
  limitsLine: (limits) => told("Límites", limits),
  newEvery: (strips) => sentence(strips === 1 ? "Nuevo en cada desmontaje" : `Nuevo cada ${strips} desmontajes`),
  reuseTimes: (times) =>
    sentence(`Puede usarse de nuevo ${times === 1 ? "una vez" : `${times} veces`}: contarlo, luego nuevo`),
  ownPlace: "Guardar cada pieza con su sitio: vuelve allí.",
  ownPlaceBack: "Colocar de nuevo en su propio sitio.",
  keepTogether: (sets: readonly string[]) => sentence(`Mantener juntos: ${sets.join("; ")}`),
  togetherAgain: (sets: readonly string[]) => sentence(`Colocar de nuevo juntos: ${sets.join("; ")}`),
  newWasher: (what) => told("Con nuevo", what),
  discardOf: (what) => told("No guardar", what, "se monta nuevo"),
  discard: "No guardar: se monta nuevo.",
  lineUp: (label, text) => told("Alinear la marca", label, text),
  tagged: (labels) => told("Según las etiquetas", labels),
  alignBy: (text) => titled("Alineación", text),
  goesOnDry: "Montar en seco: nada en las caras.",
  seal: (joint, consumable, bead) => told(`Antes de que las piezas se toquen, en ${the(joint)}`, the(consumable), bead),
  usesUp: (what) => told("Necesita", what),
  bead: (width, length) => (length ? `cordón ${width} x ${length}` : `cordón ${width}, longitud no indicada`),
  piecesNamed: (name, pieces) => `${the(name)} ${list(pieces)}`,
  each: (what, count) => `${what}, ${counted(count, "pieza")} de cada`,
  volumeNotGiven: "volumen no indicado",
  massNotGiven: "masa no indicada",
  countNotGiven: "cantidad no indicada",

  limits: {
    atLeast: (value) => `al menos ${value}`,
    atMost: (value) => `como máximo ${value}`,
    both: (low, high) => `de ${low} a ${high}`,
    condition: (value) => ` a ${value}`,
  },
  range: (low, high, unit) => `${low} a ${high} ${unit}`,
  noLimits: "sin límites indicados: anotar",
  asFound: "como se encontró",
  otherwiseLine: (what) => (what.startsWith("Si no:") ? what : told("Si no", what)),
  otherwise: (what) => told("Si no", what),
  consequence: {
    renew: (what) => titled("cambiar por nuevo", what),
    scrap: (what) => titled("desechar", what),
    repeat: (what) => titled("repetir desde", what),
    choose: (what, from) => `${titled("elegir", what)}, entre ${from}`,
    standardSize: "la medida estándar",
    further: (build) => `seguir con los documentos de la versión «${build}»`,
  },
};
