// Palabras del libro de montaje que alimenta un registro. Dicen lo que se anotó y no dan nada por bueno.

import type { Wording } from "../wording.ts";

export const refitBook: Wording["refitBook"] = {
  title: (procedure, serial) => `Libro de montaje: ${procedure}${serial === "" ? "" : `, número de serie ${serial}`}`,
  sections: { recorded: "Lo que dice el registro", closing: "Lista de cierre" },
  file: "Registro",
  lead: [
    "Este libro contiene el montaje de una sola unidad y, en las líneas que toca, lo que su registro dice del desmontaje.",
    "Toda verificación del registro ha caducado. Repetirla antes de la línea que la necesita.",
    "Lo que el registro no dice no se sabe. Mirar antes de seguir.",
  ],
  whole: "Para todo el montaje",
  at: (line, says) => `Registro, línea ${line}: ${says}`,
  reading: (what, figure, limits, outside) =>
    `${what}: ${figure}${outside ? ", fuera de límites" : ""}${limits === "" ? "" : ` (${limits})`}`,
  notTicked: "Sin marcar: mirar si se hizo.",
  chosen: (what, chosen) => `${what}, elección: ${chosen}`,
  notChosen: (what) => `${what}: lo que se eligió no está anotado`,
  ticked: "El registro tiene marcada esta línea.",

  closingNote:
    "Todo lo que el registro deja abierto. Una línea sigue abierta hasta que la firma alguien que puede hacerlo.",
  nothing: "El registro no deja nada abierto. Solo se lee el registro; de la máquina no dice nada.",
  left: "Lo que está abierto",
  wanted: "Piezas pedidas",
  agreed: "Distinto de lo descrito, y nadie ha dado su acuerdo",
  outside: "Valores fuera de límites, y lo que no es como debe ser",
  temporary: "Elementos provisionales y tapones puestos en el desmontaje",
  ticks: "Casillas sin marcar en el desmontaje",
  other: "Lo demás que falta o difiere",
  capped: (what) => `Tapón en: ${what}`,
  comesOff: (what, line) => `${what}: se quita en la línea ${line}`,
  staysOn: (what) => `${what}: ninguna línea del montaje lo quita`,
};
