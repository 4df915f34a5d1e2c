// Labels: what goes into one bag stands whole on a label of it, however small the labels are.

import { expect, test } from "vitest";
import { itemText, labelsOf, usualGrid } from "../../language/outputs/labels/html.ts";
import { labels } from "../../language/outputs/labels/labels.ts";
import type { LabelData } from "../../language/outputs/labels/data.ts";
import { wordings } from "../../language/outputs/wording/languages.ts";
import { compiledExample, options } from "./outputs-of.ts";

const input = compiledExample("mooring-winch/strip.strip", "reducer-family/reducer.strip");
const tight = (text: string): string => text.replaceAll(/\s+/g, "");

test.each(Object.entries(wordings))(
  "%s: no thing is parted between two labels, and each is said once",
  (_, wording) => {
    const { places } = labels.data(input, { ...options, wording }) as LabelData;
    let further = 0;
    for (const place of places) {
      const sheets = labelsOf(place, usualGrid, { ...options, wording }),
        texts = sheets.map(({ lines }) => tight(lines.join("")));
      further += sheets.length - 1;
      for (const item of place.items) {
        const says = tight(itemText(item, wording));
        expect(texts.filter((text) => text.includes(says)).length, says).toBeGreaterThan(0);
      }
      // A loose label says what unit its things are from.
      for (const text of texts) expect(text).toContain(tight(place.unit));
      expect(sheets.map(({ number }) => number)).toEqual(sheets.map((__, i) => i + 1));
    }
    expect(further, "some bags have more than one label").toBeGreaterThan(0);
  },
);

test("on a label of two lines all words still stand somewhere", () => {
  const { places } = labels.data(input, options) as LabelData,
    small = { ...usualGrid, width: 30, height: 17 };
  for (const place of places) {
    const sheets = labelsOf(place, small, options),
      all = tight(sheets.flatMap(({ lines }) => lines).join(""));
    for (const { lines } of sheets) expect(lines.length).toBeLessThanOrEqual(2);
    for (const item of place.items) expect(all).toContain(tight(itemText(item, options.wording)));
  }
});
