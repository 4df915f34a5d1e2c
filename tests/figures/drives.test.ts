// Tool sizes against the published head tables, metric and inch. Sources: S17, S18 and T22 of the source pages.

import { expect, test } from "vitest";
import {
  crossRecesses,
  driveFinding,
  driverForGauge,
  heavyHexWidth,
  hexalobularSockets,
  rowsForThread,
  threadsForDrive,
} from "../../language/figures/drives.ts";
import { driveRows } from "../../language/figures/drive-table.ts";
import { parseNumber } from "../../language/quantities/index.ts";
import { sizeOf } from "./printed.ts";
import { referenceRows, lookUp, tally, type Row } from "./reference-rows.ts";

const kind = (drive: string): string =>
  drive.startsWith("cross-recess")
    ? "cross-ph"
    : (({ "hex-AF": "hex", "hex-key": "hex-socket", "square-AF": "square" } as Record<string, string>)[drive] ?? drive);
const bare = (size: string): string => size.replace(/^[T#]/, "");

for (const [file, scale] of [
  ["drive-sizes.csv", 1e-3],
  ["drive-sizes-us.csv", 0.0254],
] as const) {
  const rows = referenceRows(file),
    count = tally(file, rows.length, lookUp.byRule);
  rows.forEach((row, i) =>
    count.row(`${row["standard"]} ${row["thread"]} ${row["size"]}, row ${i + 2} (${row["status"]})`, () => {
      if (row["item"] === "recess number") return recess(row);
      if (row["standard"] === "trade page") return gauge(row);
      const drive = kind(row["drive"]!),
        metric = row["thread"]!.startsWith("M"),
        size = row["size"]!,
        numbered = drive === "hexalobular" || drive === "cross-ph";
      const found = rowsForThread(row["thread"]!, drive).filter(
        (each) =>
          row["standard"] === "trade name" ||
          (each.standard === row["standard"] && each.item === row["item"]!.replaceAll('"', "")),
      );
      expect(
        found.map((each) => each.size),
        `${row["standard"]} ${row["thread"]}`,
      ).toContain(bare(size));
      const width = numbered ? undefined : parseNumber(size)!.value * (metric ? 1e-3 : 0.0254),
        number = numbered ? Number(bare(size)) : undefined;
      expect(
        threadsForDrive(drive, { width, number }).map((each) => each.thread),
        "threads from the tool",
      ).toContain(row["thread"]);
      const thread = metric ? row["thread"]! : `${row["thread"]}-20`;
      expect(driveFinding(sizeOf(thread), drive, { width, number }), "no finding on a tabled pair").toBeUndefined();
      if (scale === 0.0254 && width !== undefined && row["size_in"] !== "")
        expect(Math.abs(width / 0.0254 - Number(row["size_in"]))).toBeLessThan(6e-5);
      const least = /minimum width ([\d.]+) in/.exec(row["note"]!)?.[1];
      if (least !== undefined) {
        const share = Number(least) / (width! / 0.0254);
        expect(share <= 1 && share > 0.97, `least width ${share} of the nominal`).toBe(true);
      }
      if (row["standard"] === "ASME B18.2.1/B18.2.2 heavy")
        expect(heavyHexWidth(parseNumber(row["thread"]!)!.value * 0.0254)).toBeCloseTo(width!, 9);
    }),
  );
}

function recess(row: Row): void {
  const [, wing, gap] = /b ([\d.]+) mm, recess g ([\d.]+) mm/.exec(row["note"]!)!;
  expect(crossRecesses.get(Number(row["size"]))).toEqual({ wing: Number(wing), gap: Number(gap) });
}

function gauge(row: Row): void {
  const [from, to] = [...row["thread"]!.matchAll(/#(\d+)/g)].map((match) => Number(match[1])) as [number, number];
  expect([driverForGauge(from), driverForGauge(to)]).toEqual([Number(bare(row["size"]!)), Number(bare(row["size"]!))]);
}

const sockets = referenceRows("hexalobular-iso10664.csv"),
  socketTally = tally("hexalobular-iso10664.csv", sockets.length, lookUp.byRule);
for (const row of sockets) {
  socketTally.row(`hexalobular ${row["socket"]}`, () => {
    expect(hexalobularSockets.get(Number(bare(row["socket"]!)))).toEqual({
      over: Number(row["A_mm"]),
      between: Number(row["B_mm"]),
    });
  });
}

test("slips of the sources stay out: M14 is 21, not 22; #1 set screw is 0.035, not 0.028", () => {
  for (const standard of ["ISO 4014", "ISO 4017", "ISO 4032"])
    expect(driveRows.find((row) => row.standard === standard && row.thread === "M14")?.size).toBe("21");
  expect(driveRows.find((row) => row.item === "socket set screw" && row.thread === "#1")?.size).toBe("0.035");
});

test("thread taken for spanner is asked about, with the usual sizes and the threads that the tool means", () => {
  expect(driveFinding(sizeOf("M10x40"), "hex", { width: 0.01 })).toMatchObject({
    usual: expect.arrayContaining(["16 mm", "17 mm"]),
    threads: expect.arrayContaining(["M6"]),
  });
  expect(driveFinding(sizeOf("3/8-16 UNC"), "hex", { width: 0.009525 })?.usual).toContain("9/16 in");
  expect(driveFinding(sizeOf("M8"), "hexalobular", { number: 30 })?.usual).toEqual(["45"]);
  expect(driveFinding(sizeOf("G1/4"), "hex", { width: 0.017 })).toBeUndefined();
  expect(driveFinding(sizeOf("M48"), "hex", { width: 0.075 })).toBeUndefined();
  expect(driveFinding(sizeOf("M8"), "spline", { number: 8 })).toBeUndefined();
});
