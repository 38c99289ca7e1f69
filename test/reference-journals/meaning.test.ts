import { expect, test } from "vitest";
import { isoDate } from "../../server/journal/calendar.ts";
import { declaredIn, findingsOf, JOURNALS, journalOf, meaningOf, type Name, textsOf } from "./journals.ts";

// What the authors of the three journals meant, line by line: see test/reference/journals/README.md.

function check(name: Name, expected: readonly string[]): void {
  expect(meaningOf(journalOf(textsOf(name)))).toEqual(expected);
}

test.each(Object.keys(JOURNALS) as Name[])("the %s's journal has neither errors nor warnings", (name) => {
  const found = findingsOf(journalOf(textsOf(name)));
  expect(found.filter((each) => / (?:error|warning) /.test(each))).toEqual([]);
});

test("the advice on them", () => {
  const advice = (Object.keys(JOURNALS) as Name[]).flatMap((name) => findingsOf(journalOf(textsOf(name))));
  expect(advice).toEqual([
    "2026-03.practice:13 hint prose",
    "spring.practice:12 information long-stretch",
    "spring.practice:22 information long-stretch",
    "spring.practice:32 information long-stretch",
    "week.practice:18 hint prose",
  ]);
});

test("an adult amateur", () => {
  check("amateur", [
    "2026-03-03",
    "sitting 1, 30 min",
    "warm-up, 5 min",
    "  long tones on F4 G4 A4 Bb4 C5 | with drone F C",
    "  F major | slurred (slurred), 5 notes, slow: clean reached",
    "groundwork, 10 min",
    "  notes E5 F5 | slurred (slurred), back and forth, no click",
    "  D melodic minor | notes D E F G A B C# D C Bb A G F E D | signature -1",
    "  D melodic minor | thirds | slurred (slurred): 54 clean reached | tongued (single): 54 uneven | tongued (single): 50 clean 5/5 reached | -- my left thumb slides; roll it",
    "pieces, 15 min",
    "  Ground in G minor | from the top | slow",
    "  Ground in G minor | bars 17-20 | 1/8=96 clean reached | 1/8=104 nearly",
    "2026-03-05, rest",
    "sitting 1",
    "away, 10 min",
    "  Ground in G minor | bars 17-32 | mental",
    "  Ground in G minor | bars 17-32 | sung",
    "2026-03-07",
    "sitting 1",
    "sitting 2, 30 min",
    "warm-up",
    "  G chromatic | threes | slurred (slurred), 1/12s: 50 clean reached",
    "  G mixolydian | slurred up, tongued down (mixed), twelfth: 60 clean reached",
    "fluency, 12 min",
    "  F major | t-k (multiple), 1/16s: 60-76 clean reached",
    "  C major > F major > Bb major | straight | 1/8s: 66 nearly",
    "sitting 3, 90 min",
    "together, 90 min, 10 stated below",
    "  tuning | with Anna",
    "  Trio | mvt 2 | 60 nearly",
    "  sight-reading | 10 min",
  ]);
});

test("a student", () => {
  check("student", [
    "2026-04-13",
    "sitting 1, 200 min",
    "sitting 2, 70 min, 1 break",
    "warm-up",
    "  long tones on C5 G5 C6 | with drone C",
    "  trill E6 with F6 | slow: uneven",
    "groundwork, 20 stated below",
    "  notes G5 A5 | slurred (slurred), LS (uneven): 60 clean 4/5 reached",
    "  notes D5 D6 | slurred (slurred), SL (uneven): 60 nearly",
    "  F# major | slur 1+2+1 (mixed), 1/16s, full range, down and up: 66 clean reached | slur 1+2+1 (mixed), 1/16s, full range, down and up: 72 clean 3/5 reached | slur 1+2+1 (mixed), 1/16s, full range, down and up: 76 tense",
    "  A dominant seventh | 20 min | slurred (slurred), 1/8s: 80 clean reached",
    "sitting 3, 90 min",
    "fluency, 25 min",
    "  D dorian > A dorian > E dorian | fours | d-g (multiple), LSSS (uneven), 1/16s: 84 clean reached | d-g (multiple), LSSS (uneven), 1/16s: 92 rushed",
    "  Bb major | out and back | staccato (single): 88 clean reached",
    "  G harmonic minor | seventh chords alternating | 60 slips",
    "studies",
    "  G harmonic minor | notes G A Bb C D Eb F# G F# Eb D C Bb A G | signature -2",
    "  C# harmonic minor | thirds | focus finger changes | reverse dotted (uneven), 1/8s: 54 nearly",
    "  A half-whole | portato (single): 3/8=46 uneven",
    "2026-04-14",
    "sitting 1, 240 min",
    "pieces",
    "  Sonata in D minor | mvt 2, bars 45-61 | 3/8=52 clean reached | 3/8=56 clean reached | 3/8=60 slips | 3/8=54 clean 5/5 reached",
    "  Sonata in D minor | mvt 3 | by heart: broke down",
    "  Sonata in D minor | mvt 1, bars 5-8 | by ear",
    "  Solo | page 2 | slow | -- ? breathe before or after the tie in 58?",
    "together, 90 min",
    "  rehearsal | with harpsichord",
    "2026-05-08",
    "sitting 1, 70 min",
    "away, 20 min",
    "  Sonata in D minor | mvt 3 | silent, by heart",
    "pieces, 38 stated below",
    "  run-through | 38 min | by heart",
    "  Sonata in D minor | mvt 2 | 60 clean tense",
    "reading",
    "  C major | straight | on tenor recorder | 1/8s, 2 oct: 70 easy reached",
  ]);
});

