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

const { buttonWhereItGoesOn, shownWhenLong } = await import("../../client/progress.ts");
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

/** What a server says of work that it does by itself. */
const begin = { kind: "begin", title: "Stripdown", message: "Performing", cancellable: true } as const,
  end = { kind: "end" } as const;

test("work of the server that goes on has a button; what it presses is told, and it goes with the work", async () => {
  vi.useFakeTimers();
  const pressed: unknown[] = [],
    passed: unknown[] = [],
    { hears } = buttonWhereItGoesOn((token) => pressed.push(token)),
    next = (_: unknown, params: unknown): void => void passed.push(params);
  hears("long", begin, next);
  await vi.advanceTimersByTimeAsync(900);
  expect(shown).toEqual([]);
  await vi.advanceTimersByTimeAsync(200);
  expect(shown).toMatchObject([{ title: "Stripdown: Performing", cancellable: true, ended: false }]);
  shown[0]!.press();
  expect(pressed).toEqual(["long"]);
  hears("long", end, next);
  await vi.advanceTimersByTimeAsync(0);
  expect(shown.splice(0)).toMatchObject([{ ended: true }]);
  // The client's own sign of it is as it was.
  expect(passed).toEqual([begin, end]);
  vi.useRealTimers();
});

test("no button for what ends before, cannot be broken off, or went with the server", async () => {
  vi.useFakeTimers();
  const { hears, gone } = buttonWhereItGoesOn(() => undefined),
    next = (): void => undefined;
  hears("short", begin, next);
  hears("fixed", { ...begin, cancellable: false }, next);
  await vi.advanceTimersByTimeAsync(500);
  hears("short", end, next);
  hears("lost", begin, next);
  gone();
  await vi.advanceTimersByTimeAsync(10_000);
  expect(shown).toEqual([]);
  hears("left", begin, next);
  await vi.advanceTimersByTimeAsync(4000);
  gone();
  await vi.advanceTimersByTimeAsync(0);
  expect(shown.splice(0)).toMatchObject([{ ended: true }]);
  vi.useRealTimers();
});
