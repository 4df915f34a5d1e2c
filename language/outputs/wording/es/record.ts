// Lo que se dice de los registros del trabajo. Se lee lo anotado, y con ello no se libera nada.

import { joined } from "../phrases.ts";
import type { Wording } from "../wording.ts";
import { figures } from "./lines.ts";
import { counted, list, the, titled } from "./phrases.ts";

const limits = (text: string): string => (text === "" ? "" : ` (${titled("límites", text)})`),
  values = (count: number): string => counted(count, "valor", "valores");

export const record: Wording["record"] = {
  checkTitle: "Observaciones sobre el registro",
  recordOf: (file, serial) => (serial === "" ? file : `${file}, número de serie ${serial}`),
  noRemark: "Sin observaciones. Solo se lee el registro; no dice nada de la máquina.",
  openTitle: "Por resolver",
  toldTitle: "Para saber",
  wantedTitle: "Por pedir",
  open: "por resolver",
  told: "para saber",
  checkColumns: [
    "Borrador",
    "Archivo",
    "Número de serie",
    "Procedimiento",
    "Línea",
    "Categoría",
    "Observación",
    "Lo que sigue",
    "Elemento",
    "Pedido",
    "Cuántas",
    "Para",
  ],

  figure: (value, unit) =>
    unit === "" ? `${figures.number(String(value))} sin unidad` : figures.number(`${value} ${unit}`),
  otherRevision: (own, now) =>
    `Viene de otra revisión, o de otros archivos: su contenido es ${own}, aquí es ${now}. Las líneas quizá pidan otra cosa`,
  otherProcedure: (procedure, unit, build) =>
    titled(`${procedure} en ${unit}${build === "" ? "" : `, versión ${build}`}`, "aquí no existe tal procedimiento"),
  noLines: (procedure) => titled(procedure, "el registro no contiene nada de él"),
  unknownLine: (line) => `No hay ninguna línea ${line}`,
  unknownItem: (item) => `En esta línea no se trabaja en ${item}`,
  unknownReading: (reading) => `Esta línea no tiene medida ${reading}`,
  notTicked: (line) => titled("Sin marcar", line),
  countMissing: (name, count) => titled(name, `sin recuento${count === undefined ? "" : `, se esperan ${count}`}`),
  countDiffers: (name, count, due) => titled(name, `contado ${count}, se esperan ${due}`),
  torqueMissing: (name, torque) => titled(name, `ningún par de apriete anotado (${torque})`),
  torqueDiffers: (name, set, torque) => titled(name, `ajuste a ${set}, el procedimiento indica ${torque}`),
  torqueUnit: (name, set) => titled(name, `${set} no se puede comparar con el par de apriete del procedimiento`),
  torqueNotGiven: (name, set) =>
    titled(name, `ajuste a ${set}, el procedimiento no indica ninguna cifra con la que compararlo`),
  readingMissing: (what, text) => titled(what, `sin medida${limits(text)}`),
  readingUnit: (what, figure, unit) => titled(what, `${figure} no se puede comparar con límites en ${unit}`),
  readingOutside: (what, figure, text) => titled(what, `${figure} está fuera de límites${limits(text)}`),
  readingWasOutside: (what, number, figure, text) =>
    titled(what, `en el intento ${number}, ${figure}, fuera de límites${limits(text)}`),
  notAsItShouldBe: (what, number) =>
    titled(what, `no como debe ser${number === undefined ? "" : ` en el intento ${number}`}`),
  noConsequence: "El procedimiento no dice lo que sigue: detenerse y preguntar.",
  notSigned: "Sin firma",
  troubles: {
    sheared: "Cizallado",
    "thread-damaged": "Rosca dañada",
    seized: "Agarrotado",
    broken: "Roto",
    missing: "Falta",
    "wrong-part": "Pieza equivocada",
    other: "Distinto de lo descrito",
  },
  notAsWritten: (what, name, note, done, agreedBy, wanted) =>
    joined(
      [
        name === "" ? what : titled(what, name),
        note,
        done === "" ? "" : titled("hecho", done),
        agreedBy === "" ? "" : titled("acuerdo de", agreedBy),
        wanted === "" ? "" : titled("pedido", wanted),
      ],
      "; ",
    ),
  notAgreed: (what, name) =>
    titled(`${what}${name === "" ? "" : `, ${the(name)}`}`, "nadie ha dado su acuerdo a lo que se hizo"),
  notDone: (what, name) =>
    titled(
      `${what}${name === "" ? "" : `, ${the(name)}`}`,
      "no está anotado ni lo que se hizo ni quién dio su acuerdo",
    ),

  calibrationOverdue: (name, due, on) => titled(name, `vencimiento de la calibración ${due}, uso el ${on}`),
  calibrationFollows:
    "Repetir con un aparato cuya calibración no haya vencido, y preguntar por lo que se midió con este.",
  calibrationNoDay: (name, due) =>
    titled(name, `vencimiento de la calibración ${due}; el registro no da ningún día de medición con que compararla`),
  calibrationNoDate: (name, due) =>
    titled(name, `vencimiento de la calibración «${due}» no es una fecha y no se compara con nada`),
  instrumentUnlisted: (name) =>
    titled(name, "no figura entre los aparatos del registro; no se sabe nada de su calibración"),
  wantedLine: (part, count, thing) =>
    joined(
      [
        `${part}${count === undefined ? "" : `, ${counted(count, "pieza")}`}`,
        thing === "" ? "" : titled("para", thing),
      ],
      ", ",
    ),

  summaryTitle: (count) => `Medidas de ${counted(count, "registro")}`,
  leftOut: (files) => titled("Dejados fuera, por ser de otra revisión", list(files)),
  noReadings: "Los procedimientos no piden ninguna medida.",
  summaryColumns: [
    "Borrador",
    "Procedimiento",
    "Línea",
    "Medida",
    "Límites",
    "Unidad de medida",
    "Valores",
    "Mínimo",
    "Mediana",
    "Máximo",
    "Media",
    "Desviación típica",
    "Fuera de límites",
    "Como debe ser",
    "No como debe ser",
    "Falta",
  ],
  heads: {
    line: "Línea",
    reading: "Medida",
    limits: "Límites",
    unit: "Unidad de medida",
    count: "Valores",
    lowest: "Mínimo",
    median: "Mediana",
    highest: "Máximo",
    mean: "Media",
    deviation: "Desviación típica",
    outside: "Fuera",
    answers: "Como debe ser",
    missing: "Falta",
  },
  spread: (count, lowest, highest, median, unit) =>
    titled(values(count), `de ${lowest} a ${highest} ${unit}, mediana ${median}`),
  meanAndDeviation: (mean, deviation, unit) =>
    `media ${mean} ${unit}${deviation === "" ? "" : `, desviación típica ${deviation}`}`,
  outsideCount: (count) => `${count} fuera de límites`,
  answers: (yes, no) => `${yes} como debe ser, ${no} no`,
  missing: (count) => `${counted(count, "registro")} sin esta medida`,
  limits: (text) => titled("Límites", text),
  atLeast: "al menos",
  atMost: "como máximo",
  plotTitle: (line, what) => `${line} ${what}`,
  plotLegend: (withOutside) =>
    `Cada anillo es una unidad${withOutside ? ", cada cuadrado lleno una unidad fuera de límites" : ""}; la flecha es la mediana.`,
  plotAbout: (count, lowest, highest, median, unit, outside, text) =>
    `${values(count)} de ${lowest} a ${highest} ${unit}, mediana ${median}${text === "" ? "" : `, límites ${text}, ${outside} fuera de límites`}.`,
};