test("a child, with the teacher's set work", () => {
  check("child", [
    "2026-03-02",
    "sitting 1",
    "lesson, 30 min",
    "  G major | slurred (slurred), 5 notes, slow: nearly",
    "2026-03-04",
    "sitting 1, 12 min",
    "  G major | 5 notes: clean reached",
    "  notes B4 A4 G4 | 3 times",
    "  Tutor book | page 14 | nearly",
    "2026-03-06",
    "sitting 1",
    "  E natural minor | notes E F# G A B | signature 1 | 5 notes",
    "  E natural minor | tongue d (single), 1/4s, 5 notes: 60 nearly",
    "  clap line 4, then say it in tu-ru | done",
  ]);
});

/** Declarations in one line each; days as dates, keys and entries by their subject's name. */
function checkDeclared(name: Name, expected: readonly string[]): void {
  expect(declaredIn(journalOf(textsOf(name))).map((each) => shown(each as Record<string, unknown>))).toEqual(expected);
}

function shown(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(shown).join("; ")}]`;
  if (typeof value !== "object" || value === null) return String(value);
  const { type, letter, alter, tonic, kind, numerator, denominator, ...rest } = value as Record<string, unknown>;
  if (letter !== undefined) return `${letter}${alter === 1 ? "#" : ""}`;
  if (tonic !== undefined) return `${shown(tonic)} ${kind}`;
  if (numerator !== undefined) return `${numerator}/${denominator}`;
  const fields = Object.entries(rest)
    .filter(([key, each]) => each !== undefined && !(key === "claims" && (each as unknown[]).length === 0))
    .map(
      ([key, each]) => `${key} ${["from", "due", "by", "on"].includes(key) ? isoDate(each as number) : shown(each)}`,
    );
  return [type, ...fields].filter(Boolean).join(", ");
}

test("what the amateur declares", () => {
  checkDeclared("amateur", [
    "player, words Ilse",
    "instrument, id alto recorder",
    "pitch, a 415, temperament id equal",
    "piece, word piece, title Ground in G minor, short Ground, key G natural minor, bars 96, goal bpm 84, beat 1/4, due 2026-05-09",
    "piece, word piece, title Trio, key F major",
    "aim, entry entry, subject meaning D melodic minor, items [meaning pattern, id thirds; meaning note value, value 1/8; meaning tempo, bpm 72], by 2026-12-31",
    "focus, name left thumb",
  ]);
});

test("what the student declares", () => {
  checkDeclared("student", [
    "player, words Tomas",
    "instrument, id alto recorder",
    "instrument, id tenor recorder",
    "pitch, a 415, temperament id equal",
    "note value, value 1/8",
    "usual articulation, articulation articulation, id tongued, tonguing single",
    "piece, word piece, title Sonata in D minor, short Sonata, key D natural minor, from 2026-02-01, due 2026-05-09",
    "movement, title Sonata in D minor, movement 2, name Allegro, key D natural minor, goal bpm 66, beat 3/8",
    "piece, word piece, title Solo, key G major",
    "concert, name Recital, on 2026-05-09, titles [Sonata in D minor; Solo]",
    "pattern, name out and back, cell degrees [1; 3; 5; 4; 2; 1], step 1",
    "aim, entry entry, subject meaning F# major, items [meaning pattern, id straight; meaning span, reach full range; meaning note value, value 1/16; meaning tempo, bpm 80], by 2026-12-31",
    "aim, entry entry, subject meaning title, title Sonata in D minor, declared true, items [meaning manner, id by heart], by 2026-12-31",
  ]);
});

test("what the child's teacher declares and sets", () => {
  checkDeclared("child", [
    "player, words Mika",
    "instrument, id soprano recorder",
    "piece, word study, title Tutor book, key G major",
    "set, entry entry, subject meaning G major, items [meaning span, reach degrees, count 5; meaning articulation, id slurred, tonguing slurred; meaning without click, id slow], days 5",
    "set, entry entry, subject meaning title, title Tutor book, declared true, items [meaning place, word page, text page 14; meaning place, word lines, text lines 3-5]",
    "set, words clap line 4, then say it in tu-ru, asTitle entry, subject meaning title, title clap line 4, then say it in tu-ru, declared false, items []",
  ]);
});
