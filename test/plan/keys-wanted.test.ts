import { Key, Scale } from "tonal";
import { describe, expect, test } from "vitest";
import { declaredLines } from "../../server/journal/declared-lines.ts";
import type { Journal } from "../../server/journal/journal.ts";
import { printName } from "../../server/music/notes/note.ts";
import { homeKeyOf, neighboursOf } from "../../server/plan/home-keys.ts";
import { needsInWords, whatIsWanted } from "../../server/plan/key-words.ts";
import { keysWanted } from "../../server/plan/keys-wanted.ts";
import { day, journalOf, journalOfFiles } from "./written.ts";

const TODAY = "2026-03-30";

/** What is wanted on 2026-03-30, each with a tick where it was played lately. */
function wanted(text: string | Journal, today = TODAY): string[] {
  const journal = typeof text === "string" ? journalOf(text) : text;
  const needs = keysWanted(journal, declaredLines(journal), day(today));
  return needsInWords(journal, needs, day(today)).map(({ played, sentence }) => `${played ? "✓ " : ""}${sentence}`);
}

/** The sentences that have a word in them. */
function having(word: string, text: string): string[] {
  return wanted(text).filter((sentence) => sentence.includes(word));
}

const GROUND = 'piece "Ground in G minor" as Ground: G minor\n';
/** A line played so many days before 2026-03-30. */
const ago = (days: number, line: string) => {
  const date = new Date(Date.UTC(2026, 2, 30 - days)).toISOString().slice(0, 10);
  return `${date}\n  ${line}\n`;
};

test("a piece's own key, and those next to it", () => {
  expect(wanted(GROUND + ago(11, "G harmonic minor, slow") + ago(1, "C minor arpeggio, slow"))).toEqual([
    "✓ Ground is in G minor: last played on 19 March.",
    "D minor is next to the key of Ground: not played yet.",
    "✓ C minor is next to the key of Ground: last played yesterday.",
  ]);
});

describe("what meets the key of a piece", () => {
  const isMet = (line: string, piece = GROUND) => wanted(piece + ago(2, line))[0]!.startsWith("✓");

  test("any form of its minor, an arpeggio, a chord in it, a chain", () => {
    for (const line of [
      "G minor",
      "G harmonic minor",
      "G melodic minor, thirds",
      "G minor arpeggio",
      "G minor seventh",
    ])
      expect(isMet(`${line}, slow`), line).toBe(true);
    expect(isMet("D dominant seventh, slow")).toBe(true); // the dominant of G minor and of G major
    expect(isMet("dominant seventh in G minor, slow")).toBe(true);
    expect(isMet("F# diminished seventh, slow")).toBe(true); // on the leading note
    expect(isMet("C minor > G minor > D minor, slow")).toBe(true);
    expect(isMet("circle of fifths, slow")).toBe(false); // majors
  });

  test("not another mode, another key, a piece, or what was only planned", () => {
    for (const line of ["G major", "Bb major", "G dorian", "G major arpeggio"])
      expect(isMet(`${line}, slow`), line).toBe(false);
    expect(isMet("Ground, at 60 clean")).toBe(false);
    expect(wanted(`${GROUND}2026-03-29, plan\n  G minor, slow\n`)[0]).toBe("Ground is in G minor: not played yet.");
  });

  test("of a mode that mode", () => {
    const dorian = 'piece "Branle": D dorian\n';
    expect(isMet("D dorian, slow", dorian)).toBe(true);
    expect(isMet("D minor, slow", dorian)).toBe(false);
    expect(having("next to", dorian).map((each) => each.split(" is ")[0])).toEqual(["A dorian", "G dorian"]);
  });

  test("within 14 days, a neighbour within 28", () => {
    const first = (days: number) => wanted(GROUND + ago(days, "G minor, slow"))[0]!.startsWith("✓");
    expect([14, 15].map(first)).toEqual([true, false]);
    const next = (days: number) => having("D minor", GROUND + ago(days, "D minor, slow"))[0]!.startsWith("✓");
    expect([28, 29].map(next)).toEqual([true, false]);
  });

  test("not after the day that is asked about", () => {
    expect(wanted(GROUND + ago(-1, "G minor, slow"))[0]).toBe("Ground is in G minor: not played yet.");
  });
});

