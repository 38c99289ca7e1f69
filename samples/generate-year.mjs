// Writes samples/year, a year of an invented player's journal, the same at every run:
//   node samples/generate-year.mjs [FOLDER]
// The words are written by hand in generate-year/*.mjs; the figures follow from the courses in
// generate-year/player.mjs.
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { AUTUMN } from "./generate-year/autumn.mjs";
import { DECLARATIONS } from "./generate-year/player.mjs";
import { mulberry32 } from "./generate-year/random.mjs";
import { readDiary } from "./generate-year/shorthand.mjs";
import { SPRING } from "./generate-year/spring.mjs";
import { SUMMER } from "./generate-year/summer.mjs";
import { WINTER } from "./generate-year/winter.mjs";
import { dayText } from "./generate-year/write.mjs";

const FIRST_MONDAY = "2025-11-24";
const SEED = 20251124;
const HEAD = "-- Invented and generated, like the rest of this journal: see journal.practice.\n";

/** A file for each month, by its name. */
function months() {
  const random = mulberry32(SEED);
  const files = new Map();
  for (const day of readDiary(WINTER + SPRING + SUMMER + AUTUMN, FIRST_MONDAY)) {
    const name = `${day.date.slice(0, 7)}.practice`;
    files.set(name, `${files.get(name) ?? HEAD}\n${dayText(day, random)}`);
  }
  return files;
}

const folder = process.argv[2] ?? join(import.meta.dirname, "year");
mkdirSync(folder, { recursive: true });
for (const [name, text] of [["journal.practice", DECLARATIONS], ...months()]) writeFileSync(join(folder, name), text);
