// Long work is shown, with a button that breaks it off: what somebody waits for after a second; what the server does by itself has a
// sign in the status bar from then on, and a button only when it goes on, since that lies over the text of whoever is writing.

import { CancellationTokenSource, ProgressLocation, window, type CancellationToken } from "vscode";
import type { Middleware, ProgressToken } from "vscode-languageclient";

/** In ms. */
const isLong = 1000,
  /** Behind the sign in the status bar. */
  goesOn = 1000;

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
    showButton(
      title,
      done.catch(() => undefined),
      () => stop.cancel(),
    );
  }, isLong);
  try {
    return await done;
  } finally {
    clearTimeout(late);
    stop.dispose();
  }
}

/** Hears of the work that the server does by itself. `press` is called when its button is pressed. */
export function buttonWhereItGoesOn(press: (token: ProgressToken) => void): {
  readonly hears: NonNullable<Middleware["handleWorkDoneProgress"]>;
  /** The server is gone, and with it whatever it was at. */
  readonly gone: () => void;
} {
  const ends = new Map<ProgressToken, () => void>();
  return {
    hears(token, params, next) {
      next(token, params);
      if (params.kind === "end") ends.get(token)?.();
      if (params.kind !== "begin" || params.cancellable !== true) return;
      const done = new Promise<void>((resolve) => {
        const late = setTimeout(() => {
          showButton([params.title, params.message].filter(Boolean).join(": "), done, () => press(token));
        }, goesOn);
        ends.set(token, () => {
          clearTimeout(late);
          ends.delete(token);
          resolve();
        });
      });
    },
    gone() {
      for (const end of [...ends.values()]) end();
    },
  };
}

function showButton(title: string, until: Promise<unknown>, press: () => void): void {
  void window.withProgress({ location: ProgressLocation.Notification, title, cancellable: true }, async (_, token) => {
    token.onCancellationRequested(press);
    await until;
  });
}
