import { describe, expect, test } from "vitest";
import { diagnosticsOf } from "../../../server/features/diagnostics/diagnostics.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { Journal } from "../../../server/journal/journal.ts";
import { applyChanges, createDocument, textOf } from "../../../server/syntax/document/document.ts";

// What single fixes make of a text. That all of them can be made, of whatever text, is held by test/properties/fixes.test.ts.

const URI = "file:///j/a.practice";
const TODAY = parseIsoDate("2026-06-01")!;

/** The text after each fix that is offered, by the fix's title. */
function fixed(text: string): Readonly<Record<string, string>> {
  const document = createDocument(text);
  const found = diagnosticsOf(new Journal("file:///j", new Map([[URI, document]])), URI, TODAY);
  return Object.fromEntries(
    found.flatMap(({ fixes }) =>
      fixes.map(({ title, edits }) => {
        const changes = [...edits]
          .sort((a, b) => b.range.start.line - a.range.start.line || b.range.start.character - a.range.start.character)
          .map(({ range, newText }) => ({ range, text: newText }));
        return [title, textOf(applyChanges(document, changes))];
      }),
    ),
  );
}

const DAY = "2026-03-02\n";

describe("a colon before notes", () => {
  const title = "Put a colon before the notes";
  test("that stand behind the subject", () =>
    expect(fixed(`${DAY}C major arpeggio, C E G`)[title]).toBe(`${DAY}C major arpeggio: C E G`));
  test("not where they stand before it", () =>
    expect(fixed(`${DAY}C E G, C major arpeggio:`)).not.toHaveProperty(title));
});

describe("a declaration below a day is moved above it", () => {
  const title = "Move it above the first day";
  test("with its line end", () =>
    expect(fixed(`${DAY}instrument flute\nD minor`)[title]).toBe(`instrument flute\n${DAY}D minor`));
  test("as the last line, which has none", () =>
    expect(fixed(`${DAY}D minor\ninstrument flute`)[title]).toBe(`instrument flute\n${DAY}D minor`));
  test("the last line of a head that stands already stays", () =>
    expect(fixed(`player Anna\n${DAY}instrument flute`)[title]).toBe("player Anna\ninstrument flute\n2026-03-02"));
});

describe("a date in another form is changed to ISO 8601, and its weekday goes behind it", () => {
  test.each([
    ["28 Feb 2026, 40 min", "2026-02-28", "2026-02-28, 40 min"],
    ["Sat 28 Feb 2026", "2026-02-28 Sat", "2026-02-28 Sat"],
    ["Samstag, den 28. Februar 2026", "2026-02-28 Samstag", "2026-02-28 Samstag"],
    ["le 28 févr. 2026", "2026-02-28", "2026-02-28"],
    ["20260228", "2026-02-28", "2026-02-28"],
    ["Sat 28.2.2026 nice", "2026-02-28 Sat", "2026-02-28 Sat nice"],
    ["31 Feb 2026", "2026-02-28", "2026-02-28"],
  ])("%s", (line, offer, after) => expect(fixed(`${line}\nD minor`)[`Change to ${offer}`]).toBe(`${after}\nD minor`));
});

test("its place goes by the line before it, also when that one changes", () => {
  const before = new Journal("file:///j", new Map([[URI, createDocument(`${DAY}D minor\ninstrument flute`)]]));
  diagnosticsOf(before, URI, TODAY);
  const after = before.with(URI, createDocument(`${DAY}D minor, thirds\ninstrument flute`));
  const moved = diagnosticsOf(after, URI, TODAY).flatMap(({ fixes }) => fixes)[0]!;
  expect(moved.edits[0]!.range.start).toEqual({ line: 1, character: "D minor, thirds".length });
});

test("a title is declared where there is one", () => {
  expect(fixed(`${DAY}"Gigue"`)).toEqual({ 'Declare piece "Gigue"': `piece "Gigue"\n${DAY}"Gigue"` });
  expect(fixed(`${DAY}"", slow`)).toEqual({});
  expect(fixed(`${DAY}" ", slow`)).toEqual({});
});

test("a dash at the beginning of a line has nothing to be parted from", () =>
  expect(fixed(`${DAY}-: "Ground", at 60`)).not.toHaveProperty("Write a comma"));

describe("what is offered for a word", () => {
  test("is never the word itself", () => {
    for (const line of ["groundwork, min", "groundwork 9 notes", "break, thirds"])
      expect(Object.values(fixed(DAY + line))).not.toContain(DAY + line);
  });
  test("fits its place: no pattern on the line of a phase", () => {
    expect(fixed(`${DAY}groundwork, thrdis`)).toEqual({
      'Write "with thrdis"': `${DAY}groundwork, with thrdis`,
    });
    expect(fixed(`${DAY}D minor, thrdis`)).toHaveProperty('Change to "thirds"');
  });
  test("on a day line is a weekday, minutes, plan or rest", () => {
    expect(fixed("2026-03-02 Modnay")).toHaveProperty('Change to "monday"');
    expect(fixed("2026-03-02 slwo")).toEqual({});
  });
  test("differs in a third of its letters at most", () => {
    expect(fixed("2026-03-02 went well")).toEqual({});
    expect(fixed(`${DAY}D minor, at 60 cold`)).toEqual({});
    expect(fixed(`${DAY}D minor, stacatto`)).toHaveProperty('Change to "staccato"');
  });
  test("is not the same twice", () => expect(fixed(`${DAY}D minor, slrude slrude`)).toEqual({}));
});
