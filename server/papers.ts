// How papers are printed for the editor: the settings of the project and of the editor, whom they are for, in which language.

import {
  CannotMake,
  defaultWording,
  inOtherWords,
  wordingFor,
  wordings,
  type Checked,
  type OtherWords,
  type OutputOptions,
} from "../language/index.ts";
import type { ManualSettings } from "../shared/settings.ts";
import type { Project } from "./project.ts";
import type { Session } from "./session.ts";
import { baseName, isBelow } from "./uris.ts";

/** A language that there is no catalogue of, told to whoever set it; undefined where there is one. */
export const unknownLanguage = ({ language }: ManualSettings): string | undefined =>
  language === undefined || wordingFor(language)
    ? undefined
    : `There are no built-in words in the language ${language}: it is one of ${Object.keys(wordings).join(", ")} (setting stripdown.manual.language)`;

export function paperOptions(session: Session, project: Project, asked: ManualSettings): OutputOptions {
  const { folder } = project;
  return {
    ...session.units(project),
    wording: (asked.language === undefined ? undefined : wordingFor(asked.language)) ?? defaultWording,
    reader: asked.reader,
    showPath: (path) => pathIn(folder, path),
  };
}

const pathIn = (folder: string, path: string): string =>
  isBelow(path, folder) ? path.slice(folder.length).replace(/^\//, "") : baseName(path);

/** The authors' texts in the language asked for; undefined where no file beside the sources holds them. As a sentence what is wrong with one. */
export async function otherWords(
  session: Session,
  project: Project,
  checked: Checked,
  path: string,
  { language }: ManualSettings,
): Promise<OtherWords | string | undefined> {
  const { tag } = (language === undefined ? undefined : wordingFor(language)) ?? defaultWording;
  try {
    return await inOtherWords(
      {
        checked: { performances: checked.performances.filter(({ procedure }) => procedure.at.file === path) },
        trees: project.treesOf(checked),
        world: project.world,
        roots: [path],
        settings: project.settings,
        show: (one) => pathIn(project.folder, one),
        // Nothing outside of the folder is read, whatever link leads there; what was written by another program a moment ago is.
        read: (one) => (project.world.inside(one) ? session.files.read(one) : { problem: "missing" }),
      },
      language,
      tag,
    );
  } catch (error) {
    if (error instanceof CannotMake) return error.message;
    throw error;
  }
}
