// Lo que unas instrucciones contienen junto al trabajo: quién responde, para qué es la máquina, incidentes, residuos, glosario.

import type { Wording } from "../wording.ts";

export const instructions: Wording["instructions"] = {
  language: "Idioma",
  languageName: "Español",
  original: "instrucciones originales",
  translated: (from) => `traducción de: ${from}`,
  notSaid: "el autor no dice si es original o traducción",
  maker: "Fabricante de la unidad",
  serials: "Números de serie",
  author: "Autor",
  prepared: "Elaborado por",
  checked: "Revisado por",
  approved: "Firma de aprobación",
  signed: (who, when) => `${who}, ${when}`,
  otherRevision: (who, when, revision) =>
    `${who}, ${when}, para ${revision === undefined ? "ninguna revisión" : `la revisión ${revision}`}: no para la que dio lugar a esto`,
  notSigned: "sin firma",

  sections: {
    purpose: "Para qué es la máquina",
    diagram: "Orden de desmontaje",
    mishaps: "En caso de incidente o accidente",
    waste: "Residuos",
    glossary: "Palabras, símbolos y unidades",
    index: "Índice alfabético",
  },
  intended: "Uso previsto",
  wrong: "Mal uso previsible",
  intendedNotGiven: "El autor no dice para qué es la máquina. Buscarlo en los datos del fabricante antes de empezar.",
  mishap: "Qué ocurre",
  mishapThen: "Qué hacer",
  mishapAlways: [
    "Antes de empezar, saber a quién se llama, dónde está la salida y dónde están el botiquín y el extintor.",
    "Si alguien se lesiona: cuidar de no lesionarse uno mismo, pedir ayuda y después dar los primeros auxilios como se enseñó.",
    "Si el trabajo se detiene antes del final: dejar candados, etiquetas y delimitaciones donde están, y anotar qué está suelto, qué cuelga y qué está abierto.",
  ],
  mishapsNotGiven:
    "El autor no nombra ningún incidente posible. Pensarlo uno mismo: atasco, derrame, incendio, una pieza que cae o se agarrota.",
  term: "Palabra",
  means: "Significado",
  terms: [
    [
      "Línea",
      "Una acción con su casilla, numerada en su paso: 3.2. R delante del número: en el montaje. F: pruebas finales.",
    ],
    [
      "Montaje",
      "El camino inverso, tal como resulta del desmontaje: lo último que se desmontó se monta primero, salvo que otra cosa venga antes.",
    ],
    [
      "Precaución",
      "Una acción que protege a una persona de un peligro. Cuenta desde que se marca hasta que se levanta o caduca.",
    ],
    [
      "Verificación",
      "Una precaución que muestra con una medida o un intento que la anterior ha tenido efecto. Caduca tras una interrupción.",
    ],
    ["Pasada", "Un recorrido por todos los elementos de fijación de un grupo en su orden."],
    ["Orden", "El número de un elemento de fijación es su turno al apretar."],
    ["Medida", "Una cifra o una respuesta que se anota, con sus límites y lo que hay que hacer fuera de límites."],
    ["Distinto de lo descrito", "Todo lo que en la máquina no es como dice la línea. Detenerse, preguntar, anotar."],
    ["Como se encontró", "La medida antes de ajustar nada."],
    ["Punto de espera", "El trabajo se detiene allí hasta que la persona nombrada lo libera."],
    ["N·m, lbf·ft", "Par de apriete: newton metro y libra-fuerza pie"],
    ["mm, in", "Longitud: milímetro y pulgada"],
    ["kg, lb", "Masa: kilogramo y libra"],
    ["L, US qt", "Volumen: litro y cuarto de galón de EE. UU."],
    ["V CC, V CA", "Tensión continua y alterna: nunca se comparan entre sí"],
    ["°C, °F", "Temperatura"],
  ],
};
