import { degreeTexts } from "../../music/scales/degree-texts.ts";
import type { noteTexts as english } from "./note-texts.ts";

export const noteTexts: typeof english = {
  broken: "gebrochen in Dreiergruppen",
  thePattern: "Muster",
  inPattern: (exercise, pattern) => `${exercise} (${pattern})`,

  figures: new Map([
    ["thirds", "Terz"],
    ["fourths", "Quarte"],
    ["fifths", "Quinte"],
    ["sixths", "Sexte"],
    ["sevenths", "Septime"],
    ["octaves", "Oktave"],
    ["tenths", "Dezime"],
    ["triads", "Dreiklang"],
    ["Terzen", "Terz"],
    ["Quarten", "Quarte"],
    ["Quinten", "Quinte"],
    ["Sexten", "Sexte"],
    ["Septimen", "Septime"],
    ["Oktaven", "Oktave"],
    ["Dezimen", "Dezime"],
    ["Dreiklänge", "Dreiklang"],
  ]),
  figureByName: (place, figure, way, notes) =>
    `${figure === "Dreiklang" ? "Der" : "Die"} ${degreeTexts.ordinal(place)} ${figure} ${GOING[way]} ist ${notes}`,
  figure: (place, pattern, way, notes) => `Figur ${place} ${GOING[way]} (${pattern}) ist ${notes}`,
  noteOfPattern: (place, pattern, way, note) => `Ton ${place} ${GOING[way]} (${pattern}) ist ${note}`,
  figureNot: (figure, typed) => `${figure}, nicht ${typed}.`,

  notANote: (typed) => `${typed} ist kein Tonname`,
  germanB: " (das deutsche H heißt hier B; mit der Zeile `names german` gelten die deutschen Namen)",
  tooManySigns: " (ein Ton hat höchstens zwei Kreuze oder zwei b)",
  hasHere: (notANote, exercise, right) => `${notANote}: ${exercise} hat hier ${right}.`,
  resolves: (exercise, right, wrong) => `${exercise} löst sich nach ${right} auf, zum Grundton, nicht nach ${wrong}.`,
  begins: (exercise, right, wrong) => `${exercise} beginnt hier mit ${right}, nicht mit ${wrong}.`,
  goesAfter: (before, exercise, right, wrong) => `Nach ${before} folgt in ${exercise} ${right}, nicht ${wrong}.`,
  has: (exercise, right, way, wrong, reason) =>
    `${exercise} hat ${way ? `${GOING[way]} ` : ""}${right}, nicht ${wrong}: ${reason}.`,
  wrongOctave: (wrong, right) => `${wrong} ist der richtige Ton in der falschen Oktave: Schreib ${right}.`,
  octavesChange: (last, first) => ` Zwischen ${last} und ${first} wechselt die Oktave.`,
  octaveNumbersChange: (last, first) => ` Zwischen ${last} und ${first} wechselt die Oktavzahl.`,

  missing: (notes, count, where) => `${notes} ${count === 1 ? "fehlt" : "fehlen"} ${where}`,
  between: (before, after) => `zwischen ${before} und ${after}`,
  after: (before) => `nach ${before}`,
  before: (after) => `vor ${after}`,
  goes: (missing, exercise, notes) => `${missing}: ${exercise} hat hier ${notes}.`,
  figureMissing: (figure, missing) => `${figure}: ${missing}.`,

  figureTooMany: (figure, notes, count) => `${figure}: ${notes} ${tooMany(count)}.`,
  hasNo: (exercise, note, goesOn) => `${exercise} hat kein ${note}: ${goesOn}.`,
  tooMany: (notes, count, goesOn) => `${notes} ${tooMany(count)}: ${goesOn}.`,
  goesFrom: (before, after, exercise = "es") => `Hier geht ${exercise} von ${before} nach ${after}`,
  endsOn: (last, exercise = "es") => `Hier endet ${exercise} auf ${last}`,
  beginsOn: (first, exercise = "es") => `Hier beginnt ${exercise} mit ${first}`,

  spells: (other, exercise, notes) => `So geschrieben ist es ${other}: ${exercise} schreibt man ${notes}.`,
  otherNames: (exercise, notes) =>
    `Das klingt richtig, nur heißen die Töne hier anders: ${exercise} schreibt man ${notes}.`,
  notIn: (count, all, exercise, notes) =>
    `${ofThese(count, all, "gehört", "gehören")} nicht zu ${exercise}. Dort gibt es ${notes}.`,
  onlyOctaves: (exercise, notes) => `Nur die Oktavzahlen stimmen nicht. So geht ${exercise}: ${notes}.`,
  otherLength: (exercise, notes, right, given) =>
    `So geht ${exercise}: ${notes}. Das sind ${right} Töne, hier ${given === 1 ? "steht nur einer" : `stehen ${given}`}.`,
  differ: (count, all, exercise, notes) =>
    `${ofThese(count, all, "weicht", "weichen")} von ${exercise} ab. So geht es: ${notes}.`,

  putIn: (note) => `${note} einfügen`,
  putInAll: (count) => `Die ${count} fehlenden Töne einfügen`,
  takeOut: (note) => `${note} streichen`,
  takeOutAll: (count) => `${count} Töne streichen`,
  change: (from, to) => `${from} in ${to} ändern`,
  writeNotes: (exercise) => `Die Töne von ${exercise} ausschreiben`,
};

const GOING = { up: "aufwärts", down: "abwärts" } as const;

function tooMany(count: number): string {
  return count === 1 ? "ist zu viel" : "sind zu viel";
}

/** `3 dieser 8 Töne gehören`. */
function ofThese(count: number, all: number, does: string, doAll: string): string {
  if (all === 1) return `Dieser Ton ${does}`;
  if (count === all) return `Alle ${all} Töne ${doAll}`;
  return count === 1 ? `Einer dieser ${all} Töne ${does}` : `${count} dieser ${all} Töne ${doAll}`;
}
