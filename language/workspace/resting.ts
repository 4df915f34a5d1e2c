// What a procedure does, put aside: of a file that nobody has open little more is asked than what was found in it.

import { performProcedure } from "../bench/perform-procedure.ts";
import type { Performance } from "../bench/trace.ts";

/** The same performance, performed again when somebody asks for what came of it, and then held. Model and procedure are there at once. */
export function resting(performance: Performance): Performance {
  const { model, procedure } = performance,
    aside = { model, procedure };
  let again: Performance | undefined;
  for (const key of Object.keys(performance) as (keyof Performance)[])
    if (key !== "model" && key !== "procedure")
      Object.defineProperty(aside, key, {
        get: () => (again ??= performProcedure(model, procedure.id))[key],
        enumerable: true, // copies of it are whole
      });
  return aside as Performance;
}
