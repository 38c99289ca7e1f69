import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { completionsAt } from "../../../server/features/completion/completion.ts";
import { hoverAt } from "../../../server/features/hover/hover.ts";
import { attemptsOfJournal } from "../../../server/history/attempts.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { DUTCH_TECHNIQUES } from "../../../server/syntax/lexicon/techniques/dutch.ts";
import { ENGLISH_TECHNIQUES } from "../../../server/syntax/lexicon/techniques/english.ts";
import { FRENCH_TECHNIQUES } from "../../../server/syntax/lexicon/techniques/french.ts";
import { GERMAN_TECHNIQUES } from "../../../server/syntax/lexicon/techniques/german.ts";
import { ITALIAN_TECHNIQUES } from "../../../server/syntax/lexicon/techniques/italian.ts";
import { SPANISH_TECHNIQUES } from "../../../server/syntax/lexicon/techniques/spanish.ts";
import { TERMS } from "../../../server/syntax/words/terms.ts";
import { journalOf, URI } from "../../features/journal-text.ts";
import { lineText, read, rowsOf } from "../line/print.ts";

// Techniques are practised by their name: common practice, no source.

const TODAY = parseIsoDate("2026-03-02")!;
const REFERENCE = readFileSync(join(import.meta.dirname, "../../../syntaxes/FORMAT.md"), "utf8");

/** Rows of a line, and what it means. */
function check(rows: string): void {
  for (const [typed, meaning] of rowsOf(rows)) expect([typed, lineText(read(typed))]).toEqual([typed, meaning]);
}

function journalOfLine(line: string) {
  return journalOf(`2026-03-02 Mon\n${line}\n`);
}

test("a technique is the subject, with notes where they follow", () => {
  check(`
    open strings, 5 min        => entry: open strings | 5 min
    lip slurs, at 60 clean     => entry: lip slurs | tempo 60 | outcome clean
    lip slur, 5 min            => entry: lip slurs | 5 min
    vibrato                    => entry: vibrato
    harmonics on C, 5 min      => entry: harmonics on C | 5 min
    Harmonics on low C, 5 min  => entry: harmonics on C | 5 min
    Messa di voce on F and G   => entry: messa di voce on F G
    double tonguing on G, 8ths => entry: double tonguing on G | note value 1/8
    octave leaps               => entry: (no subject) | pattern octaves
    sirens                     => entry: sirens
    slow bows, 3 min           => entry: slow bows | 3 min
    barre chords               => entry: barre chords
    pedal tones, at 60         => entry: pedal tones | tempo 60
    lip trills, 3 min          => entry: lip trills | 3 min
  `);
});

test("an articulation on a note is named by what one practises, in every language", () => {
  check(`
    dbl T on G, 16ths           => entry: double tonguing on G | note value 1/16
    TTK on C, 16ths             => entry: triple tonguing on C | note value 1/16
    tktk on C, 16ths            => entry: double tonguing on C | note value 1/16
    tt on C, 16ths              => entry: triple tonguing on C | note value 1/16
    tonguing on G, 8ths         => entry: tonguing on G | note value 1/8
    tonguing on one note g, 8ths => entry: tonguing on G | note value 1/8
    overtones off B, 5 min      => entry: overtones on B | 5 min
    overtones off low Bb, 5 min => entry: overtones on Bb | 5 min
    staccato on middle C and G  => entry: staccato on C G
    shifting on D string, 5 min => entry: shifting | unknown on | note D | unknown string | 5 min
    slurred on G major, at 60   => entry: G major | articulation slurred (slurred) | tempo 60
  `);
  const subjects = [
    ["german", "Doppelzunge auf a, at 60"],
    ["french", "double coup de langue sur sol, at 60"],
    ["french", "double langue sur sol grave, at 60"],
    ["dutch", "dubbeltong op g, at 60"],
  ].map(([names, typed]) =>
    attemptsOfJournal(journalOf(`names ${names}\n\n2026-03-02 Mon\n${typed}\n`)).map(({ subject }) => subject),
  );
  // In the names of notes of each journal.
  expect(subjects).toEqual([
    ["double tonguing on A"],
    ["double tonguing on sol"],
    ["double tonguing on sol"],
    ["double tonguing on G"],
  ]);
});

test("trills have both their notes, or the fingers that play them", () => {
  check(`
    lip trill F-G                  => entry: lip trills on F G
    3' lip trill F-G, lumpy        => entry: lip trills on F G | 3 min | outcome lumpy
    lip trills e-g f-a g-b, 3 min  => entry: lip trills on E G F A G B | 3 min
    lip trills G to G, 3 min       => entry: lip trills | note G | unknown to | note G | 3 min
    trills e-g f-a                 => entry: trill E with G, trill F with A
    5' trill F-G                   => entry: trill F with G | 5 min
    Tr g''/a''                     => entry: trill G5 with A5
    Trills 3-4 rh                  => entry: trill | manner right hand
    trills 1-2 and 2-3, at 60      => entry: trill | tempo 60
    trill clean                    => entry: trill | outcome clean
    Trills, 5 min                  => entry: trill | 5 min
  `);
  const subjects = [
    ["german", "Triller h-c, 2 Min."],
    ["german", "Triller c''-d'' und h'-c'', 2 Min."],
    ["french", "trille do-ré aigu, 4 min"],
    ["french", "trilles 2-3 et 3-4, 3 min"],
  ].map(([names, typed]) =>
    attemptsOfJournal(journalOf(`names ${names}\n\n2026-03-02 Mon\n${typed}\n`)).map(({ subject }) => subject),
  );
  expect(subjects).toEqual([
    ["trill H with C"],
    ["trill C5 with D5", "trill H4 with C5"],
    ["trill do with ré"],
    ["trill"],
  ]);
});

