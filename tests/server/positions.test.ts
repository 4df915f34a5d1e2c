// Positions in UTF-16 units and in bytes of UTF-8, right beside the signs of the trade; line ends of every kind.

import { expect, test } from "vitest";
import { changed, toOffset, toPosition } from "../../server/documents.ts";
import { client, everything } from "./client.ts";

const text = "a °C b\r\nN·m 😀 c\rµF d\n";

test("UTF-16: a sign beyond the first plane counts two", () => {
  expect(toPosition(text, text.indexOf("c\r"), "utf-16")).toEqual({ line: 1, character: 7 });
  expect(toPosition(text, text.indexOf("d"), "utf-16")).toEqual({ line: 2, character: 3 });
  expect(toOffset(text, { line: 0, character: 3 }, "utf-16")).toBe(3);
});

test("UTF-8: as many as the sign has bytes", () => {
  expect(toPosition(text, text.indexOf("b"), "utf-8")).toEqual({ line: 0, character: 6 });
  expect(toPosition(text, text.indexOf("c\r"), "utf-8")).toEqual({ line: 1, character: 10 });
  for (const encoding of ["utf-8", "utf-16"] as const)
    for (let i = 0; i < text.length; i++) {
      if (/[\udc00-\udfff]|\n/.test(text[i]!)) continue;
      expect(toOffset(text, toPosition(text, i, encoding), encoding)).toBe(i);
    }
});

test("changes of one notification build on each other", () => {
  const range = (line: number, a: number, b: number) => ({
    start: { line, character: a },
    end: { line, character: b },
  });
  expect(
    changed(
      "N·m\n°C x\n",
      [
        { range: range(0, 1, 4), text: "" },
        { range: range(1, 4, 5), text: "y" },
      ],
      "utf-8",
    ),
  ).toBe("N\n°C y\n");
  expect(changed("a\n", [{ text: "b\n" }], "utf-16")).toBe("b\n");
});

for (const encoding of ["utf-16", "utf-8"] as const) {
  test(`a finding behind °C and N·m stands at its word: ${encoding}`, async () => {
    const source =
      '#- main.strip\nunit box "Box °C 😀" { base foot  part foot "N·m µF" { mass 2 kg  behind nobody } }\n';
    const c = await client(source, { ...everything, general: { positionEncodings: [encoding] } });
    expect(c.started.capabilities.positionEncoding).toBe(encoding);
    const found = await c.findings("main.strip"),
      one = found.find((f) => f.code === "names/unknown")!;
    const line = c.text("main.strip").split("\n")[0]!,
      at = line.indexOf("nobody"),
      before = line.slice(0, at);
    expect(one.range.start).toEqual({ line: 0, character: encoding === "utf-16" ? at : Buffer.byteLength(before) });
    await c.close();
  });
}