// Against tonal, https://github.com/tonaljs/tonal: the keys a fifth from one, where they have seven accidentals at most;
// beyond those the key on the same black or white key with fewer, which is common practice.
describe("neighbours", () => {
  const { kinds: _, ...rest } = journalOf("").conventions("file:///j/a.practice");
  const conventions = { kinds: new Map(), ...rest };
  const next = (tonic: string, kind: "major" | "natural minor") => {
    const [letter = "", signs = ""] = [tonic.slice(0, 1), tonic.slice(1)];
    const alter = signs.startsWith("b") ? -signs.length : signs.length;
    const scale = { type: "scale", tonic: { letter, alter }, kind, declared: false } as never;
    return neighboursOf(homeKeyOf(scale), conventions).map((key) => printName(key.scale.tonic));
  };

  test.each(["C", "G", "D", "A", "E", "B", "F#", "F", "Bb", "Eb", "Ab", "Db", "Gb"])("of %s major", (tonic) => {
    const around = Key.majorKey(tonic).scale; // its fourth and fifth degrees are those tonics
    expect(next(tonic, "major")).toEqual([around[4], around[3]]);
  });

  test.each(["A", "E", "B", "F#", "C#", "G#", "D", "G", "C", "F", "Bb", "Eb"])("of %s minor", (tonic) => {
    const around = Scale.get(`${tonic} minor`).notes;
    expect(next(tonic, "natural minor")).toEqual([around[4], around[3]]);
  });

  test("of keys with seven accidentals", () => {
    expect(next("C#", "major")).toEqual(["Ab", "F#"]);
    expect(next("Cb", "major")).toEqual(["Gb", "E"]);
    expect(next("A#", "natural minor")).toEqual(["F", "D#"]);
    expect(next("Ab", "natural minor")).toEqual(["Eb", "C#"]);
  });
});

describe("the range of a piece", () => {
  const head = `instrument alto recorder\npiece "Ground": G minor, range G4 to F6\n`;
  const check = (lines: string, expected: string) => expect(having("goes ", head + lines)[0]).toBe(expected);

  test("is wanted of the lines of its key, to within a tone of both ends", () => {
    check("", "Ground goes from G4 to F6: its scale was not played in the last 14 days.");
    check(ago(3, "G minor, slow"), "Ground goes up to F6; its scale went up to G5.");
    check(ago(3, "G minor, from Bb4 to Eb6, slow"), "Ground goes down to G4; its scale went down to Bb4.");
    check(
      ago(3, "G minor, from A4 to Eb6, slow"),
      "✓ Ground goes from G4 to F6: its scale last went as far on 27 March.",
    );
    check(ago(3, "G minor, 2 octaves, slow"), "✓ Ground goes from G4 to F6: its scale last went as far on 27 March.");
    check(
      ago(3, "D minor, 2 octaves, slow"),
      "Ground goes from G4 to F6: its scale was not played in the last 14 days.",
    );
    check(ago(3, "G minor, from C5 to C6, slow"), "Ground goes from G4 to F6; its scale went from C5 to C6.");
  });

  test("may be gone through in two lines", () => {
    const lines = ago(5, "G minor, slow") + ago(3, "G minor, from D5 to F6, slow");
    check(lines, "✓ Ground goes from G4 to F6: its scale last went as far on 25 March.");
  });

  test("within 14 days", () => {
    check(ago(14, "G minor, 2 octaves, slow"), "✓ Ground goes from G4 to F6: its scale last went as far on 16 March.");
    check(
      ago(15, "G minor, 2 octaves, slow"),
      "Ground goes from G4 to F6: its scale was not played in the last 14 days.",
    );
  });

  test("is not wanted beyond the instrument", () => {
    const low = head.replace("G4 to F6", "C4 to F6");
    expect(having("goes ", low)[0]).toContain("Ground goes from F4 to F6");
  });

  test("is said without names of notes where they are hidden, and no finger change is", () => {
    const hidden = `hide notes\n${head}`;
    expect(having("goes ", hidden)).toEqual(["Ground goes far: its scale was not played in the last 14 days."]);
    expect(having("goes ", hidden + ago(3, "G minor, slow"))).toEqual([
      "Ground goes farther than its scale went in the last 14 days.",
    ]);
  });
});

describe("the hardest finger change of a piece's scale", () => {
  const head = (instrument: string) => `instrument ${instrument}\npiece "Ground": G minor, range G4 to G5\n`;
  const change = /^(?:✓ )?The hardest finger change of G minor, as far as Ground goes, is (\w+) to (\w+): (.*)\.$/;
  const found = (text: string) => wanted(text).flatMap((each) => change.exec(each)?.slice(1, 4) ?? []);

  test("is wanted on a recorder alone, over a range", () => {
    const [from, to, last] = found(head("alto recorder"));
    expect([from, to]).not.toContain(undefined);
    expect(last).toBe("not played in the last twelve weeks");
    expect(found(head("violin"))).toEqual([]);
    expect(found(head("").replace("instrument \n", ""))).toEqual([]);
    expect(found(head("alto recorder").replace(", range G4 to G5", ""))).toEqual([]);
  });

  test("is met by a scale or a figure that has it, either way, within 14 days", () => {
    const [from, to] = found(head("alto recorder"));
    const [last] = [ago(14, `notes ${to} ${from}, back and forth, slow`)];
    expect(found(head("alto recorder") + last)[2]).toBe("last played on 16 March");
    const isMet = (lines: string) =>
      wanted(head("alto recorder") + lines).some((each) => each.startsWith("✓ The hardest finger change"));
    expect(isMet(last!)).toBe(true);
    expect(isMet(ago(15, `notes ${from} ${to}, back and forth, slow`))).toBe(false);
    expect(isMet(ago(3, "G minor, slow"))).toBe(true);
    expect(isMet(ago(3, "Ground, at 60 clean"))).toBe(false);
    expect(isMet(ago(3, "G minor, slow, on violin"))).toBe(false);
  });
});

