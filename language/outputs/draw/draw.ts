// The outputs "strip diagram", "tightening patterns" and "ways of the fluids": plain values, SVG, and a page to print. Each set of
// drawings can also be had alone, for the manual.

import type { Performance } from "../../bench/trace.ts";
import type { Model } from "../../model/model.ts";
import { provenanceOf, type Provenance } from "../draft.ts";
import { linesOf, type Lines } from "../lines/groups.ts";
import { output, type Output, type OutputInput, type OutputOptions } from "../output.ts";
import { headLines, htmlPage, pageHead } from "../page.ts";
import { asJson } from "../text/json.ts";
import { html } from "../text/markup.ts";
import { torqueData, type TorqueData } from "../torque-data.ts";
import { svg, svgFile, type Drawing } from "./drawing.ts";
import { pathDrawing } from "./path.ts";
import { patternDrawing } from "./pattern.ts";
import { placesOf, turnsOf } from "./places.ts";
import { stripDrawings } from "./strip.ts";
import { stripNodes, type StripNode } from "./strip-graph.ts";

interface DrawData<Row> {
  readonly format: "stripdown-drawing";
  readonly version: 1;
  readonly of: "strip" | "pattern" | "path";
  readonly provenance: Provenance;
  readonly items: readonly Row[];
  /** For the formats that show them: not part of the JSON. */
  readonly drawings: readonly Drawing[];
}

export interface StripItem {
  readonly procedure: string;
  readonly title: string;
  readonly unit: string;
  readonly build: string;
  readonly nodes: readonly StripNode[];
}

export interface PatternItem {
  readonly unit: string;
  readonly fastener: string;
  readonly name: string;
  readonly count: number;
  /** Middles in millimetres, x to the right, y down, as they are counted. */
  readonly places: readonly { readonly x: number; readonly y: number }[];
  /** For each turn the number of the fastener, from 1; empty where the author gives no order that can be numbered. */
  readonly order: readonly number[];
  readonly torque?: TorqueData;
}

export interface PathItem {
  readonly unit: string;
  readonly fluid: string;
  readonly name: string;
  readonly parts: readonly string[];
}

/** @param prefix of the ids, unique in the document that shows them. */
export const stripOf = (performance: Performance, lines: Lines, prefix = "strip"): readonly Drawing[] => {
  const { wording } = lines.context;
  return stripDrawings(
    stripNodes(performance, lines),
    {
      id: prefix,
      title: wording.draw.of(
        performance.procedure.title || performance.procedure.id,
        performance.model.title || performance.model.unit,
      ),
    },
    wording,
  );
};

export const patternsOf = (model: Model, options: OutputOptions, prefix = "pattern"): readonly Drawing[] =>
  model.ties.flatMap((tie, i) =>
    tie.fastener ? (patternDrawing(tie, `${prefix}-${i + 1}`, tie.name, options) ?? []) : [],
  );

export const pathsOf = (model: Model, options: OutputOptions, prefix = "path"): readonly Drawing[] =>
  model.fluids.flatMap(
    (fluid, i) => pathDrawing(model, fluid, `${prefix}-${i + 1}`, fluid.name, options.wording) ?? [],
  );

const tenth = (metres: number): number => Number((metres * 1000).toFixed(3)) + 0;

export const stripDiagram = drawingOutput<StripItem>("strip", (input, options) => {
  const all = input.performances.map((performance) => ({ performance, lines: linesOf(performance, options) }));
  return {
    drawings: all.flatMap(({ performance, lines }, i) => stripOf(performance, lines, `strip-${i + 1}`)),
    items: all.map(({ performance, lines }) => ({
      procedure: performance.procedure.id,
      title: performance.procedure.title,
      unit: performance.model.unit,
      build: performance.model.build,
      nodes: stripNodes(performance, lines),
    })),
  };
});

