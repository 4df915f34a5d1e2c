// Manual, sheets and labels as files: made here, written by the client, which alone knows the folder that they go to. The rule what may be
// written over is that of the command line.

import { ErrorCodes, ResponseError } from "vscode-languageserver";
import {
  documentKinds,
  documentNames,
  documentsOf,
  hashOf,
  madeList,
  madeText,
  mayReplace,
  notOurs,
  readMade,
  type DocumentKind,
} from "../../language/index.ts";
import {
  documentNamesRequest,
  documentsRequest,
  type DocumentNamesAnswer,
  type DocumentNamesParams,
  type DocumentsAnswer,
  type DocumentsParams,
} from "../../shared/protocol.ts";
import { readManualSettings } from "../../shared/settings.ts";
import { feature } from "../feature.ts";
import { otherWords, paperOptions, unknownLanguage } from "../papers.ts";

export default feature({
  name: "documents",
  start(session, answer) {
    const { connection } = session;
    const kindsOf = (asked: readonly string[]): DocumentKind[] => documentKinds.filter((kind) => asked.includes(kind));
    connection.onRequest(
      documentNamesRequest,
      answer("The names of the documents", ({ uri, kinds }: DocumentNamesParams): DocumentNamesAnswer | null => {
        const seen = session.see(uri);
        return seen ? { names: documentNames(seen.path, kindsOf(kinds)), list: madeList } : null;
      }),
    );
    connection.onRequest(
      documentsRequest,
      answer(
        "The documents",
        async ({ uri, kinds, there, list, ...asked }: DocumentsParams): Promise<DocumentsAnswer | null> => {
          const looked = session.look(uri);
          if (!looked) return null;
          const { checked, path, project } = looked,
            settings = readManualSettings(asked, session.editor.manual),
            { baseAddress } = project.settings,
            refusal = unknownLanguage(settings),
            words = refusal === undefined ? await otherWords(session, project, checked, path, settings) : refusal;
          // Not written in another language than the one asked for.
          if (typeof words === "string") throw new ResponseError(ErrorCodes.InvalidParams, words);
          const made = documentsOf(
            checked,
            path,
            kindsOf(kinds),
            {
              ...paperOptions(session, project, settings),
              // As on the command line: where it will lie is a setting of the project.
              ...(baseAddress === undefined ? {} : { baseAddress }),
            },
            words,
          );
          if (!made) return null;
          const known = readMade(list),
            files: DocumentsAnswer["files"][number][] = [],
            left: DocumentsAnswer["left"][number][] = [],
            hashes: Record<string, string> = {};
          for (const file of made.files) {
            const old = there[file.name];
            if (old !== undefined && !(await mayReplace(known, file.name, bytesOf(old), file.text))) {
              left.push({ name: file.name, why: notOurs });
              continue;
            }
            files.push(file);
            hashes[file.name] = await hashOf(file.text);
          }
          return {
            files,
            left,
            list: madeText(known, hashes),
            open: made.open,
            pictures: made.pictures,
            says: words ? words.says.split("\n").filter(Boolean) : [],
          };
        },
      ),
    );
  },
});

const bytesOf = (base64: string): Uint8Array => Uint8Array.from(atob(base64), (sign) => sign.codePointAt(0)!);
