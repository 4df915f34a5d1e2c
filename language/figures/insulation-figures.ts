// Figures on voltage classes, insulation and gloves, for a person who plans a reading or looks one up.

import {
  argument,
  plain,
  quantityIn,
  result,
  step,
  textIn,
  type Figure,
  type FigureError,
  type FigureInputs,
  wordIn,
} from "./figure.ts";
import { hazardFigure, highest, lowest, shown, writtenKind } from "./hazard-figure.ts";
import { GLOVE_CLASSES, GLOVE_RETEST, gloveClass } from "./insulating-gloves.ts";
import {
  ISOLATION_PER_VOLT,
  POLARISATION_INDEX_MINIMUM,
  POLARISATION_INDEX_VALID_TO,
  installationInsulation,
  isolationMinimum,
  polarisationIndex,
  windingMinimum,
  windingTestVoltage,
  insulationClasses,
  isolationKinds,
  windingKinds,
} from "./insulation-resistance.ts";
import { VOLTAGE_CLASS_LIMITS, crestVoltage, voltageClass, type SupplyKind } from "./voltage-limits.ts";

const kindDue = argument("voltage", "voltage", "working voltage, as V dc or V ac");

/** The kind of a voltage that must say it, or the error that asks for it. */
function kindOf(inputs: FigureInputs): SupplyKind | FigureError {
  const quantity = quantityIn(inputs, "voltage")!;
  return (
    writtenKind(quantity) ?? {
      says: `voltage: say whether ${quantity.written} is direct or alternating`,
      nearest: [`${quantity.high} V dc`, `${quantity.high} V ac`],
    }
  );
}

/** Voltage class of a circuit. */
export const voltageClassFigure: Figure = hazardFigure({
  name: "voltage-class",
  title: "Voltage class",
  topic: "electrical",
  arguments: [kindDue],
  validity:
    "vehicles and machines by ISO 6469 and UN R100; other rules draw other lines (IEC extra-low voltage: 50 V ac, 120 V dc)",
  source:
    "ISO 6469-4:2015 and 49 CFR 571.305: A up to 60 V dc or 30 V ac rms, B above (read); 1500 V dc and 1000 V ac from memory",
  examples: ["48 V ac", "350 V dc"],
  answer(inputs) {
    const kind = kindOf(inputs);
    if (typeof kind !== "string") return kind;
    const volts = highest(inputs, "voltage");
    const found = voltageClass(volts, kind);
    const limit = VOLTAGE_CLASS_LIMITS.a[kind];
    const steps = [
      step(
        volts > limit
          ? `${shown(volts)} V ${kind} is over ${limit} V ${kind}`
          : `The limit of class A is ${limit} V ${kind}`,
      ),
    ];
    if (kind === "ac")
      steps.push(step(`A capacitor behind a rectifier charges to the crest, ${shown(crestVoltage(volts, "ac"))} V`));
    return {
      values: [
        plain("voltage class", found === "beyond" ? "beyond class B" : found),
        result("crest", crestVoltage(volts, kind), "V"),
      ],
      formula: "class by table; crest = V sqrt(2) for ac",
      steps,
    };
  },
});

/** Least isolation resistance of a high-voltage circuit. */
export const isolation: Figure = hazardFigure({
  name: "isolation",
  title: "Least isolation resistance",
  topic: "electrical",
  arguments: [
    argument("voltage", "voltage", "highest working voltage"),
    argument("circuit", "word", "dc, ac, or combined where a converter joins the two", {
      words: isolationKinds,
      optional: true,
      default: "as the voltage says",
    }),
    argument("protection", "word", "double where a combined circuit has double or robust protection", {
      words: ["single", "double"],
      optional: true,
      default: "single",
    }),
  ],
  validity: "high-voltage circuits of vehicles against the chassis, at the highest working voltage",
  source: "UN R100 cl. 5.1.3 as quoted; ISO 6469-4:2015 extract (read)",
  examples: ["350 V dc", "350 V combined"],
  answer(inputs) {
    const circuit = wordIn(inputs, "circuit", isolationKinds) ?? kindOf(inputs);
    if (typeof circuit !== "string")
      return { says: "isolation: say whether the circuit is dc, ac or combined", nearest: isolationKinds };
    const double = textIn(inputs, "protection") === "double";
    const volts = highest(inputs, "voltage");
    const perVolt =
      circuit === "combined" && double ? ISOLATION_PER_VOLT.combinedDoublyProtected : ISOLATION_PER_VOLT[circuit];
    const least = isolationMinimum(volts, circuit, double);
    return {
      values: [result("resistance at least", least, "kohm")],
      formula: "R = r U, r 100 Ω/V dc, 500 Ω/V ac or combined",
      steps: [step(`${perVolt} Ω/V x ${shown(volts)} V = ${shown(least / 1000)} kΩ`)],
    };
  },
});

