import { expect, test } from "vitest";
import { Journal } from "../../../server/journal/journal.ts";
import { createDocument } from "../../../server/syntax/document/document.ts";
import { parseLine } from "../../../server/syntax/line/parse-line.ts";
import { lineText, read, rowsOf } from "./print.ts";

// What is set or said is no practice. The lines are invented.

function check(rows: string): void {
  for (const [typed, meaning] of rowsOf(rows)) expect([typed, lineText(read(typed))]).toEqual([typed, meaning]);
}

test("by when, or for whom, something is set stands at the head of the line", () => {
  check(`
    By Tues: Scherzo at 92, Finale bars 1-40     => set
    this week: G scale, D scale, NOT line 4      => set
    this week: G scale 80 ok                     => entry: G major (major unsaid) | unknown this week | tempo 80 | outcome ok
    this week: 5 h 20                            => total
    set Femi: arp of F, study 9                  => set
    Set Amy G maj + Minuet 1st half, 5 mins a day => set
    Set Dance, 80 ok                             => entry: title Set Dance (undeclared) | tempo 80 | outcome ok
  `);
});

test("a form of address and a name say who speaks, and quotes with a pronoun what was said", () => {
  check(`
    Mrs V.: air before tongue. Let the jaw go            => said
    "Your vibrato sits on top" – let it start in the air => prose | remark "let it start in the air"
    "You are my sunshine", at 60                         => entry: title You are my sunshine (undeclared) | tempo 60
  `);
});

test("in the words of the journal", () => {
  expect(typeIn("german", "zum Sonntag: Ciacona bis S. 4, Vorspiel zu 165")).toBe("set");
  expect(typeIn("german", "Hr. V.: Luft vor Zunge. Durchführung nicht eilen")).toBe("said");
  expect(typeIn("german", "Fr: D-Dur 80 gut")).toBe("entry");
});

function typeIn(names: string, text: string): string {
  const head = createDocument(`names ${names}\n`);
  const journal = new Journal("file:///j", new Map([["file:///j/journal.practice", head]]));
  return parseLine(text, { ...journal.partContext, head: false }).type;
}
