import fc from "fast-check";
import { expect, test } from "vitest";
import { Journal, MARKER } from "../../server/journal/journal.ts";
import { createDocument } from "../../server/syntax/document/document.ts";

// What the files of a journal have in common is worked out once, not once for each file.

const ROOT = "file:///j";
const address = (name: string): string => `${ROOT}/${name}`;

function journalOf(texts: Readonly<Record<string, string>>): Journal {
  return new Journal(
    ROOT,
    new Map(Object.entries(texts).map(([name, text]) => [address(name), createDocument(text)] as const)),
  );
}

test("whatever files come and go, their order is the marker's first, then by name", () => {
  const name = fc.constantFrom(MARKER, "a.practice", "b.practice", "ä.practice", "x/journal.practice", "x/c.practice");
  const change = fc.array(fc.tuple(name, fc.constantFrom("", "2026-03-02\n", undefined)), { maxLength: 4 });
  fc.assert(
    fc.property(fc.array(change, { maxLength: 8 }), fc.boolean(), (changes, asked) => {
      let journal = journalOf({});
      for (const each of changes) {
        journal = journal.withAll(
          each.map(([file, text]) => [address(file), text === undefined ? text : createDocument(text)] as const),
        );
        if (asked) journal.addresses;
      }
      const markers = [...journal.files.keys()].filter((uri) => uri.endsWith(`/${MARKER}`)).sort();
      const others = [...journal.files.keys()].filter((uri) => !uri.endsWith(`/${MARKER}`)).sort();
      expect(journal.addresses).toEqual([...markers, ...others]);
    }),
    { seed: 51 },
  );
});

test("an edit sorts no addresses", () => {
  const journal = journalOf({ "b.practice": "2026-03-02\n", "a.practice": "2026-03-01\n" });
  const before = journal.addresses;
  expect(journal.with(address("a.practice"), createDocument("2026-03-01\nC major")).addresses).toBe(before);
});

test("files have their conventions in common, but for a note value of their own", () => {
  const journal = journalOf({
    [MARKER]: "instrument alto recorder\nnote value 8ths\n",
    "a.practice": "note value 16ths\n2026-03-01\n",
    "b.practice": "2026-03-02\n",
    "c.practice": "2026-03-03\n",
    "d.practice": "note value 16ths\n2026-03-04\n",
  });
  const [marker, a, b, c, d] = journal.addresses.map((uri) => journal.conventions(uri));
  expect([b, c, d]).toEqual([b, b, a]);
  expect(new Set([a, b, c, d]).size).toBe(2);
  expect([a, b].map((each) => each?.noteValue?.denominator)).toEqual([16, 8]);
  expect(marker?.noteValue?.denominator).toBe(8);
});

test("a note value of one file holds for no other", () => {
  const journal = journalOf({ "a.practice": "note value 16ths\n2026-03-01\n", "b.practice": "2026-03-02\n" });
  expect(journal.addresses.map((uri) => journal.conventions(uri).noteValue?.denominator)).toEqual([16, undefined]);
});

test("a new day in a file of its own leaves what is declared as it is", () => {
  const journal = journalOf({ [MARKER]: 'piece "Ground" as G\n', "a.practice": "2026-03-01\n" });
  const { vocabulary } = journal;
  const conventions = journal.conventions(address("a.practice"));
  const after = journal.with(address("b.practice"), createDocument("2026-03-02\nG, slow"));
  expect(after.vocabulary).toBe(vocabulary);
  expect(after.conventions(address("b.practice"))).toBe(conventions);
  const [marker] = journal.addresses;
  expect(after.with(marker!, undefined).vocabulary.title("Ground")).toBeUndefined();
});

test("what is declared once is declared in the first file that says it", () => {
  const journal = journalOf({
    "b.practice": "player Noor\n",
    "a.practice": "player Ilse\n",
    [MARKER]: "pitch A=415\n",
  });
  expect([...journal.declaredIn]).toEqual([
    ["pitch", address(MARKER)],
    ["player", address("a.practice")],
  ]);
});
