// The check of a whole folder as a task. The server does it, on the texts as the editor has them: no program is run, so that it works in a
// browser and in folders that are no disk, and whatever Node the editor brings.

import {
  CustomExecution,
  EventEmitter,
  l10n,
  Task,
  TaskGroup,
  tasks,
  workspace,
  type Disposable,
  type Pseudoterminal,
  type TaskDefinition,
  type WorkspaceFolder,
} from "vscode";
import { CancellationTokenSource, type BaseLanguageClient } from "vscode-languageclient";
import { checkFolderRequest, type CheckFolderAnswer, type CheckFolderParams } from "../shared/protocol.ts";

/** As written in a tasks.json. */
interface CheckDefinition extends TaskDefinition {
  /** Questions and hints end it with 1 too. */
  readonly strict?: boolean;
}

/**
 * The editor stops reading lines for its list of problems 100 ms after a task has ended, read or not, and on a busy machine the last ones
 * were lost. So the terminal is asked for its state behind the last line: its answer says that it has come so far. In ms: how long the
 * answer is waited for, and how long the lines that were read take to the list.
 */
const asksState = "\u001b[5n",
  saysState = "\u001b[0n",
  longestWait = 20_000,
  toTheList = 1000;

export function provideTasks(client: BaseLanguageClient): Disposable[] {
  const check = (definition: CheckDefinition, folder: WorkspaceFolder, name: string): Task => {
    const task = new Task(
      definition,
      folder,
      name,
      "stripdown",
      new CustomExecution(() => Promise.resolve(terminalOf(client, folder, definition.strict === true))),
      // Its paths are those of the folder. With `$stripdown` the editor asks the disk about each line, one after the other, and the last ones
      // came too late.
      "$stripdown-folder",
    );
    task.group = TaskGroup.Build;
    return task;
  };
  return [
    tasks.registerTaskProvider("stripdown", {
      provideTasks: () =>
        (workspace.workspaceFolders ?? []).map((folder) =>
          check({ type: "stripdown" }, folder, l10n.t("check this folder")),
        ),
      // The definition has to be given back as it came: the editor knows the task by it.
      resolveTask({ definition, scope, name }) {
        const folder = typeof scope === "object" ? scope : workspace.workspaceFolders?.[0];
        return folder && check(definition, folder, name);
      },
    }),
  ];
}

function terminalOf(client: BaseLanguageClient, folder: WorkspaceFolder, strict: boolean): Pseudoterminal {
  const writes = new EventEmitter<string>(),
    closes = new EventEmitter<number>(),
    stop = new CancellationTokenSource();
  let wasRead = (): void => undefined;
  const read = new Promise<void>((resolve) => {
    wasRead = resolve;
  });
  const run = async (): Promise<number> => {
    const answer = await client
      .sendRequest<CheckFolderAnswer | null>(
        checkFolderRequest,
        { uri: client.code2ProtocolConverter.asUri(folder.uri), strict } satisfies CheckFolderParams,
        stop.token,
      )
      .catch(() => null);
    writes.fire((answer?.text ?? `${l10n.t("The folder was not checked")}\n`).replace(/\r?\n/g, "\r\n"));
    writes.fire(asksState);
    const late = setTimeout(wasRead, longestWait);
    await read;
    clearTimeout(late);
    return answer?.code ?? 2;
  };
  return {
    onDidWrite: writes.event,
    onDidClose: closes.event,
    open: () => {
      void run().then((code) => setTimeout(() => closes.fire(code), toTheList));
    },
    handleInput: (data) => {
      if (data.includes(saysState)) wasRead();
    },
    close: () => stop.cancel(),
  };
}
