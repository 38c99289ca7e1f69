import { FONT_SIZE, label, textWidth } from "./look.ts";
import { element } from "./svg.ts";

/** What one mark of a chart means: a sample that fills a square as wide as the font's size, and its words. */
export interface KeyEntry {
  readonly sample: string;
  readonly text: string;
}

/** The entries of a chart's key, placed: as many in a row as the width holds. */
export interface Key {
  /** In pixels; 0 without entries. */
  readonly height: number;
  readonly marks: string;
}

/** In pixels. */
const ROW = FONT_SIZE + 5;
const AFTER_SAMPLE = 4;
const BETWEEN = 12;

export function keyOf(entries: readonly KeyEntry[], width: number): Key {
  let x = 0;
  let row = 0;
  const marks = entries.map(({ sample, text }) => {
    const wide = FONT_SIZE + AFTER_SAMPLE + textWidth(text);
    if (x > 0 && x + wide > width) {
      x = 0;
      row++;
    }
    const place = { transform: `translate(${Math.round(x)} ${row * ROW})` };
    x += wide + BETWEEN;
    return element("g", place, sample, label(text, { x: FONT_SIZE + AFTER_SAMPLE, y: FONT_SIZE - 1 }));
  });
  return { height: entries.length === 0 ? 0 : (row + 1) * ROW, marks: marks.join("") };
}