describe("which pieces want something", () => {
  test("those in hand: not what lies ahead, was left long ago, or whose day has passed", () => {
    const key = (terms: string, lines = "") => having("is in", `piece "Ground": G minor${terms}\n${lines}`).length;
    const played = ago(20, "Ground, at 60 clean");
    expect(key("")).toBe(1);
    expect(key(", from 2026-04-30")).toBe(0);
    expect(key(", due 2026-04-30")).toBe(1);
    expect(key("", ago(83, "Ground, at 60 clean"))).toBe(1);
    expect(key("", ago(84, "Ground, at 60 clean"))).toBe(0);
    expect(key(", due 2026-03-20", played)).toBe(0);
    expect(key(", due 2026-03-01", played)).toBe(1); // it was played since
  });

  test("a likely key stands for a piece without one", () => {
    const text = 'piece "Branle": last note G, 2 flats\n';
    expect(wanted(text)[0]).toBe("Branle is probably in G minor: not played yet.");
  });

  test("pieces in one key share a sentence, and no key is asked for twice", () => {
    const text = `${GROUND}piece "Air": D minor\nstudy "Stairs": G minor\n`;
    expect(wanted(text)).toEqual([
      "Ground and Stairs are in G minor: not played yet.",
      "Air is in D minor: not played yet.",
      "C minor is next to the key of Ground: not played yet.",
      "A minor is next to the key of Air: not played yet.",
    ]);
  });

  test("movements want their own", () => {
    const text = `piece "Sonata" as Sonata: D minor\nmovement "Sonata" 1 "Largo": D minor\nmovement "Sonata" 2: F major\n`;
    expect(having("is in", text + ago(2, "Sonata, mvt 2, at 60 clean"))).toEqual([
      "Sonata (movement 2) is in F major: not played yet.",
    ]);
    expect(having("is in", text + ago(2, "Sonata, mvt 1, at 60 clean"))).toEqual([
      "Sonata (Largo) is in D minor: not played yet.",
    ]);
  });
});

describe("what says nothing of keys", () => {
  test("asks for nothing", () => {
    expect(wanted("")).toEqual([]);
    expect(wanted('piece "Ground"\n')).toEqual([]);
    expect(wanted('piece "Ground": 1 bars, range G4 to G4\n')).toEqual([]);
    expect(wanted(ago(1, "C major, slow"))).toEqual([]);
  });

  test("nor for more than it says", () => {
    expect(wanted('piece "Ground": G minor, 1 bar, range G to F\n')).toHaveLength(3);
    expect(wanted('instrument alto recorder\npiece "Ground": G minor, range G4 to G4\n')).toHaveLength(3);
    expect(wanted('scale "mine": 1 2 3 4 5 6 7 8\npiece "Ground": "mine" on G\n').length).toBeLessThan(2);
    expect(wanted('piece "Ground": C whole-tone\n')).toEqual(["Ground is in C whole-tone: not played yet."]);
  });
});

test("names of keys are in the journal's language", () => {
  expect(wanted('names german\npiece "Air": g-Moll\n')).toEqual([
    "Air is in g-Moll: not played yet.",
    "d-Moll is next to the key of Air: not played yet.",
    "c-Moll is next to the key of Air: not played yet.",
  ]);
});

test("the order of the files changes nothing, and no sentence nags", () => {
  const files = {
    "journal.practice": `instrument alto recorder\n${GROUND}piece "Air": D major, range D5 to E6\n`,
    "a.practice": ago(20, "G minor, slow") + ago(1, "A major, slow"),
    "b.practice": ago(3, "D major, 2 octaves, slow"),
  };
  const inOrder = wanted(journalOfFiles(files));
  expect(inOrder.length).toBeGreaterThan(6);
  expect(wanted(journalOfFiles(Object.fromEntries(Object.entries(files).reverse())))).toEqual(inOrder);
  for (const sentence of inOrder) expect(sentence).not.toMatch(/%|\bwill\b|\bmust\b|\bshould\b|\d{4}-\d\d/);
});

test("what is wanted has a name for scripts", () => {
  const journal = journalOf(`instrument alto recorder\npiece "Ground": G minor, range G4 to F6\n`);
  const needs = keysWanted(journal, declaredLines(journal), day(TODAY));
  expect(needs.map((need) => `${need.what}: ${whatIsWanted(journal, need)}`).slice(0, 4)).toEqual([
    "key: G minor",
    "neighbour: D minor",
    "neighbour: C minor",
    "range: G4 to F6",
  ]);
});
