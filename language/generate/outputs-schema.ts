// The JSON Schemas of what `refit`, `bill` and `export` print as JSON, each made from its one description.

import { z } from "zod";
import { billSchema } from "../outputs/bill/schema.ts";
import { exportSchema } from "../outputs/export/schema.ts";
import { refitSchema } from "../outputs/refit/schema.ts";

const schemas: readonly (readonly [name: string, title: string, shape: z.ZodType])[] = [
  ["refit", "Strip and refit of stripdown refit --json", refitSchema], ["bill", "Consumables and spares of stripdown bill --json", billSchema], ["model", "The whole model of stripdown export", exportSchema],
];

export function generate(): readonly { readonly path: string; readonly text: string }[] {
  return schemas.map(([name, title, shape]) => {
    const { $schema, ...body } = z.toJSONSchema(shape, { target: "draft-2020-12", reused: "ref" });
    return { path: `language/schemas/${name}.schema.json`, text: `${JSON.stringify({ $schema, title, ...body }, null, 2)}\n` };
  });
}
