import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { checkSignature, describeAcceptedSignature } from "../../../server/checks/notes/signature-claim.ts";
import { ENGLISH_NAMES } from "../../../server/music/notes/note-names.ts";
import { describeFifths } from "../../../server/music/scales/signature.ts";
import modes from "../../reference/modes.json" with { type: "json" };
import { mended, subject, underlined } from "./claims.ts";

/** `5#`, `2♭`, `3 flats`, `no accidentals` as a number of fifths. */
function fifthsOf(claim: string): number {
  if (claim === "no accidentals") return 0;
  return Number.parseInt(claim, 10) * (/[b♭]|flat/u.test(claim) ? -1 : 1);
}

function found(on: string, text: string) {
  return checkSignature({ start: 0, end: text.length, fifths: fifthsOf(text), text }, subject(on), on, ENGLISH_NAMES);
}

/** What is said of a claimed signature, and the signature after the fix; nothing of a right one. */
function check(on: string, claim: string, message?: string, after?: string): void {
  const findings = found(on, claim);
  const expected =
    message === undefined ? [] : [`${"^".repeat(claim.length)} key-signature: ${message}`, `-> Change to ${after}`];
  expect(underlined(claim, findings)).toBe([claim, ...expected].join("\n"));
  if (findings[0]) {
    expect(mended(claim, findings[0].fixes[0]!)).toBe(after);
    expect(found(on, after!)).toEqual([]);
  }
}

/** Of all signatures up to seven, only those given are right, and every other is mended to one of them. */
const only = (on: string, right: readonly number[]): void => {
  for (let fifths = -7; fifths <= 7; fifths++) {
    const text = describeFifths(fifths);
    const findings = found(on, text);
    expect(findings.length, `${on}: ${text}`).toBe(right.includes(fifths) ? 0 : 1);
    if (findings[0]) expect(right, on).toContain(fifthsOf(mended(text, findings[0].fixes[0]!)));
    expect(describeAcceptedSignature(fifths, subject(on), ENGLISH_NAMES) !== undefined, on).toBe(
      right.includes(fifths),
    );
  }
};

describe("against references", () => {
  test("the thirty keys of test/reference/keysignatures.tsv; harmonic and melodic minor have natural minor's", () => {
    const text = readFileSync(new URL("../../reference/keysignatures.tsv", import.meta.url), "utf8");
    const rows = text.trim().split("\n").slice(1);
    for (const [tonic, mode, fifths] of rows.map((row) => row.split("\t"))) {
      const forms = mode === "major" ? ["major"] : ["natural minor", "harmonic minor", "melodic minor", "jazz minor"];
      for (const form of forms) only(`${tonic} ${form}`, [Number(fifths)]);
    }
    expect(rows).toHaveLength(30);
  });
  test("modes have their own and their parallel's, by the convention told in test/reference/modes.json", () => {
    const offsets: Readonly<Record<string, number>> = modes.offsets_from_major_fifths;
    for (const { tonic, mode, fifths_modal } of modes.modes) {
      const major = fifths_modal - offsets[mode]!;
      const isOnMajorSide = ["ionian", "lydian", "mixolydian"].includes(mode);
      only(`${tonic} ${mode}`, [fifths_modal, isOnMajorSide ? major : major - 3]);
    }
    expect(modes.modes).toHaveLength(49);
  });
});

