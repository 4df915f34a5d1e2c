// What one PDF leaves behind for the next: nothing. Counted by what is handed out, mapped and cached, and by objects that can still be
// reached, since megabytes of a process say little.

import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { afterEach, expect, test, vi } from "vitest";
import { pdfOf } from "../../../language/cli/pdf/pdf.ts";
import { renderer } from "../../../language/cli/pdf/renderer.ts";
import { manual } from "../../../language/outputs/manual/manual.ts";
import type { PrintDocument } from "../../../language/outputs/pdf/print.ts";
import { compiledExample, options } from "../outputs-of.ts";

const picture = {
    type: "image/png",
    base64: "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==",
  } as const,
  document = (): PrintDocument => {
    const with_ = { ...options, picture: () => picture },
      input = compiledExample("dairy-pump/pump.strip");
    return manual.print!(manual.data(input, with_), with_);
  };

afterEach(() => {
  vi.restoreAllMocks();
});

test("no compiled document is handed out, the cache is emptied and the files of the last document are gone", async () => {
  const { compiler } = await renderer(),
    compile = vi.spyOn(compiler, "compile"),
    evict = vi.spyOn(compiler, "evictCache"),
    reset = vi.spyOn(compiler, "resetShadow"),
    map = vi.spyOn(compiler, "mapShadow");
  for (let i = 1; i <= 3; i++) {
    const { bytes } = await pdfOf(document());
    expect(bytes.subarray(0, 5).toString()).toBe("%PDF-");
    expect([compile.mock.calls.length, evict.mock.calls.length, reset.mock.calls.length], `after ${i}`).toEqual([
      0,
      i,
      i,
    ]);
    // The data and each picture once: none of those that are mapped outlives the next reset.
    expect(map.mock.calls.length, `files of ${i}`).toBe(2 * i);
    expect(reset.mock.invocationCallOrder.at(-1)!).toBeLessThan(map.mock.invocationCallOrder.at(-2)!);
  }
  expect(evict.mock.calls.every(([age]) => age === 0)).toBe(true);
});

test("a document that is refused leaves no more behind", async () => {
  const { compiler } = await renderer(),
    evict = vi.spyOn(compiler, "evictCache"),
    made = document(),
    damaged = {
      ...made,
      files: made.files.map((file) => ({ ...file, base64: Buffer.from("none").toString("base64") })),
    };
  await expect(pdfOf(damaged)).rejects.toThrow("cannot be printed");
  expect(evict.mock.calls).toEqual([[0]]);
});

test("of ten documents neither the data nor the bytes can be reached any more", async () => {
  setFlagsFromString("--expose-gc");
  const collect = runInNewContext("gc") as () => void,
    refs: WeakRef<object>[] = [];
  const make = async (): Promise<void> => {
    const made = document(),
      pdf = await pdfOf(made);
    refs.push(new WeakRef(made), new WeakRef(pdf), new WeakRef(pdf.bytes));
  };
  for (let i = 0; i < 10; i++) await make();
  for (let i = 0; i < 5; i++) {
    await new Promise((done) => {
      setTimeout(done, 10);
    });
    collect();
  }
  expect(refs).toHaveLength(30);
  // The last one may still stand on the stack.
  expect(refs.slice(0, 27).filter((ref) => ref.deref() !== undefined)).toHaveLength(0);
});
