// The checks of the whole folder as a task, by the command line that comes with the extension. It reads the folder and runs nothing of it.
// The program that the extension itself runs in runs it, so that no Node has to be installed.

import {
  l10n,
  ProcessExecution,
  Task,
  TaskGroup,
  tasks,
  Uri,
  workspace,
  type Disposable,
  type ExtensionContext,
} from "vscode";

export function provideTasks(context: ExtensionContext): Disposable[] {
  const program = Uri.joinPath(context.extensionUri, "dist", "cli", "stripdown.mjs");
  if (program.scheme !== "file") return []; // a browser runs no programs
  return [
    tasks.registerTaskProvider("stripdown", {
      provideTasks() {
        return (workspace.workspaceFolders ?? [])
          .filter((folder) => folder.uri.scheme === "file")
          .map((folder) => {
            const task = new Task(
              { type: "stripdown" },
              folder,
              l10n.t("check this folder"),
              "stripdown",
              new ProcessExecution(process.execPath, [program.fsPath, "check", folder.uri.fsPath], {
                // An Electron is a Node when it is told so; to a Node it says nothing.
                env: { ELECTRON_RUN_AS_NODE: "1" },
              }),
              "$stripdown",
            );
            task.group = TaskGroup.Build;
            return task;
          });
      },
      resolveTask: () => undefined,
    }),
  ];
}
