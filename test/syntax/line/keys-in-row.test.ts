import { expect, test } from "vitest";
import { attemptsOfJournal } from "../../../server/history/attempts.ts";
import { journalOf } from "../../features/journal-text.ts";
import { lineText, read, rowsOf } from "./print.ts";

// Several keys on a line: common practice, no source.

function check(rows: string): void {
  for (const [typed, meaning] of rowsOf(rows)) expect([typed, lineText(read(typed))]).toEqual([typed, meaning]);
}

test("letters in a row are what is said before them", () => {
  check(`
    Scales h. t. in contrary motion: C, G, D  => entry: C major, G major, D major | manner hands together | manner contrary motion
    scales in C, G, D                         => entry: C major, G major, D major
    arpeggios: C F Bb at 60                   => entry: C major arpeggio, F major arpeggio, Bb major arpeggio | tempo 60
    circle of 5ths min harm flat side: d g c, at 60 => entry: D harmonic minor, G harmonic minor, C harmonic minor | unknown flat side | tempo 60
    C G D majors tongued                      => entry: C major, G major, D major | articulation tongued (single)
    Dominant sevenths on G, C, F, slow        => entry: G dominant seventh, C dominant seventh, F dominant seventh | without click slow
    whole tone from f, f#, g                  => entry: F whole-tone, F# whole-tone, G whole-tone
    d dor g mixo c ion                        => entry: D dorian, G mixolydian, C ionian
    Maj scales full range                     => entry: all major scales | span full range
  `);
});

test("letters with a tempo each", () => {
  check(`
    MAJ SCALES: C108 F108 Bb104 => entry: C major, F major, Bb major | tempo 108 | tempo 108 | tempo 104
    D96 A92                     => entry: D major, A major | tempo 96 | tempo 92
    letters D12 and E15         => prose
  `);
});

test("letters are no keys where something else has them", () => {
  check(`
    D minor: D E F G A Bb C D   => entry: D natural minor (natural unsaid) | notes D E F G A Bb C D
    scales were bad: C, G, D    => prose
    A major, G string           => entry: A major | unknown G string
  `);
});

test("symbols of chords in a row", () => {
  check(`
    F7 Bb7 Eb7 arps, at 60 => entry: F dominant seventh, Bb dominant seventh, Eb dominant seventh | tempo 60
    C6 D6                  => entry: (no subject) | note C6 | note D6
  `);
});

test("several forms of one minor", () => {
  check(`
    cm nm / hm / mm 8ths   => entry: C natural minor, C harmonic minor, C melodic minor | note value 1/8
    gm hm, at 96           => entry: G harmonic minor | tempo 96
    A minor: nat, harm, mel => entry: A natural minor, A harmonic minor, A melodic minor
    A minor, nat, harm     => entry: A natural minor, A harmonic minor
    A minor, harm          => entry: A harmonic minor
  `);
  const french = journalOf("names french\n\n2026-03-02 Mon\nsol m nat - harm - mél, at 60\n");
  expect(attemptsOfJournal(french).map(({ subject }) => subject)).toEqual([
    "sol mineur naturel",
    "sol mineur harmonique",
    "sol mineur mélodique",
  ]);
});
