import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Code } from "../../server/checks/codes.ts";
import { checkNoteList } from "../../server/checks/note-list.ts";
import { fifthsOf, LETTERS, nameAtFifths, parseNote, pitchClass, printName } from "../../server/music/note.ts";
import { beside, listed, mended } from "./claims.ts";
import {
  arpeggioLists,
  majorAndMinorLists,
  modeLists,
  otherScaleLists,
  PATTERNS_LISTED,
  patternLists,
  type ReferenceList,
} from "./reference-lists.ts";

const GROUPS: readonly (readonly [string, readonly ReferenceList[]])[] = [
  ["major and minor", majorAndMinorLists()],
  ["modes", modeLists()],
  ["other scales", otherScaleLists()],
  ["arpeggios", arpeggioLists()],
  ["patterns", patternLists()],
];

/** A list as typed, and the codes that it raises. */
function check({ subject, terms }: ReferenceList, text: string, codes: readonly Code[]): void {
  const findings = checkNoteList(listed(text), beside(subject, terms));
  const shown = findings.map(({ code, message }) => `${code}: ${message}`).join("\n");
  expect(findings.map(({ code }) => code), `${subject} ${JSON.stringify(terms)}: ${text}\n${shown}`).toEqual(codes);
}

describe("every list of the references is right as it stands", () => {
  test.each(GROUPS)("%s", (_, lists) => {
    for (const list of lists) check(list, list.notes.join(" "), []);
    expect(lists.length).toBeGreaterThan(50);
  });
  test("all patterns that both have are listed, four ways on two scales", () => {
    expect(patternLists()).toHaveLength(PATTERNS_LISTED * 8);
  });
});

/** One note of a list changed. */
interface Mutation {
  readonly type: "wrong" | "respelled" | "left out" | "put in" | "no note";
  readonly list: ReferenceList;
  readonly notes: readonly string[];
}

const octaveOf = (note: string) => note.replace(/\D/gu, "");

/** Another key: the name of a random letter and accidental in place of the note, with its octave number. */
function otherKey(note: string, choice: number): string {
  const names = LETTERS.flatMap((letter) => [-1, 0, 1].map((alter) => ({ letter, alter })));
  const others = names.filter((name) => pitchClass(name) !== pitchClass(parseNote(note)!));
  return printName(others[choice % others.length]!) + octaveOf(note);
}

/** The same key by another letter, twelve fifths away; undefined where that takes more than two accidentals. */
function otherLetter(note: string): string | undefined {
  const fifths = fifthsOf(parseNote(note)!);
  const names = [fifths - 12, fifths + 12].map(nameAtFifths).filter(({ alter }) => Math.abs(alter) <= 2);
  const name = names.find(({ alter }) => Math.abs(alter) < 2) ?? names[0];
  return name && printName(name);
}

function mutated(list: ReferenceList, type: Mutation["type"], at: number, choice: number): Mutation | undefined {
  const { notes, closes } = list;
  const note = notes[at]!;
  const isLast = at === notes.length - 1;
  // Where the closing tonic is left out, what stands last may be taken for it; where it stands, it may go.
  if (isLast && (!closes || type === "left out")) return undefined;
  const put = (...by: string[]): Mutation => {
    return { type, list, notes: [...notes.slice(0, at), ...by, ...notes.slice(type === "put in" ? at : at + 1)] };
  };
  if (type === "left out") return notes.length > 3 ? put() : undefined;
  if (type === "no note") return put("H");
  if (type === "respelled") {
    const name = otherLetter(note);
    return name === undefined || octaveOf(note) !== "" ? undefined : put(name);
  }
  return put(otherKey(note, choice));
}

/** What one changed note is to raise. */
function codeFor({ type, list }: Mutation): Code {
  const isChord = /arpeggio|seventh/u.test(list.subject);
  if (type === "respelled") return "scale-spelling";
  if (list.terms.pattern) return "pattern-notes";
  if (type === "left out") return "missing-note";
  if (type === "put in") return "extra-note";
  return isChord ? "arpeggio-note" : "scale-note";
}

/** Kinds of which any spelling, or more than one, is right. */
const RESPELLED = /whole-tone|half-whole|whole-half|octatonic|blues|chromatic/u;

function someMutation(lists: readonly ReferenceList[]): fc.Arbitrary<Mutation> {
  const types = fc.constantFrom("wrong", "respelled", "left out", "put in", "no note") as fc.Arbitrary<Mutation["type"]>;
  return fc
    .tuple(fc.constantFrom(...lists), types, fc.nat(500), fc.nat(50))
    .map(([list, type, at, choice]) => mutated(list, type, at % list.notes.length, choice))
    .filter((mutation) => mutation !== undefined)
    .filter(({ type, list }) => type !== "respelled" || !RESPELLED.test(list.subject));
}

describe("one note changed is one finding, and its fix leaves none", () => {
  test.each(GROUPS)("%s", (_, lists) => {
    const types = new Set<string>();
    fc.assert(
      fc.property(someMutation(lists), (mutation) => {
        types.add(mutation.type);
        const text = mutation.notes.join(" ");
        check(mutation.list, text, [codeFor(mutation)]);
        const [found] = checkNoteList(listed(text), beside(mutation.list.subject, mutation.list.terms));
        expect(found!.fixes).toHaveLength(1);
        expect(found!.fixes[0]!.safe).toBe(mutation.type === "respelled");
        check(mutation.list, mended(text, found!.fixes[0]!), []);
      }),
      { seed: 71, numRuns: 800 },
    );
    expect(types.size).toBeGreaterThanOrEqual(4);
  });
});

test("a respelled note of a whole-tone or octatonic scale is accepted, one of a chromatic scale is told once", () => {
  const lists = GROUPS[2]![1].filter(({ subject }) => /whole-tone|half-whole|whole-half|octatonic|chromatic/u.test(subject));
  let chromatic = 0;
  for (const list of lists) {
    for (const [at, note] of list.notes.entries()) {
      const name = otherLetter(note);
      if (name === undefined) continue;
      const text = list.notes.with(at, name).join(" ");
      const findings = checkNoteList(listed(text), beside(list.subject));
      if (!list.subject.endsWith("chromatic")) {
        expect(findings, `${list.subject}: ${text}`).toEqual([]);
        continue;
      }
      // Both conventions may have the note: a scale that keeps one of them is right.
      for (const found of findings) {
        chromatic++;
        expect(found.code).toBe("chromatic-spelling");
        expect(found.fixes).toHaveLength(2);
        for (const fix of found.fixes) check(list, mended(text, fix), []);
      }
    }
  }
  expect(chromatic).toBeGreaterThan(100);
});