test("notes in a row that are practised again and again are an exercise", () => {
  check(`
    F sharp to G back and forth  => entry: notes F# G | direction back and forth
    Bb-A-Bb-C fork, 2 mins       => entry: notes Bb A Bb C | 2 min
    B A G 5 times                => entry: notes B A G | times 5
    A to B x20                   => entry: notes A B | times 20
    A to B is hard               => prose
    F# - G 20x                   => entry: notes F# G | times 20
  `);
});

test("harmonics are told apart, and a slip of spelling is passed over", () => {
  check(`
    natural harmonics, 5 min    => entry: natural harmonics | 5 min
    artificial harmonics, 5 min => entry: artificial harmonics | 5 min
    harmonics, 5 min            => entry: harmonics | 5 min
    natural harmoncis, 5 min    => entry: natural harmonics | 5 min
    tremelo, at 90              => entry: tremolo | tempo 90
    mouthpiece buzz, 5 min      => entry: mouthpiece buzzing | 5 min
    MPC BUZZ 5 MIN              => entry: mouthpiece buzzing | 5 min
    5' buzz, soft               => entry: mouthpiece buzzing | 5 min | unknown soft
    lh pizz, 3 min              => entry: left hand pizzicato | 3 min
    paradiddles, at 80          => entry: paradiddles | tempo 80
  `);
});

test("what went badly may be a technique, in whole phrases", () => {
  check(
    "D minor, at 60, string crossings hard => entry: D natural minor (natural unsaid) | tempo 60 | unknown string crossings hard",
  );
});

const NAMED: readonly (readonly [names: string, typed: string, name: string])[] = [
  ["german", "leere Saiten, 5 min", "open strings"],
  ["german", "Naturtöne, 5 min", "lip slurs"],
  ["german", "Pizzicato linke Hand, 5 min", "left hand pizzicato"],
  ["french", "cordes à vide, 5 min", "open strings"],
  ["french", "pizz main gauche, 4 min", "left hand pizzicato"],
  ["french", "sauts d'octave, 4 min", "octave leaps"],
  ["dutch", "losse snaren, 5 min", "open strings"],
  ["dutch", "positiewissels, 5 min", "shifting"],
  ["italian", "corde vuote, 5 min", "open strings"],
  ["spanish", "cuerdas al aire, 5 min", "open strings"],
];

test("a technique is one, whatever language it is named in", () => {
  const subjects = NAMED.map(([names, typed]) =>
    attemptsOfJournal(journalOf(`names ${names}\n\n2026-03-02 Mon\n${typed}\n`)).map(({ subject }) => subject),
  );
  expect(subjects).toEqual(NAMED.map(([, , name]) => [name]));
});

test("each technique of another language has its English row", () => {
  const english = Object.values(ENGLISH_TECHNIQUES).flatMap((rows) =>
    rows.map((words: string) => words.split(" | ")[0]),
  );
  for (const table of [DUTCH_TECHNIQUES, FRENCH_TECHNIQUES, GERMAN_TECHNIQUES, ITALIAN_TECHNIQUES, SPANISH_TECHNIQUES])
    expect(Object.keys(table).filter((name) => !english.includes(name))).toEqual([]);
  expect(new Set(english).size).toBe(english.length);
});

test("its attempts count by its name", () => {
  const attempts = attemptsOfJournal(journalOfLine("lip slurs, at 60 clean, at 66 nearly"));
  expect(attempts.map(({ subject, pattern, reached }) => ({ subject, pattern, reached }))).toEqual([
    { subject: "lip slurs", pattern: null, reached: true },
    { subject: "lip slurs", pattern: null, reached: false },
  ]);
});

test("completion offers it at the beginning of a line", () => {
  const journal = journalOfLine("lip");
  const labels = completionsAt(journal, URI, { line: 1, character: 3 }, TODAY).map(({ label }) => label);
  expect(labels).toEqual(expect.arrayContaining(["lip slurs", "lip trills"]));
});

test("the hover says when it was last practised", () => {
  const journal = journalOf("2026-03-01 Sun\nlip slurs, at 60 clean\n\n2026-03-02 Mon\nlip slurs, at 66\n");
  expect(hoverAt(journal, URI, { line: 4, character: 2 }, { today: TODAY })?.markdown).toContain("60 clean");
});

test("the format reference names every technique and activity", () => {
  const names = TERMS.flatMap(({ words, meaning }) =>
    meaning.type === "technique" || meaning.type === "activity" ? [words[0]!] : [],
  );
  expect(names.length).toBeGreaterThan(100);
  expect(names.filter((name) => !REFERENCE.includes(`\`${name}\``))).toEqual([]);
});
