import { describe, expect, test } from "vitest";
import { Journal } from "../../server/journal/journal.ts";
import { isShared } from "../../server/journal/lending.ts";
import { createDocument } from "../../server/syntax/document/document.ts";

const MARKER = "file:///class/anna/journal.practice";

/** Anna's journal below one or several that lend, the nearest first. */
function journalBelow(lent: readonly string[], own = ""): Journal {
  return new Journal("file:///class/anna", new Map([[MARKER, createDocument(own)]])).withLent(lent.map(createDocument));
}

/** What holds for her. */
const conventions = (lent: readonly string[], own?: string) => journalBelow(lent, own).conventions(MARKER);

describe("`shared`", () => {
  test.each(["shared", "- shared -- with all pupils", "player Noor\r\n  Shared \r\nnames german", "\uFEFFshared"])(
    "is said in %j",
    (text) => expect(isShared(createDocument(text))).toBe(true),
  );

  test.each(["", "shared a stand with Ida", "-- shared", "2026-03-02\nshared", "sharedness"])(
    "is not said in %j",
    (text) => expect(isShared(createDocument(text))).toBe(false),
  );
});

describe("what is lent to a journal below", () => {
  test("names of notes, pitch, note value", () => {
    const { names, tuning, noteValue } = conventions(["shared\nnames german\npitch A=415\nnote value 16ths"]);
    expect([names.id, tuning?.a]).toEqual(["german", 415]);
    expect(noteValue).toEqual(conventions([], "note value 16ths").noteValue);
    expect(noteValue).toBeDefined();
  });

  test("patterns, scales, articulations, outcomes and phases", () => {
    const top =
      'shared\npattern "zigzag": 1 3 2 4\nscale "mine": 1 b2 3 4 5 b6 7\narticulation "ghosted": mixed\noutcome "in the zone": reached\nphase "duets first"';
    const journal = journalBelow([top]);
    const asIfOwn = journalBelow([], top.replace("shared\n", ""));
    expect([...journal.conventions(MARKER).cells.keys(), ...journal.conventions(MARKER).kinds.keys()]).toEqual([
      "zigzag",
      "mine",
    ]);
    expect(journal.vocabulary.declared).toEqual(asIfOwn.vocabulary.declared);
    expect(journal.vocabulary.declared).not.toEqual(journalBelow([]).vocabulary.declared);
  });

  test("never players, instruments, titles, concerts, aims, usual articulations or hidden notes", () => {
    const top =
      'shared\nplayer Noor\ninstrument alto recorder\npiece "Air" as Air\naim D minor, at 60\nset G major\nconcert "May": "Air"\nusual articulation slurred\nhide notes\nactivity "copying"\nfocus "thumb"';
    expect(conventions([top])).toEqual(conventions([""]));
    expect(journalBelow([top]).vocabulary.declared).toEqual(journalBelow([]).vocabulary.declared);
  });

  test("not what it declares itself, nor what a nearer one lends", () => {
    const top = 'shared\nnames german\npitch A=415\nnote value 16ths\npattern "zigzag": 1 3 2 4';
    const own = conventions([top], 'names french\npitch A=440\nnote value 8ths\npattern "zigzag": 1 2');
    expect(own).toEqual(conventions([], 'names french\npitch A=440\nnote value 8ths\npattern "zigzag": 1 2'));
    const near = conventions(["shared\nnames dutch", top]);
    expect([near.names.id, near.tuning?.a]).toEqual(["dutch", 415]);
  });

  test("no declaration of its own is one too many for it", () => {
    const journal = journalBelow(["shared\nnames german"], "names german");
    expect(journal.declaredIn.get("names")).toBe(MARKER);
    expect(journalBelow(["shared\nnames german"]).declaredIn.has("names")).toBe(false);
  });
});

test("an edit keeps what is lent, and the same lent documents keep the journal", () => {
  const lent = [createDocument("shared\nnames german")];
  const journal = journalBelow([]).withLent(lent);
  expect(journal.withLent([...lent])).toBe(journal);
  expect(journal.with(MARKER, createDocument("player Anna")).names.id).toBe("german");
  expect(journal.withLent([]).names.id).toBe("english");
});
