// Palabras en los dibujos.

import { sentence } from "../phrases.ts";
import type { Wording } from "../wording.ts";
import { counted, list, the, titled } from "./phrases.ts";

export const draw: Wording["draw"] = {
  titles: { strip: "Esquema de desmontaje", pattern: "Secuencias de apriete", path: "Recorridos de los fluidos" },
  of: (name, unit) => (unit === "" ? name : titled(unit, name)),
  nothing: {
    strip: "Con este procedimiento no se desmonta nada.",
    pattern: "Ningún grupo de elementos de fijación tiene trazado.",
    path: "Ningún fluido tiene recorrido.",
  },
  sheet: (title, sheet, of) => `${title}, hoja ${sheet} de ${of}`,

  pieces: (name, count, of) => (of <= 1 ? name : count < of ? `${name} (${count} de ${of})` : `${name} (${of})`),
  precaution: (precaution, hazard) => titled(precaution, the(hazard)),
  loosen: (what) => titled("Aflojar", the(what)),
  drain: (what) => titled("Vaciar", the(what)),
  support: (what) => titled("Sostener", the(what)),
  aside: (what) => titled("A un lado", the(what)),
  assumed: (label) => `${label} (rechazado por el banco: ver los hallazgos)`,
  outer: (label, sheet) => `después de ${label}, hoja\u00a0${sheet}`,
  free: (isAll) =>
    isAll
      ? "En cualquier orden, hasta donde la máquina está descrita"
      : "Después de nada más, hasta donde la máquina está descrita",
  stripAbout:
    "Qué debe venir antes de qué, hasta donde la máquina está descrita. Una flecha señala lo que viene después. No es una instrucción de trabajo: las precauciones están en los pasos.",
  relation: (label, after) => sentence(after.length === 0 ? label : `${label}, después de ${list(after)}`),
  sorts: {
    part: "pieza",
    fastener: "elemento de fijación",
    joint: "unión",
    fluid: "fluido",
    precaution: "precaución",
    hold: "sujeción",
    aside: "desplazamiento a un lado",
  },

  patternAbout: (count, order) =>
    sentence(
      order === undefined
        ? `${count} elementos de fijación en sus sitios`
        : titled(`${count} elementos de fijación, contados a lo largo del trazado, en el orden de apriete`, order),
    ),
  groupOf: (count, size) => sentence(size === "" ? counted(count, "pieza") : `${counted(count, "pieza")}, ${size}`),
  pitchCircle: (diameter) => sentence(`Círculo de agujeros de diámetro ${diameter}`),
  torque: (text) => sentence(titled("Par de apriete", text)),
  asSaid: (text) => sentence(text),
  turns: "El número en cada círculo es su turno.",
  turnsAnywhere: "El número en cada círculo es su turno; empezar por cualquiera.",
  noTurns: (isTorqueMissing) =>
    isTorqueMissing ? "Orden y par de apriete: no indicados." : "Orden de apriete: no indicado en números.",

  pathAbout: (stations, closed) =>
    sentence(
      `${stations.join(", luego ")}${closed && stations[0] !== undefined ? `, y de nuevo a ${stations[0]}` : ""}`,
    ),
  fillsAt: (name) => titled("llenado", the(name)),
  bleedsAt: (name) => titled("purga", the(name)),
  drainsAt: (name) => titled("vaciado", the(name)),
  port: (says, on) => sentence(on === "" ? says : `${says}, en ${the(on)}`),
  code: (number) => `Código que lleva al paso ${number}`,
};
