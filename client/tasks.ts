// The checks of the whole folder as a task, by the command line that comes with the extension. It reads the folder and runs nothing of it.

import {
  l10n,
  ShellExecution,
  ShellQuoting,
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
            const quoted = (value: string): { value: string; quoting: ShellQuoting } => ({
              value,
              quoting: ShellQuoting.Strong,
            });
            const task = new Task(
              { type: "stripdown" },
              folder,
              l10n.t("check this folder"),
              "stripdown",
              new ShellExecution("node", [quoted(program.fsPath), "check", quoted(folder.uri.fsPath)]),
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
