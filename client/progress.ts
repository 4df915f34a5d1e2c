// Work that is waited for: what takes longer than a second is shown, with a button that breaks it off.

import { CancellationTokenSource, ProgressLocation, window, type CancellationToken } from "vscode";

/** In ms. */
const isLong = 1000;

/** Undefined where it was broken off. `work` is to end, by a fault of its own or with nothing, when its token asks for it. */
export async function shownWhenLong<T>(
  title: string,
  work: (token: CancellationToken) => Promise<T>,
): Promise<T | undefined> {
  const stop = new CancellationTokenSource(),
    // An answer may have been on its way when the button was pressed.
    done = work(stop.token).then(
      (made) => (stop.token.isCancellationRequested ? undefined : made),
      (error: unknown) => {
        if (stop.token.isCancellationRequested) return undefined;
        throw error;
      },
    );
  const late = setTimeout(() => {
    void window.withProgress(
      { location: ProgressLocation.Notification, title, cancellable: true },
      async (_, token) => {
        token.onCancellationRequested(() => stop.cancel());
        await done.catch(() => undefined);
      },
    );
  }, isLong);
  try {
    return await done;
  } finally {
    clearTimeout(late);
    stop.dispose();
  }
}
