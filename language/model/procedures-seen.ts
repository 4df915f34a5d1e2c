// The procedures that a file sees, read once a project.

import type { Project, SourceFile } from "../names/project.ts";
import { kept } from "./kept.ts";
import type { Procedure } from "./model.ts";
import { readProcedure } from "./read-procedure.ts";

const procedures = kept<Project, Map<string, ReadonlyMap<string, Procedure>>>();

/** Every procedure that a file sees, by id; the nearest where two have one id. */
export function proceduresSeen(project: Project, file: string): ReadonlyMap<string, Procedure> {
  const byFile = procedures(project, () => new Map());
  const had = byFile.get(file);
  if (had) return had;
  const seen = new Map<string, Procedure>();
  for (const list of project.seen(file).values()) {
    const declaration = list.find((d) => d.word === "procedure"),
      source: SourceFile | undefined = declaration && project.files.get(declaration.file);
    if (declaration && source) seen.set(declaration.id, readProcedure(declaration, source));
  }
  byFile.set(file, seen);
  return seen;
}