/** Insulation test of an installation. */
export const insulationTest: Figure = hazardFigure({
  name: "insulation-test",
  title: "Insulation test of an installation",
  topic: "electrical",
  arguments: [
    argument("voltage", "voltage", "nominal voltage of the circuit"),
    argument("supply", "word", "extra-low for SELV and PELV circuits", {
      words: ["ordinary", "extra-low"],
      optional: true,
      default: "ordinary",
    }),
  ],
  validity: "isolated circuits with the electronics disconnected",
  source: "IEC 60364-6 table as printed by a railway authority (read)",
  examples: ["350 V", "24 V extra-low"],
  answer(inputs) {
    const row = installationInsulation(highest(inputs, "voltage"), textIn(inputs, "supply") === "extra-low");
    return {
      values: [result("resistance at least", row.minimum, "Mohm"), result("test voltage", row.testVoltage, "V dc")],
      formula: "row of the table",
      steps: [step(`The row tests at ${row.testVoltage} V dc and asks for ${shown(row.minimum / 1e6)} MΩ`)],
    };
  },
});

/** Least insulation resistance of a machine winding. */
export const winding: Figure = hazardFigure({
  name: "winding",
  title: "Least insulation resistance of a winding",
  topic: "electrical",
  arguments: [
    argument("voltage", "voltage", "rated voltage, line to line"),
    argument("winding", "word", "kind of winding", { words: windingKinds }),
  ],
  validity: "after one minute, corrected to 40 °C",
  source: "IEEE 43 through a field testing page and a tester's guide (read)",
  examples: ["480 V before-1970"],
  answer(inputs) {
    const volts = highest(inputs, "voltage");
    const kind = wordIn(inputs, "winding", windingKinds)!;
    const least = windingMinimum(volts, kind);
    const test = windingTestVoltage(volts);
    return {
      values: [
        result("resistance at least", least, "Mohm"),
        plain("test voltage", test.least === test.most ? test.least : `${test.least} to ${test.most}`, "V dc"),
      ],
      formula: kind === "before-1970" ? "R = (U/kV + 1) MΩ" : "row of the table",
      steps: [
        step(
          kind === "before-1970"
            ? `${shown(volts / 1000)} + 1 = ${shown(least / 1e6)} MΩ`
            : `The row asks for ${shown(least / 1e6)} MΩ`,
        ),
      ],
    };
  },
});

/** Polarisation index of two readings. */
export const polarisation: Figure = hazardFigure({
  name: "polarisation-index",
  title: "Polarisation index",
  topic: "electrical",
  arguments: [
    argument("one-minute", "resistance", "reading after one minute"),
    argument("ten-minutes", "resistance", "reading after ten minutes"),
    argument("class", "word", "thermal class of the insulation", {
      words: insulationClasses,
      optional: true,
      default: "no comparison",
    }),
  ],
  validity: "says nothing where the one-minute reading is above 5000 MΩ",
  source: "IEEE 43 through two pages (read): least 1.5 for class A, 2.0 for B, F and H",
  examples: ["210 Mohm 630 Mohm F"],
  answer(inputs) {
    const [r1, r10] = [lowest(inputs, "one-minute"), lowest(inputs, "ten-minutes")];
    const index = polarisationIndex(r1, r10);
    const insulation = wordIn(inputs, "class", insulationClasses);
    const steps = [step(`${shown(r10 / 1e6)} MΩ / ${shown(r1 / 1e6)} MΩ = ${shown(index)}`)];
    if (r1 > POLARISATION_INDEX_VALID_TO)
      steps.push(step("The one-minute reading is above 5000 MΩ: the index says nothing"));
    if (insulation !== undefined && index < POLARISATION_INDEX_MINIMUM[insulation]) {
      steps.push(step(`Below the least index of class ${insulation}, ${POLARISATION_INDEX_MINIMUM[insulation]}`));
    }
    return { values: [plain("polarisation index", index)], formula: "PI = R(10 min) / R(1 min)", steps };
  },
});

/** Lowest class of insulating gloves for a voltage. */
export const gloves: Figure = hazardFigure({
  name: "gloves",
  title: "Class of insulating gloves",
  topic: "electrical",
  arguments: [kindDue],
  validity: "rubber insulating gloves under leather over-gloves; a class is no permission to work live",
  source: "ASTM D120 / IEC 60903 table through three pages (read)",
  examples: ["750 V dc"],
  answer(inputs) {
    const kind = kindOf(inputs);
    if (typeof kind !== "string") return kind;
    const volts = highest(inputs, "voltage");
    const found = gloveClass(volts, kind);
    const top = GLOVE_CLASSES.at(-1)!;
    if (found === undefined) {
      return {
        says: `gloves: ${shown(volts)} V ${kind} is above the table, which ends at ${top[kind]} V ${kind} with class ${top.name}`,
      };
    }
    return {
      values: [
        plain("class at least", found.name),
        result("greatest use voltage", found[kind], "V"),
        result("proof voltage ac", found.proofAc, "V"),
        plain("label", found.label),
      ],
      formula: "lowest class whose use voltage is not exceeded",
      steps: [
        step(`Class ${found.name} is made for up to ${found[kind]} V ${kind}`),
        step(`Retest every ${GLOVE_RETEST.everyMonths} months; air test and look before each use`),
      ],
    };
  },
});
