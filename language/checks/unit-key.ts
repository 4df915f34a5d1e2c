// What tells one unit from another where findings are put together: two files that do not use each other may each have a unit "pump".

import type { Model } from "../model/model.ts";

export const unitKey = ({ at, unit }: Pick<Model, "at" | "unit">): string => `${at.file} ${unit}`;