describe("what is said (common practice, no source)", () => {
  test("the right accidentals, and what the claimed ones belong to", () => {
    check(
      "F# major",
      "5#",
      "F# major has 6 sharps (F# C# G# D# A# E#), not 5 sharps. 5 sharps belong to B major and G# minor.",
      "6#",
    );
    check(
      "A minor",
      "1 sharp",
      "A minor has no accidentals, not 1 sharp. 1 sharp belongs to E minor and G major.",
      "no accidentals",
    );
    check(
      "F major",
      "14 sharps",
      "F major has 1 flat (Bb), not 14 sharps. No key signature has more than seven accidentals.",
      "1 flat",
    );
  });
  test("the fix keeps the style", () => {
    check(
      "F# major",
      "5♯",
      "F# major has 6 sharps (F# C# G# D# A# E#), not 5 sharps. 5 sharps belong to B major and G# minor.",
      "6♯",
    );
    check("F major", "2♭", "F major has 1 flat (Bb), not 2 flats. 2 flats belong to Bb major and G minor.", "1♭");
    check(
      "F major",
      "2 flats",
      "F major has 1 flat (Bb), not 2 flats. 2 flats belong to Bb major and G minor.",
      "1 flat",
    );
    const untold = checkSignature({ start: 4, end: 6, fifths: -2 }, subject("F major"), "F major", ENGLISH_NAMES);
    expect(untold[0]!.fixes[0]!.edits).toEqual([{ start: 4, end: 6, text: "1b" }]);
  });
  test("raised notes of minor are not in the signature", () => {
    check(
      "D harmonic minor",
      "1 sharp",
      "D harmonic minor has 1 flat (Bb), not 1 sharp. It has the signature of D minor; C# is written with accidentals. 1 sharp belongs to E minor and G major.",
      "1 flat",
    );
    check(
      "D melodic minor",
      "2#",
      "D melodic minor has 1 flat (Bb), not 2 sharps. It has the signature of D minor; B and C# are written with accidentals. 2 sharps belong to B minor and D major.",
      "1b",
    );
  });
  test("a mode may be written in two", () => {
    check("D dorian", "no accidentals");
    check("D dorian", "1b");
    check(
      "D dorian",
      "2#",
      "D dorian has no accidentals, or 1 flat as D minor has, not 2 sharps. 2 sharps belong to B minor and D major.",
      "no accidentals",
    );
  });
  test("a chord carries its key's; the dominant seventh that of major or minor", () => {
    check("D minor arpeggio", "1b");
    check("A dominant seventh", "2#");
    check("A dominant seventh", "1b");
    check(
      "A dominant seventh",
      "3#",
      "A dominant seventh has 2 sharps (F# C#), or 1 flat as D minor has, not 3 sharps. 3 sharps belong to A major and F# minor.",
      "2#",
    );
  });
  test("what belongs to no key has no accidentals", () => {
    for (const on of ["C chromatic", "C whole-tone", "C octatonic", "C augmented arpeggio"]) {
      check(on, "no accidentals");
      const message = `${on} belongs to no key and has no key signature, not 2 sharps: its sharps and flats are written before the notes.`;
      check(on, "2 sharps", message, "no accidentals");
    }
  });
  test("a diminished seventh also has that of the key in which it is the seventh degree's", () => {
    only("B diminished seventh", [0, -3]); // C minor, with B natural
    only("C# diminished seventh", [0, -1]); // D minor
    only("F# diminished seventh", [0, -2]); // G minor
    only("C diminished seventh", [0, 4]); // D flat minor is not in use: C sharp minor
    check(
      "B diminished seventh",
      "2#",
      "B diminished seventh has no accidentals, or 3 flats as C minor has, not 2 sharps. 2 sharps belong to D major and B minor.",
      "no accidentals",
    );
  });
  test("the blues may be written with none", () => {
    only("A blues", [0]);
    only("D blues", [0, -1]);
    only("D major blues", [0, 2]);
    only("D minor pentatonic", [-1]);
  });
  test("harmonic major, lydian dominant, double harmonic: the major key's on the tonic, or none", () => {
    for (const kind of ["harmonic major", "lydian dominant", "double harmonic"]) only(`D ${kind}`, [0, 2]);
  });
  test("phrygian dominant and hungarian minor: the minor key's on the tonic, or their own accidentals", () => {
    only("D hungarian minor", [0, -1]);
    only("D phrygian dominant", [0, -1, -2]); // the last is that of G harmonic minor, whose fifth mode it is
  });
  test("altered and bebop: none, or the parent's", () => {
    only("B altered", [0, -3]); // C jazz minor begun on its seventh degree
    only("G bebop dominant", [0, 1]); // that of C major is none, and that of G major as mixolydian is written
    only("D bebop dominant", [0, 1, 2]);
    only("D bebop major", [0, 2]);
  });
  test("a declared scale: the major or minor key's on its tonic, by its third, or none", () => {
    only("D (1 b2 3 #4 5 b6 7)", [0, 2]);
    only("D (1 2 b3 #4 5 6 b7)", [0, -1]);
    only("D (1 2 4 5 b7)", [0, 2, -1]); // no third says which
    only("D (cents 0 150 300 500 700 850 1000)", [0, 2, -1]);
  });
  test("a theoretical key has the signature that it would need", () => {
    check("G# major", "8 sharps");
  });
});

test("which of the right signatures it is", () => {
  const says = (on: string, claim: string, what: string | undefined) =>
    expect(describeAcceptedSignature(fifthsOf(claim), subject(on), ENGLISH_NAMES)).toBe(what);
  says("F# major", "6#", "the key signature of F# major");
  says("F# major", "5#", undefined);
  says("D dorian", "no accidentals", "the signature of D dorian itself, which holds all its notes");
  says(
    "D dorian",
    "1b",
    "the signature of D minor, on the same tonic: what differs in D dorian is written with accidentals",
  );
  says(
    "C lydian",
    "no accidentals",
    "the signature of C major, on the same tonic: what differs in C lydian is written with accidentals",
  );
  says("A dominant seventh", "2#", "the signature of D major");
  says("A dominant seventh", "1b", "the signature of D minor, which has this chord with its leading note raised");
  says("C chromatic", "no accidentals", "no key signature, as it belongs to no key");
});
