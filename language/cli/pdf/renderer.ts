// The renderer and its fonts: optional packages, loaded at the first PDF and kept. Where one is missing, everything else works.

import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { NodeCompiler } from "@myriaddreamin/typst-ts-node-compiler";
import { families } from "../../outputs/pdf/pieces.ts";
import { CannotRun } from "../command.ts";
import { charactersOf } from "./coverage.ts";
import { withPrivateName } from "./private-font.ts";

/** As package.json has them: what the line below tells to install. */
export const packages = [
  "@myriaddreamin/typst-ts-node-compiler@0.7.0",
  "@expo-google-fonts/noto-sans@0.4.2",
  "dejavu-fonts-ttf@2.37.3",
] as const;

export const howToGetIt = `a PDF needs packages that are not installed here: npm install ${packages.join(" ")} (the HTML is complete without them)`;

const files: readonly (readonly [file: string, family: string, style: string])[] = [
  ["@expo-google-fonts/noto-sans/400Regular/NotoSans_400Regular.ttf", families[0], "Regular"],
  ["@expo-google-fonts/noto-sans/700Bold/NotoSans_700Bold.ttf", families[0], "Bold"],
  ["@expo-google-fonts/noto-sans/400Regular_Italic/NotoSans_400Regular_Italic.ttf", families[0], "Italic"],
  // Signs that the first lacks: arrows, boxes, at most, at least, diameter.
  ["dejavu-fonts-ttf/ttf/DejaVuSans.ttf", families[1], "Regular"],
];

export interface Renderer {
  /** No file of the machine lies there: all that is read is given from memory. */
  readonly folder: string;
  readonly compiler: NodeCompiler;
  readonly has: (codePoint: number) => boolean;
}

/** The family of a font that the user names. */
export const ownFamily = "Stripdown Own";

const loaded = new Map<string, Promise<Renderer>>();

/**
 * @param font a font file of the machine, for characters that ours do not have.
 * @throws CannotRun, in one line, where a package is missing or the font is none.
 */
export function renderer(font?: string): Promise<Renderer> {
  const had = loaded.get(font ?? "");
  if (had) return had;
  const made = load(createRequire(import.meta.url), font);
  loaded.set(font ?? "", made);
  return made;
}

function ownFont(path: string): Buffer {
  try {
    return withPrivateName(readFileSync(path), ownFamily, "Regular");
  } catch (error) {
    throw new CannotRun(
      error instanceof RangeError
        ? `--font ${path}: it is no TrueType or OpenType font. Name a file that ends in .ttf or .otf; of a collection (.ttc) take one font out`
        : `--font ${path}: there is no such file, or it cannot be read`,
    );
  }
}

/** @param require where packages are looked for: beside this file, if not said. */
export async function load(require: NodeJS.Require = createRequire(import.meta.url), font?: string): Promise<Renderer> {
  const own = font === undefined ? [] : [ownFont(font)];
  let fonts: Buffer[], module: typeof import("@myriaddreamin/typst-ts-node-compiler");
  try {
    fonts = files.map(([file, family, style]) => withPrivateName(readFileSync(require.resolve(file)), family, style));
    // The name is no constant, so that a bundler leaves the import for the first PDF.
    module = require("@myriaddreamin/typst-ts-node-compiler") as typeof module;
  } catch {
    throw new CannotRun(howToGetIt);
  }
  fonts.push(...own);
  const folder = process.platform === "win32" ? "C:\\stripdown-in-memory" : "/stripdown-in-memory",
    known = fonts.map(charactersOf);
  return {
    folder,
    compiler: module.NodeCompiler.create({ workspace: folder, fontArgs: [{ fontBlobs: fonts }] }),
    has: (codePoint) => known.some((all) => all.has(codePoint)),
  };
}
