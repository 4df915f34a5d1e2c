// What a server knows while it runs: client, documents, projects. Features ask it and never each other.

import type {
  ClientCapabilities,
  Connection,
  Location,
  Position,
  Range,
  TextEdit as LspEdit,
  WorkspaceEdit,
} from "vscode-languageserver";
import {
  defaultWording,
  type Acted,
  type Checked,
  type Lines,
  type OutputOptions,
  type SourceFile,
  type Span,
  type TextEdit,
  linesOf,
} from "../language/index.ts";
import type { Point, Spot, StartOptions } from "../shared/protocol.ts";
import { defaultEditorSettings, type EditorSettings } from "../shared/settings.ts";
import { toOffset, toPosition, type Document, type Encoding } from "./documents.ts";
import type { Files } from "./files.ts";
import { newProject, type Project } from "./project.ts";
import { folderOf, isBelow, uriOf } from "./uris.ts";

/** What places are told by: the texts. */
export type WithTexts = Pick<Checked, "project">;
/** A file as a request finds it: its project, its tree, its names. */
export interface Seen {
  readonly path: string;
  readonly project: Project;
  readonly checked: WithTexts;
  readonly file: SourceFile;
}
/** The same with what the procedures do. */
export interface Acting extends Seen {
  readonly checked: Acted;
}
/** The same with what was found. */
export interface Looked extends Seen {
  readonly checked: Checked;
}

export interface Session {
  readonly connection: Connection;
  readonly files: Files;
  /** By path. */
  readonly documents: Map<string, Document>;
  client: ClientCapabilities;
  start: StartOptions;
  /** The client takes its leave: nothing is told any more. */
  ended: boolean;
  encoding: Encoding;
  editor: EditorSettings;
  readonly projects: () => readonly Project[];
  setFolders(folders: readonly string[]): void;
  readonly folders: () => readonly string[];
  projectOf(path: string): Project;
  /** Undefined for a document that is none of ours. */
  look(uri: string): Looked | undefined;
  /** Its text and names alone, nothing performed; with `all`, those of every file of the folder beside it. */
  see(uri: string, all?: boolean): Seen | undefined;
  /** As much as `look` finds, nothing performed. */
  seeBest(uri: string): Seen | undefined;
  /** As much, performed when it is asked what the procedures do; nothing judged. */
  watch(uri: string): Acting | undefined;
  offset(file: SourceFile, position: Point): number;
  range(checked: WithTexts, span: Span): Range;
  location(checked: WithTexts, span: Span): Location;
  spot(checked: WithTexts, span: Span): Spot;
  position(text: string, offset: number): Position;
  edit(checked: WithTexts, edits: readonly TextEdit[]): WorkspaceEdit;
  units(project: Project): OutputOptions;
  /** Called when texts, files or settings changed. */
  readonly onChange: (() => void)[];
  /** Called when a question was answered: the next one often comes right behind. */
  readonly onAnswer: (() => void)[];
  changed(): void;
}

export function newSession(connection: Connection, files: Files, pathOf: (uri: string) => string): Session {
  const documents = new Map<string, Document>(),
    lines = new WeakMap<object, Lines>();
  let folders: readonly string[] = [],
    projects: Project[] = [];
  const host = {
    files,
    document: (path: string) => documents.get(path),
    breathe: () =>
      new Promise<void>((resolve) => {
        setTimeout(resolve, 0);
      }),
  };
  const make = (folder: string): Project => {
    const project: Project = newProject(folder, {
      ...host,
      openPaths: () => [...documents.keys()].filter((path) => session.projectOf(path) === project),
    });
    return project;
  };
  const linesOfFile = (file: SourceFile): Lines => {
    let known = lines.get(file.tree);
    if (!known) lines.set(file.tree, (known = linesOf(file.text)));
    return known;
  };
  const find = <T extends WithTexts>(
    uri: string,
    of: (project: Project) => T,
  ): (Omit<Seen, "checked"> & { readonly checked: T }) | undefined => {
    const path = pathOf(uri);
    if (!documents.has(path) && !path.endsWith(".strip")) return undefined;
    const project = session.projectOf(path),
      checked = of(project),
      file = checked.project.files.get(path);
    return file && { path, project, checked, file };
  };
  const session: Session = {
    connection,
    files,
    documents,
    client: {},
    start: {},
    ended: false,
    encoding: "utf-16",
    editor: defaultEditorSettings,
    onChange: [],
    onAnswer: [],
    projects: () => projects,
    folders: () => folders,
    setFolders(next) {
      // The innermost folder goes before the one around it.
      folders = [...new Set(next)].sort((a, b) => b.length - a.length);
      projects = folders.map((folder) => projects.find((one) => one.folder === folder) ?? make(folder));
    },
    projectOf(path) {
      const had = projects.find(({ folder }) => isBelow(path, folder));
      if (had) return had;
      const alone = make(folderOf(path));
      projects.push(alone);
      return alone;
    },
    look: (uri) => find(uri, (project) => project.best()),
    see: (uri, all = false) => find(uri, (project) => ({ project: project.texts(all) })),
    seeBest: (uri) => find(uri, (project) => ({ project: project.bestTexts() })),
    watch: (uri) => find(uri, (project) => project.bestActs()),
    offset: (file, position) => toOffset(file.text, position, session.encoding, linesOfFile(file)),
    range(checked, { file: path, start, end }) {
      const file = checked.project.files.get(path);
      if (!file) {
        const text = documents.get(path)?.text ?? session.projectOf(path).settingsFile()?.text ?? "";
        return { start: session.position(text, start), end: session.position(text, end) };
      }
      const known = linesOfFile(file);
      return {
        start: toPosition(file.text, start, session.encoding, known),
        end: toPosition(file.text, end, session.encoding, known),
      };
    },
    location: (checked, span) => ({
      uri: session.documents.get(span.file)?.uri ?? uriOf(span.file),
      range: session.range(checked, span),
    }),
    spot: (checked, span) => ({
      uri: session.documents.get(span.file)?.uri ?? uriOf(span.file),
      ...session.range(checked, span),
    }),
    position: (text, offset) => toPosition(text, offset, session.encoding),
    edit(checked, edits) {
      const byFile = new Map<string, LspEdit[]>();
      for (const { file, start, end, text } of edits) {
        const { uri, range } = session.location(checked, { file, start, end }),
          list = byFile.get(uri) ?? [];
        byFile.set(uri, list);
        list.push({ range, newText: text });
      }
      if (session.client.workspace?.workspaceEdit?.documentChanges) {
        return {
          documentChanges: [...byFile].map(([uri, list]) => ({
            textDocument: { uri, version: documents.get(pathOf(uri))?.version ?? null },
            edits: list,
          })),
        };
      }
      return { changes: Object.fromEntries(byFile) };
    },
    units: (project) => ({
      wording: defaultWording,
      system: session.editor.system === "project" ? project.settings.system : session.editor.system,
    }),
    changed() {
      for (const tell of session.onChange) tell();
    },
  };
  return session;
}
