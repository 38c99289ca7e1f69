// How long a staff takes to be drawn, in the bundle that does it:
//   node test/bench/staff.mjs
// Prints, in milliseconds of the processor's time, the first drawing, which also loads the bundle, and the median of forty for
// each of some exercises.
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "esbuild";
import { NOTATION_BUNDLE, settingsOf } from "../../build.mjs";

const folder = mkdtempSync(join(tmpdir(), "daystave-staff-"));
const load = createRequire(import.meta.url);

/** The exercises as plain data, made by the core. */
const EXERCISES = `
import { exerciseStaff } from "./server/notation/exercise-staff.ts";
import { ENGLISH_NAMES } from "./server/music/notes/note-names.ts";
import { kindById } from "./server/music/scales/kinds.ts";
const scale = (letter, alter, kind, terms, noteValue) => exerciseStaff({
  title: "scale", names: ENGLISH_NAMES, noteValue, articulation: "slur 2",
  input: { subject: { type: "scale", tonic: { letter, alter }, kind: kindById(kind) }, ...terms },
}).staff;
const eighths = { numerator: 1, denominator: 8 };
const sixteenths = { numerator: 1, denominator: 16 };
export const staves = {
  "an octave up and down": scale("F", 0, "major", {}, eighths),
  "thirds, an octave up and down": scale("D", 0, "melodic minor", { pattern: "thirds" }, eighths),
  "two octaves of 16ths, seven sharps": scale("C", 1, "major", { reach: { type: "octaves", count: 2 } }, sixteenths),
  "fours, two octaves of 16ths": scale("E", -1, "harmonic minor", { pattern: "fours", reach: { type: "octaves", count: 2 } }, sixteenths),
};`;

try {
  const stdin = { contents: EXERCISES, resolveDir: process.cwd(), loader: "js" };
  const made = await build({ stdin, bundle: true, write: false, format: "cjs", platform: "node" });
  writeFileSync(join(folder, "staves.cjs"), made.outputFiles[0].contents);
  await build(settingsOf(NOTATION_BUNDLE, folder));
  const { staves } = load(join(folder, "staves.cjs"));
  const look = { width: 600, scale: 1, id: "staff" };
  const started = worked();
  const { drawStaves } = load(join(folder, NOTATION_BUNDLE.file));
  drawStaves([Object.values(staves)[0]], look);
  print("the first, with its bundle", worked() - started);
  for (const [name, staff] of Object.entries(staves)) {
    const times = Array.from({ length: 40 }, () => {
      const before = worked();
      drawStaves([staff], look);
      return worked() - before;
    });
    print(`${name} (${staff.notes.length} notes)`, times.sort((a, b) => a - b)[20]);
  }
} finally {
  rmSync(folder, { recursive: true, force: true });
}

/** Not the clock's time: on a busy machine that is several times as long. */
function worked() {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

function print(what, milliseconds) {
  console.log(`${milliseconds.toFixed(1).padStart(8)} ms  ${what}`);
}
