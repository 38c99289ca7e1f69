import fc from "fast-check";
import { expect, test } from "vitest";
import { printName } from "../../../server/music/notes/note.ts";
import {
  readTemperament,
  TEMPERAMENT_NAMES,
  TEMPERAMENT_SPELLINGS,
} from "../../../server/music/tuning/read-temperament.ts";
import { temperamentText } from "../../../server/music/tuning/temperament.ts";

// Names of temperaments as they are written: common practice, no source.

/** What is read: the name that is shown. */
function check(expected: string, ...typed: readonly string[]): void {
  for (const text of typed) {
    const read = readTemperament(text);
    expect([text, read.ok ? temperamentText(read.temperament, printName) : read.reason]).toEqual([text, expected]);
  }
}

/** What cannot be read: the word it fails on, and the names that are near. */
function checkRefused(typed: string, word: string, near: readonly string[] = []): void {
  const read = readTemperament(typed);
  expect(read, typed).toMatchObject({ ok: false, word, near });
}

test("case, spaces, hyphens and figures make no difference", () => {
  check("equal", "equal", "Equal", "equal temperament", "12-TET");
  check("Vallotti", "Vallotti", "vallotti", " VALLOTTI ");
  check("Young II", "Young II", "young 2", "Young no. 2", "Young Ⅱ");
  check("Werckmeister III", "Werckmeister III", "werckmeister 3", "Werckmeister-III", "Werckmeister Ⅲ");
  check("Kirnberger III", "Kirnberger III", "kirnberger 3");
  check("Kirnberger II", "Kirnberger II", "kirnberger 2");
  check("Kellner", "Kellner", "kellner", "Kellner’s Bach tuning");
  check("Neidhardt I", "Neidhardt I", "neidhardt 1", "Neidhardt no. 1");
  check("fifth-comma meantone", "fifth-comma meantone", "1/5 comma", "⅕-comma meantone");
  check("Pythagorean", "Pythagorean", "pythagorean tuning");
  check("sixth-comma meantone", "sixth-comma meantone", "sixth comma mean-tone", "1/6 comma meantone", "1/6-comma");
  check(
    "quarter-comma meantone",
    "quarter-comma meantone",
    "quarter comma meantone",
    "1/4 comma meantone",
    "¼-comma meantone",
    "meantone 1/4",
    "quarter comma",
  );
});

test("just intonation stands on any tonic, and alone on C", () => {
  check("just on C", "just", "Just", "just on C", "just intonation", "just c");
  check("just on D", "just on D", "just D", "just in D", "just intonation on d");
  check("just on F#", "just on F#", "just on F♯", "just on F sharp", "just on f-sharp");
  check("just on Bb", "just on Bb", "just on bb", "just on B♭", "just on B flat");
  check("just on Fbb", "just on Fbb", "just on F double flat");
});

test("what is no temperament is told, with what is near", () => {
  checkRefused("Vallotty", "Vallotty");
  checkRefused("Young", "Young", ["Young II"]);
  checkRefused("werckmeister", "werckmeister", ["Werckmeister III"]);
  checkRefused("meantone", "meantone", ["sixth-comma meantone", "fifth-comma meantone", "quarter-comma meantone"]);
  checkRefused("Neidhardt", "Neidhardt", ["Neidhardt I", "Neidhardt II"]);
  checkRefused("Kirnberger", "Kirnberger", ["Kirnberger II", "Kirnberger III"]);
  checkRefused("Werckmeister IV", "Werckmeister IV");
  checkRefused("", "");
});

test("what is no tonic is told on its word", () => {
  for (const word of ["H#", "H", "C4", "F###", "BB", "D major"]) checkRefused(`just on ${word}`, word);
  checkRefused("just on", "just on");
});

test("every name that is offered is read, as is every spelling", () => {
  for (const name of TEMPERAMENT_NAMES) check(name, name);
  for (const [spelling, name] of TEMPERAMENT_SPELLINGS) check(name, spelling);
});

test("no two temperaments have a spelling in common", () => {
  const shown = new Map<string, string>();
  for (const [spelling, name] of TEMPERAMENT_SPELLINGS) {
    const key = spelling.replace(/[\s.-]/g, "");
    expect(shown.get(key) ?? name, spelling).toBe(name);
    shown.set(key, name);
  }
});

test("nothing is ever thrown, and what is refused stands at the end of what was typed", () => {
  const piece = fc.constantFrom(
    "just",
    " ",
    "on",
    "C",
    "#",
    "H",
    "equal",
    "-",
    "1/4",
    "comma",
    "Young",
    "é",
    "\u202E",
    "♭",
  );
  fc.assert(
    fc.property(
      fc.oneof(
        fc.string(),
        fc.array(piece).map((pieces) => pieces.join("")),
      ),
      (typed) => {
        const read = readTemperament(typed);
        if (!read.ok) expect(typed.trim().endsWith(read.word)).toBe(true);
      },
    ),
    { seed: 466 },
  );
});
