import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Code } from "../../../server/checks/codes.ts";
import { checkNoteList } from "../../../server/checks/notes/note-list.ts";
import { fifthsOf, LETTERS, nameAtFifths, parseNote, pitchClass, printName } from "../../../server/music/notes/note.ts";
import { times } from "../../support/random-runs.ts";
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
  expect(
    findings.map(({ code }) => code),
    `${subject} ${JSON.stringify(terms)}: ${text}\n${shown}`,
  ).toEqual(codes);
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
  // Where the closing tonic is left out, what stands last may be taken for it, and one way of playing for another.
  if (closes ? isLast && type === "left out" : at >= notes.length - 2) return undefined;
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

const TYPES = ["wrong", "respelled", "left out", "put in", "no note"] as const;

function someMutation(lists: readonly ReferenceList[], of: readonly Mutation["type"][]): fc.Arbitrary<Mutation> {
  return fc
    .tuple(fc.constantFrom(...lists), fc.constantFrom(...of), fc.nat(500), fc.nat(50))
    .map(([list, type, at, choice]) => mutated(list, type, at % list.notes.length, choice))
    .filter((mutation) => mutation !== undefined);
}

describe("one note changed is one finding, and its fix leaves none", () => {
  test.each(GROUPS)("%s", (_, lists) => {
    const types = new Set<string>();
    fc.assert(
      fc.property(someMutation(lists, TYPES), (mutation) => {
        fc.pre(mutation.type !== "respelled" || !RESPELLED.test(mutation.list.subject));
        types.add(mutation.type);
        const text = mutation.notes.join(" ");
        check(mutation.list, text, [codeFor(mutation)]);
        const [found] = checkNoteList(listed(text), beside(mutation.list.subject, mutation.list.terms));
        expect(found!.fixes).toHaveLength(1);
        expect(found!.fixes[0]!.safe).toBe(mutation.type === "respelled");
        check(mutation.list, mended(text, found!.fixes[0]!), []);
      }),
      { seed: 71 },
    );
    expect(types.size).toBeGreaterThanOrEqual(4);
  });
});

describe("a right key by another letter, where the scale may be respelled", () => {
  const respelled = (kinds: RegExp) =>
    someMutation(
      otherScaleLists().filter(({ subject }) => kinds.test(subject)),
      ["respelled"],
    );
  test("whole-tone and octatonic scales take it in silence", () => {
    fc.assert(
      fc.property(respelled(/whole-tone|half-whole|whole-half|octatonic/u), ({ list, notes }) => {
        check(list, notes.join(" "), []);
      }),
      { seed: 72 },
    );
  });
  test("a chromatic scale tells the usual ways, two or three, unless the note stands so in one of them", () => {
    let told = 0;
    fc.assert(
      fc.property(respelled(/chromatic/u), ({ list, notes }) => {
        const text = notes.join(" ");
        const findings = checkNoteList(listed(text), beside(list.subject));
        if (findings.length === 0) return;
        told++;
        check(list, text, ["chromatic-spelling"]);
        expect([2, 3]).toContain(findings[0]!.fixes.length);
        for (const fix of findings[0]!.fixes) check(list, mended(text, fix), []);
      }),
      { seed: 73 },
    );
    expect(told).toBeGreaterThan(times(40));
  });
});
