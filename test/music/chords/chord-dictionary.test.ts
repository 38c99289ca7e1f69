import teoria from "teoria";
import { describe, expect, test } from "vitest";
import { chordById, chordNames } from "../../../server/music/chords/chord.ts";
import { CHORD_SYMBOLS } from "../../../server/music/chords/chord-dictionary.ts";
import { LETTERS, type NoteName, printName } from "../../../server/music/notes/note.ts";
import { symbolKey } from "../../../server/syntax/words/joined-key.ts";

/**
 * Chords by their symbols: the dictionary's intervals, spelled by us, before npm `teoria`, which was written apart from
 * both. The order of the notes is left aside, as ours lie within the octave.
 */

const ROOTS: readonly NoteName[] = LETTERS.flatMap((letter) => [-1, 0, 1].map((alter) => ({ letter, alter })));

function byTeoria(root: NoteName, symbol: string): readonly string[] {
  const notes = teoria
    .note(`${printName(root)}4`)
    .chord(symbol)
    .notes();
  return notes.map((note) =>
    printName({ letter: note.name().toUpperCase() as NoteName["letter"], alter: note.accidentalValue() }),
  );
}

/** `same`, `other`, or `unread` where teoria knows no such symbol. */
function verdict(root: NoteName, id: string, symbol: string): "same" | "other" | "unread" {
  const ours = chordNames(root, chordById(id)!).map(printName);
  try {
    return [...new Set(byTeoria(root, symbol))].sort().join() === [...ours].sort().join() ? "same" : "other";
  } catch {
    return "unread";
  }
}

/** Of `teoria`'s readings that differ each has a ground: it drops what it cannot read, or fills in what we leave out. */
const DIFFERING = {
  "of `maj` it makes the seventh, of a b6, #4, add2, add4 or add6 nothing, or a sixth in place of the fifth":
    "maj M7b6 add6 7add6 maj#4 7#4 mMaj7b6 add2 m7add4 +add#9 9#4 7b6 mb6M7 mb6b9 m7#5 mMaj9b6 M6b5 6b5 o7M7 sus24 7b9#9",
  "it has the fifth and the ninth below a thirteenth, a flat thirteenth and a sharp eleventh, the third below an eleventh":
    "7b13 M7#11 maj7#11 7#11 M6#11 6#11 7#11b13 13#9 7#9b13 11 9b13 maj13 Maj13 M7add13 13 13b5 M13#4 13#4 m13 -13 11b9 13b9 7b9b13",
  "its b5 stands in place of the fifth, the dictionary's is a #11 beside it":
    "7b5b13 7b5#9 7#9b5 9b5b13 m9#5 7b5b9 7b9b5 7b5b9b13",
};

const UNREAD =
  "^ ^#5 ° Δ ^7 h7 h °7 7no5 ^7b6 maj7+5 ^7#5 7+ 7aug 67 Δ#4 Δ#11 ^7#11 m+ m/ma7 m/maj7 m/M7 -Δ7 mΔ -^7 4 quartal madd4 7alt 9no5 13no5 9+ Madd9 2 Δ9 ^9 69 M69 ^13 Δ9#11 ^9#11 9+4 69#11 M13+4 13+4 madd9 -^9 m69 -69 m11A phryg alt7 Maddb9";

describe("every symbol of the dictionary on 21 roots", () => {
  const differing = Object.values(DIFFERING).flatMap((symbols) => symbols.split(" "));
  const unread = UNREAD.split(" ");
  const all = CHORD_SYMBOLS.flatMap(({ chord, symbols }) => symbols.map((symbol) => [chord.id, symbol] as const));
  const judged = all.filter(([, symbol]) => !differing.includes(symbol) && !unread.includes(symbol));

  test("teoria has the same notes for two thirds of them", () => {
    const not = judged.filter(([id, symbol]) => ROOTS.some((root) => verdict(root, id, symbol) !== "same"));
    expect(not).toEqual([]);
    expect(judged.length).toBeGreaterThan(100);
  });
  test("the others differ, or are not read, each for the reason that is given", () => {
    const others = all.filter(([, symbol]) => differing.includes(symbol));
    expect(others.filter(([id, symbol]) => ROOTS.some((root) => verdict(root, id, symbol) !== "other"))).toEqual([]);
    const silent = all.filter(([, symbol]) => unread.includes(symbol));
    expect(silent.filter(([id, symbol]) => ROOTS.some((root) => verdict(root, id, symbol) !== "unread"))).toEqual([]);
  });
  test("no two chords share a symbol, or a name", () => {
    const chords = new Map(all.map(([id, symbol]) => [symbolKey(symbol), id]));
    for (const [id, symbol] of all) expect([symbol, chords.get(symbolKey(symbol))]).toEqual([symbol, id]);
    expect(new Set(CHORD_SYMBOLS.map(({ chord }) => chord.id)).size).toBe(CHORD_SYMBOLS.length);
  });
});

// Intervals as in any book of chords: common practice, no source.
test("chords that the language has no name for, spelled and told", () => {
  const spelled = (id: string): string =>
    chordNames({ letter: "C", alter: 0 }, chordById(id)!).map(printName).join(" ");
  expect(spelled("major sixth")).toBe("C E G A");
  expect(spelled("minor sixth")).toBe("C Eb G A");
  expect(spelled("minor major seventh")).toBe("C Eb G B");
  expect(spelled("augmented seventh")).toBe("C E G# B");
  expect(spelled("suspended fourth")).toBe("C F G");
  expect(spelled("dominant ninth")).toBe("C D E G Bb");
  expect(chordById("minor sixth")!.sentence).toBe(
    "The minor sixth: a minor third, a perfect fifth and a major sixth above the root.",
  );
});
