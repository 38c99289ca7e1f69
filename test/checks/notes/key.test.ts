import { Key } from "tonal";
import { describe, expect, test } from "vitest";
import { checkKey } from "../../../server/checks/notes/key.ts";
import { LETTERS, printName } from "../../../server/music/notes/note.ts";
import { ENGLISH_NAMES } from "../../../server/music/notes/note-names.ts";
import { mended, subject, underlined } from "./claims.ts";

/** A subject, what is said of its key, and the subject after the fix; nothing of a key in use. */
function check(on: string, message?: string, after?: string): void {
  const findings = checkKey(subject(on), { start: 0, end: on.length }, ENGLISH_NAMES);
  const expected =
    message === undefined ? [] : [`${"^".repeat(on.length)} theoretical-key: ${message}`, `-> Change to ${after}`];
  expect(underlined(on, findings)).toBe([on, ...expected].join("\n"));
  if (findings[0]) expect(mended(on, findings[0].fixes[0]!)).toBe(after);
}

const TONICS = LETTERS.flatMap((letter) => [-2, -1, 0, 1, 2].map((alter) => printName({ letter, alter })));

test("on all 35 tonics, a key is told when it has more than seven accidentals by npm `tonal`, and the mend has at most six", () => {
  let told = 0;
  for (const tonic of TONICS) {
    for (const mode of ["major", "minor"] as const) {
      const alteration = (on: string) => (mode === "major" ? Key.majorKey(on) : Key.minorKey(on)).alteration;
      const kind = mode === "major" ? "major" : "natural minor";
      const findings = checkKey(subject(`${tonic} ${kind}`), { start: 0, end: 5 }, ENGLISH_NAMES);
      expect(findings.length, `${tonic} ${mode}`).toBe(Math.abs(alteration(tonic)) > 7 ? 1 : 0);
      if (!findings[0]) continue;
      told++;
      const count = `${Math.abs(alteration(tonic))} ${alteration(tonic) > 0 ? "sharps" : "flats"}`;
      expect(findings[0].message).toContain(`would need ${count} (`);
      const usual = findings[0].fixes[0]!.edits[0]!.text.split(" ")[0]!;
      expect(Math.abs(alteration(usual)), `${tonic} ${mode} to ${usual}`).toBeLessThanOrEqual(6);
      expect(findings[0].fixes[0]!.safe).toBe(false);
    }
  }
  expect(told).toBe(40);
});

describe("what is said (usual keys: common practice, at most seven accidentals)", () => {
  test("of keys in use, nothing", () => {
    for (const on of ["F# major", "Gb major", "C# major", "Cb major", "Ab minor", "G# harmonic minor", "D# dorian"])
      check(on);
    for (const on of ["Cb whole-tone", "C# chromatic", "A# octatonic", "F# major arpeggio", "C diminished seventh"])
      check(on);
  });
  test("of major and minor, with the doubles", () => {
    check(
      "G# major",
      "G# major would need 8 sharps (F double sharp). Its usual name is Ab major, 4 flats.",
      "Ab major",
    );
    check(
      "D# major",
      "D# major would need 9 sharps (F and C double sharp). Its usual name is Eb major, 3 flats.",
      "Eb major",
    );
    check("Fb major", "Fb major would need 8 flats (B double flat). Its usual name is E major, 4 sharps.", "E major");
    check(
      "Fb harmonic minor",
      "Fb harmonic minor would need 11 flats (B, E, A and D double flat). Its usual name is E harmonic minor, 1 sharp.",
      "E harmonic minor",
    );
    check(
      "B## major",
      "B## major would need 19 sharps (F, C, G, D and A triple sharp, E and B double sharp). Its usual name is Db major, 5 flats.",
      "Db major",
    );
  });
  test("of modes, by their own signature", () => {
    check("Fb lydian");
    check(
      "Ebb dorian",
      "Ebb dorian would need 12 flats (B, E, A, D and G double flat). Its usual name is D dorian, no accidentals.",
      "D dorian",
    );
  });
  test("of scales without a key, by the tonic", () => {
    check(
      "E# whole-tone",
      "E# is the tonic of no major or minor key in use. Its usual name is F whole-tone.",
      "F whole-tone",
    );
    check(
      "Fb chromatic",
      "Fb is the tonic of no major or minor key in use. Its usual name is E chromatic.",
      "E chromatic",
    );
    check(
      "E# (1 b2 3 4 5 b6 7)",
      'E# is the tonic of no major or minor key in use. Its usual name is "own" on F.',
      '"own" on F',
    );
  });
  test("the blues, the pentatonic and chords of four notes have no usual name, and sound as another", () => {
    check("Db blues");
    check("Gb blues");
    check("A# blues");
    check(
      "Db minor pentatonic",
      "Db minor pentatonic would need 8 flats (B double flat). It sounds as C# minor pentatonic, 4 sharps.",
      "C# minor pentatonic",
    );
    check(
      "G# major seventh",
      "G# major seventh would need 8 sharps (F double sharp). It sounds as Ab major seventh, 4 flats.",
      "Ab major seventh",
    );
    check("Fb altered", "Fb is the tonic of no major or minor key in use. It sounds as E altered.", "E altered");
  });
  test("of chords, by their key, in the same words", () => {
    check(
      "G# major arpeggio",
      "G# major arpeggio would need 8 sharps (F double sharp). Its usual name is Ab major arpeggio, 4 flats.",
      "Ab major arpeggio",
    );
    check(
      "D# dominant seventh",
      "D# dominant seventh would need 8 sharps (F double sharp). It sounds as Eb dominant seventh, 4 flats.",
      "Eb dominant seventh",
    );
    const inKey = { ...subject("D# dominant seventh"), key: { letter: "G", alter: 1 } } as ReturnType<typeof subject>;
    const [found] = checkKey(inKey, { start: 0, end: 22 }, ENGLISH_NAMES);
    expect(found!.fixes[0]!.edits[0]!.text).toBe("dominant seventh in Ab");
  });
});
