// Figures that nobody gave, and what each would let the tool check. Never a finding: real manuals seldom print a mass or a thread.

import type { MissingFigure, UnitUnknowns } from "../findings/surveyed.ts";
import type { Model, Thing } from "../model/model.ts";
import { fastenerKinds, kindIn } from "../tables/index.ts";

/** Of a unit, whose builds may have different things: what is missing in any of them. */
export function unknownsOfUnit(models: readonly Model[]): UnitUnknowns | undefined {
  const [model] = models;
  if (!model) return undefined;
  const byFigure = new Map<string, { wouldCheck: string; of: Map<string, string> }>();
  for (const { figure, wouldCheck, of } of models.flatMap(missingIn)) {
    let found = byFigure.get(figure);
    if (!found) byFigure.set(figure, (found = { wouldCheck, of: new Map() }));
    for (const thing of of) found.of.set(thing.id, thing.name);
  }
  const figures = [...byFigure].map(([figure, { wouldCheck, of }]): MissingFigure => ({
    figure,
    of: [...of.values()],
    wouldCheck,
  }));
  return { unit: model.unit, title: model.title, file: model.at.file, figures };
}

interface Missing {
  readonly figure: string;
  readonly wouldCheck: string;
  readonly of: readonly Thing[];
}

function missingIn(model: Model): readonly Missing[] {
  const fasteners = model.ties.filter((tie) => tie.fastener && kindIn(fastenerKinds, tie.kind)?.turned === true);
  // A charge is waited for by the longest of three times, two of which are reckoned from these.
  const charged = model.hazards.filter(
    ({ source, figures }) => source === "capacitor" || figures.has("capacitance") || figures.has("bleeder"),
  );
  const all: Missing[] = [
    {
      figure: "mass",
      wouldCheck: "lifts, hoists and what may fall",
      of: model.parts.filter((part) => part.mass === undefined),
    },
    {
      figure: "thread size",
      wouldCheck: "the spanner, the torque and the length",
      of: fasteners.filter((tie) => !tie.size),
    },
    {
      figure: "strength class",
      wouldCheck: "the torque against the yield of the thread",
      of: fasteners.filter((tie) => tie.size && tie.propertyClass === undefined && tie.grade === undefined),
    },
    {
      figure: "torque",
      wouldCheck: "the torque against thread and wrench",
      of: fasteners.filter((tie) => tie.torques.length === 0 && tie.stages.length === 0),
    },
    ...["voltage", "capacitance", "bleeder"].map((figure) => ({
      figure,
      wouldCheck: "the wait for the charge",
      of: charged.filter(({ figures }) => !figures.has(figure)),
    })),
  ];
  return all.filter(({ of }) => of.length > 0);
}
