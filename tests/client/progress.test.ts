// Long work that is waited for has a button, and what that breaks off has no result, whatever comes back.

import { expect, test, vi } from "vitest";
import type { CancellationToken } from "vscode";

/** What the editor's notification was given, and its button. */
const shown: { title: string; cancellable: boolean; press: () => void; ended: boolean }[] = [];

vi.mock("vscode", () => {
  class CancellationTokenSource {
    private readonly heard: (() => void)[] = [];
    readonly token = {
      isCancellationRequested: false,
      onCancellationRequested: (hears: () => void) => {
        this.heard.push(hears);
      },
    };
    cancel(): void {
      this.token.isCancellationRequested = true;
      for (const hears of this.heard) hears();
    }
    dispose(): void {
      this.heard.length = 0;
    }
  }
  return {
    CancellationTokenSource,
    ProgressLocation: { Notification: 15 },
    window: {
      async withProgress(
        options: { title: string; cancellable: boolean },
        task: (progress: object, token: object) => Promise<void>,
      ) {
        const button = new CancellationTokenSource(),
          one = { ...options, press: () => button.cancel(), ended: false };
        shown.push(one);
        await task({}, button.token);
        one.ended = true;
      },
    },
  };
});

const { shownWhenLong } = await import("../../client/progress.ts");
const wait = (ms: number): Promise<void> =>
  new Promise((resolve) => {
    setTimeout(resolve, ms);
  });

test("what is soon done is not shown", async () => {
  expect(await shownWhenLong("Work", () => Promise.resolve(7))).toBe(7);
  await wait(1100);
  expect(shown).toEqual([]);
});

test("what takes longer is shown until it ends", async () => {
  expect(
    await shownWhenLong("Work", async () => {
      await wait(1200);
      return 8;
    }),
  ).toBe(8);
  await wait(0);
  expect(shown.splice(0)).toMatchObject([{ title: "Work", cancellable: true, ended: true }]);
});

test.each([
  ["ends with a fault", () => Promise.reject(new Error("taken back"))],
  ["answers all the same", () => Promise.resolve(9)],
])("what is broken off has no result, where the other side %s", async (_how, end) => {
  const done = shownWhenLong("Work", async (token: CancellationToken) => {
    await new Promise<void>((resolve) => token.onCancellationRequested(() => resolve()));
    return await end();
  });
  await wait(1100);
  shown[0]!.press();
  expect(await done).toBeUndefined();
  shown.length = 0;
});

test("a fault that nobody asked for is told", async () => {
  await expect(shownWhenLong("Work", () => Promise.reject(new Error("broken")))).rejects.toThrow("broken");
});
