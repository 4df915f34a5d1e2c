// Pictures and recordings that a file names, with where they lie.

import type { Span } from "../findings/finding.ts";
import type { SourceFile } from "../names/project.ts";
import { textOf } from "../names/strings.ts";
import type { World } from "../world/world.ts";
import { itemsWith } from "./items-of.ts";

export interface MediaSaid {
  readonly written: string;
  readonly what: "picture" | "recording";
  readonly path: string;
  readonly inside: boolean;
  readonly at: Span;
}

const address = /^[a-z][a-z0-9+.-]+:/i;

export function mediaIn(file: SourceFile, world: World): MediaSaid[] {
  const found: MediaSaid[] = [],
    { tokens } = file.tree.scan;
  for (const item of [...itemsWith(file, "photo"), ...itemsWith(file, "video")]) {
    const argument = item.arguments[0];
    if (item.broken || argument?.slot !== "string") continue;
    const token = tokens[argument.first]!,
      written = textOf(token),
      isAddress = address.test(written),
      path = isAddress ? written : world.resolve(file.path, written);
    found.push({
      written,
      what: item.entry!.word === "photo" ? "picture" : "recording",
      path,
      inside: !isAddress && world.inside(path),
      at: { file: file.path, start: token.startOffset, end: token.endOffset! + 1 },
    });
  }
  return found;
}
