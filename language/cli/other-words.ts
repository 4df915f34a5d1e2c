// The authors' texts in another language, from the disk; what is amiss with a file of them ends the command with its reason.

import { CannotMake } from "../outputs/output.ts";
import type { Translations } from "../outputs/texts/translations.ts";
import * as of from "../workspace/other-words.ts";
import { CannotRun } from "./command.ts";
import { readText } from "./files.ts";
import type { ProjectRun } from "./project-run.ts";

/** The texts beside a source in a language; undefined where there are none. Throws CannotRun for a file that cannot be read. */
export const translationsBeside = (
  source: string,
  lang: string,
  show: (path: string) => string,
): Promise<Translations | undefined> => refused(of.translationsBeside({ read: readText, show }, source, lang));

/** Undefined where no language is asked for, or no file beside the sources holds it. `asked` comes before the catalogue's own tag. */
export const inOtherWords = (
  project: ProjectRun,
  asked: string | undefined,
  tag: string,
): Promise<of.OtherWords | undefined> => refused(of.inOtherWords({ ...project, read: readText }, asked, tag));

const refused = <T>(made: Promise<T>): Promise<T> =>
  made.catch((error: unknown) => {
    throw error instanceof CannotMake ? new CannotRun(error.message) : error;
  });
