// The frame of a hazard that has to be declared: kind and place. Its words, figures, waits and precautions are the author's alone.

import type { Fix } from "../findings/finding.ts";
import type { Thing } from "../model/model.ts";
import type { SourceFile } from "../names/project.ts";
import { hazardKinds, kindIn } from "../tables/index.ts";
import { unitNames } from "./space-of-names.ts";

/** Inserted at the end of the unit that declares the thing, with the cursor between the quotes of its name. */
export function hazardSkeleton(file: SourceFile | undefined, thing: Thing, kind: string): Fix[] {
  const unit = file?.declarations.find(
    ({ word, item }) => word === "unit" && item.block && unitNames(file, item).things.has(thing.declared),
  );
  const close = unit?.item.block && file!.tree.scan.tokens[unit.item.block.last];
  if (!file || !unit || !close || close.invented || close.text !== "}") return [];
  const taken = unitNames(file, unit.item).things;
  let id = `${thing.declared}-${kind}`;
  for (let n = 2; taken.has(id); n++) id = `${thing.declared}-${kind}-${n}`;
  const lineStart = file.text.lastIndexOf("\n", close.startOffset - 1) + 1,
    ownLine = /^\s*$/.test(file.text.slice(lineStart, close.startOffset));
  const indent = ownLine ? file.text.slice(lineStart, close.startOffset) : "",
    at = ownLine ? lineStart : close.startOffset;
  const before = ownLine ? "" : "\n",
    head = `${before}${indent}  hazard ${id} ${kind} "`;
  const text = `${head}" {\n${indent}    on ${thing.declared}\n${indent}  }\n`;
  return [
    {
      title: `Declare the hazard "${kindIn(hazardKinds, kind)?.title ?? kind}" at ${thing.name}: its words, figures and precautions are yours to write`,
      certain: false,
      edits: [{ file: file.path, start: at, end: at, text }],
      cursor: at + head.length,
    },
  ];
}