export const patternDrawings = drawingOutput<PatternItem>("pattern", (input, options) => {
  const models = modelsOf(input);
  return {
    drawings: models.flatMap((model, i) => patternsOf(model, options, `pattern-${i + 1}`)),
    items: models.flatMap((model) =>
      model.ties.flatMap((tie): PatternItem[] => {
        const places = tie.fastener ? placesOf(tie) : undefined,
          torque = torqueData(tie, options);
        return places
          ? [
              {
                unit: model.unit,
                fastener: tie.id,
                name: tie.name,
                count: tie.count,
                places: places.map(({ x, y }) => ({ x: tenth(x), y: tenth(y) })),
                order: turnsOf(tie),
                ...(torque ? { torque } : {}),
              },
            ]
          : [];
      }),
    ),
  };
});

export const pathDrawings = drawingOutput<PathItem>("path", (input, options) => {
  const models = modelsOf(input);
  return {
    drawings: models.flatMap((model, i) => pathsOf(model, options, `path-${i + 1}`)),
    items: models.flatMap((model) =>
      model.fluids
        .filter(({ path }) => path.length > 0)
        .map((fluid): PathItem => ({
          unit: model.unit,
          fluid: fluid.id,
          name: fluid.name,
          parts: fluid.path.map((thing) => model.things[thing]!.id),
        })),
    ),
  };
});

/** Each unit once in each build. */
const modelsOf = ({ performances }: OutputInput): Model[] => {
  const found = new Map<string, Model>();
  for (const { model } of performances)
    if (!found.has(`${model.unit}\n${model.build}`)) found.set(`${model.unit}\n${model.build}`, model);
  return [...found.values()];
};

function drawingOutput<Row>(
  of: DrawData<Row>["of"],
  make: (input: OutputInput, options: OutputOptions) => Pick<DrawData<Row>, "items" | "drawings">,
): Output<DrawData<Row>> {
  const titleOf = ({ wording }: OutputOptions): string => wording.draw.titles[of];
  // An arrow is easily taken for an instruction: the drawing says what it is.
  const about = ({ wording }: OutputOptions): readonly string[] => (of === "strip" ? [wording.draw.stripAbout] : []);
  return output<DrawData<Row>>({
    name: `draw ${of}`,
    title: { strip: "Strip diagram", pattern: "Tightening patterns", path: "Ways of the fluids" }[of],
    data: (input, options) => {
      const { items, drawings } = make(input, options);
      return {
        format: "stripdown-drawing",
        version: 1,
        of,
        provenance: provenanceOf(input),
        items,
        drawings: options.sheet === undefined ? drawings : drawings.slice(options.sheet - 1, options.sheet),
      };
    },
    sheets: (input, options) => make(input, options).drawings.length,
    formats: {
      svg: {
        extension: "svg",
        title: "Drawings, one under the other",
        write: ({ provenance, drawings }, options) =>
          svgFile(
            { title: titleOf(options), lines: [...headLines(provenance, options), ...about(options)] },
            drawings,
            options.wording.draw.nothing[of],
          ),
      },
      html: {
        extension: "html",
        title: "Drawings to print, a sheet each",
        write: ({ provenance, drawings }, options) =>
          htmlPage(
            {
              title: titleOf(options),
              style:
                ".sheet{break-after:page}.sheet:last-child{break-after:auto}@media print{.sheet svg{max-height:235mm}}",
              body: html`${pageHead(titleOf(options), provenance, options)}<main>${about(options).map((says) => html`<p>${says}</p>`)}
${drawings.length === 0 && html`<p>${options.wording.draw.nothing[of]}</p>`}${drawings.map(
                (drawing) => html`<section class="sheet"><h2>${drawing.title}</h2>
<div class="scroll" role="group" tabindex="0" aria-label="${drawing.title}">${svg(drawing)}</div></section>
`,
              )}</main>`,
            },
            provenance,
            options,
          ),
      },
      json: {
        extension: "json",
        title: "What the drawings show, for programs",
        write: ({ drawings: _, ...data }) => asJson(data),
      },
    },
  });
}
