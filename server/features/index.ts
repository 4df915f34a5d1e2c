// Every feature of the server, one line each, sorted by name.

import type { Feature } from "../feature.ts";
import calls from "./calls.ts";
import checkFolder from "./check-folder.ts";
import codeActions from "./code-actions.ts";
import completion from "./completion.ts";
import diagnostics from "./diagnostics.ts";
import documents from "./documents.ts";
import fileRenames from "./file-renames.ts";
import folding from "./folding.ts";
import formatting from "./formatting.ts";
import hints from "./hints.ts";
import hover from "./hover.ts";
import lenses from "./lenses.ts";
import links from "./links.ts";
import names from "./names.ts";
import outline from "./outline.ts";
import pages from "./pages.ts";
import rename from "./rename.ts";
import signature from "./signature.ts";
import tokens from "./tokens.ts";
import views from "./views.ts";

export const features: readonly Feature[] = [
  calls,
  checkFolder,
  codeActions,
  completion,
  diagnostics,
  documents,
  fileRenames,
  folding,
  formatting,
  hints,
  hover,
  lenses,
  links,
  names,
  outline,
  pages,
  rename,
  signature,
  tokens,
  views,
];
