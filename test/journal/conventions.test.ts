import { expect, test } from "vitest";
import { attemptsOfJournal } from "../../server/history/attempts.ts";
import { Journal } from "../../server/journal/journal.ts";
import { createDocument } from "../../server/syntax/document/document.ts";

// What declarations settle for entries, in all files of one journal and in none of another.

const MARKER = "file:///j/journal.practice";
const WEEK = "file:///j/a-week.practice";
const OTHER = "file:///j/b-week.practice";

function journalOf(marker: string, week = "", other = ""): Journal {
  const texts = { [OTHER]: other, [WEEK]: week, [MARKER]: marker };
  return new Journal("file:///j", new Map(Object.entries(texts).map(([uri, text]) => [uri, createDocument(text)])));
}

test("the marker counts first, then the files by name", () => {
  expect(journalOf("").addresses).toEqual([MARKER, WEEK, OTHER]);
});

test("without declarations there is no instrument and no tuning, and notes are tongued", () => {
  const { instrument, noteValue, usualTonguing, tuning, kinds, cells, pieces } = journalOf("").conventions(WEEK);
  expect({ instrument, noteValue, usualTonguing, tuning }).toEqual({
    instrument: undefined,
    noteValue: undefined,
    usualTonguing: "single",
    tuning: undefined,
  });
  expect([kinds.size, cells.size, pieces.length]).toEqual([0, 0, 0]);
});

test("the first instrument is the default, and of what may be said once the first counts", () => {
  const declared =
    "instrument tenor recorder\ninstrument alto recorder\npitch A=415, Vallotti\npitch A=392\nusual articulation slurred";
  const { instrument, tuning, usualTonguing } = journalOf(declared, "instrument soprano recorder").conventions(OTHER);
  expect({ instrument, tuning, usualTonguing }).toEqual({
    instrument: "tenor recorder",
    tuning: { a: 415, temperament: { id: "vallotti" } },
    usualTonguing: "slurred",
  });
});

test("a note value holds for all files where the marker says so, else for its own file", () => {
  const eighth = { numerator: 1, denominator: 8 };
  const sixteenth = { numerator: 1, denominator: 16 };
  const own = journalOf("note value 8ths", "note value 16ths");
  expect(own.conventions(WEEK).noteValue).toEqual(sixteenth);
  expect(journalOf("note value 8ths").conventions(OTHER).noteValue).toEqual(eighth);
});

test("titles, patterns, scales, phases and activities may be used before they are declared, in any file", () => {
  const declarations = 'piece "X" as Y\npattern "p": 1 2\nscale "s": 1 2 3\nphase "band"\nactivity "stretching"';
  const used = '2026-03-02\nband\nY\nD major, "p"\n"s" on D\nstretching';
  const journal = journalOf("", used, declarations);
  const model = journal.model(journal.files.get(WEEK)!.blocks.find(({ day }) => day)!);
  expect(model.entries.map(({ subject }) => subject?.type)).toEqual(["title", "scale", "scale", "activity"]);
  expect(model.phases.at(-1)!.phase).toBe("band");
});

test("an articulation of one's own is a term of its strand, single where none is stated", () => {
  const tonguings = (declaration: string) => {
    const journal = journalOf(declaration, "2026-03-02\nD minor, ghosted, at 60 clean");
    return attemptsOfJournal(journal).map(({ tonguing }) => tonguing);
  };
  expect(tonguings('articulation "ghosted": mixed')).toEqual(["mixed"]);
  expect(tonguings('articulation "ghosted": slurred')).toEqual(["slurred"]);
  expect(tonguings('articulation "ghosted"')).toEqual(["single"]);
  const usual = journalOf('articulation "ghosted": mixed\nusual articulation ghosted');
  expect(usual.conventions(WEEK).usualTonguing).toBe("mixed");
});

test("the same conventions are the same object while no declaration changes its meaning", () => {
  const before = journalOf("instrument alto recorder\nplayer Noor", "2026-03-02\nD minor");
  const after = before.with(WEEK, createDocument("2026-03-02\nD minor, slow"));
  expect(after.conventions(WEEK)).toBe(before.conventions(WEEK));
  expect(after.vocabulary).toBe(before.vocabulary);
  const spaced = before.with(MARKER, createDocument("instrument  alto recorder\nplayer Noor\naim D minor"));
  expect(spaced.conventions(WEEK)).toBe(before.conventions(WEEK));
  const other = before.with(MARKER, createDocument("instrument tenor recorder"));
  expect(other.conventions(WEEK).instrument).toBe("tenor recorder");
});
