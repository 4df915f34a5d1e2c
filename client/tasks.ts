// The checks of the whole folder as a task, by the command line that comes with the extension. It reads the folder and runs nothing of it.
// The program that the extension itself runs in runs it, so that no Node has to be installed; one that is too old says so in one line.

import {
  l10n,
  ProcessExecution,
  Task,
  TaskGroup,
  TaskScope,
  tasks,
  Uri,
  workspace,
  type Disposable,
  type ExtensionContext,
  type TaskDefinition,
  type WorkspaceFolder,
} from "vscode";

/** As written in a tasks.json. */
interface CheckDefinition extends TaskDefinition {
  /** Questions and hints end it with 1 too. */
  readonly strict?: boolean;
}

export function provideTasks(context: ExtensionContext): Disposable[] {
  const program = Uri.joinPath(context.extensionUri, "dist", "cli", "stripdown.mjs");
  if (program.scheme !== "file") return []; // a browser runs no programs
  const check = (definition: CheckDefinition, folder: WorkspaceFolder, name: string): Task => {
    const task = new Task(
      definition,
      folder,
      name,
      "stripdown",
      new ProcessExecution(
        process.execPath,
        [program.fsPath, "check", ...(definition.strict === true ? ["--strict"] : []), folder.uri.fsPath],
        // An Electron is a Node when it is told so; to a Node it says nothing.
        { cwd: folder.uri.fsPath, env: { ELECTRON_RUN_AS_NODE: "1" } },
      ),
      "$stripdown",
    );
    task.group = TaskGroup.Build;
    return task;
  };
  const folders = (): readonly WorkspaceFolder[] =>
    (workspace.workspaceFolders ?? []).filter((folder) => folder.uri.scheme === "file");
  return [
    tasks.registerTaskProvider("stripdown", {
      provideTasks: () => folders().map((folder) => check({ type: "stripdown" }, folder, l10n.t("check this folder"))),
      // The definition has to be given back as it came: the editor knows the task by it.
      resolveTask({ definition, scope, name }) {
        const folder =
          scope === undefined || scope === TaskScope.Global || scope === TaskScope.Workspace ? folders()[0] : scope;
        return folder && folder.uri.scheme === "file" ? check(definition, folder, name) : undefined;
      },
    }),
  ];
}
