import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { changeNames } from "../../../server/features/commands/change-names.ts";
import { atOnce } from "../../../server/journal/at-once.ts";
import { Journal } from "../../../server/journal/journal.ts";
import { scaleText } from "../../../server/journal/subject-text.ts";
import { LETTERS } from "../../../server/music/notes/note.ts";
import { type NamesId, NOTE_NAMES, type NoteNames } from "../../../server/music/notes/note-names.ts";
import { KINDS } from "../../../server/music/scales/kinds.ts";
import { createDocument } from "../../../server/syntax/document/document.ts";
import { times } from "../../support/random-runs.ts";
import { edited, journalText } from "../journal-text.ts";
import { playedIn } from "../played.ts";

const FOLDER = "file:///journal";

type Files = Readonly<Record<string, string>>;

function journalOf(files: Files): Journal {
  const documents = Object.entries(files).map(([name, text]) => [`${FOLDER}/${name}`, createDocument(text)] as const);
  return new Journal(FOLDER, new Map(documents));
}

/** The files of a journal with its notes named in another language, and what was told beside. */
function named(files: Files, language: string): { readonly files: Files; readonly note?: string } {
  const uri = `${FOLDER}/${Object.keys(files)[0]!}`;
  const answer = atOnce(changeNames(journalOf(files), uri, { line: 0, character: 0 }, language));
  if (!answer.ok) throw new Error(answer.reason);
  const edits = new Map([answer, ...(answer.also ?? [])].map((each) => [each.uri, each.edits]));
  const after = Object.entries(files).map(([name, text]) => [name, edited(text, edits.get(`${FOLDER}/${name}`) ?? [])]);
  return { files: Object.fromEntries(after), ...(answer.note === undefined ? {} : { note: answer.note }) };
}

const DAY = "\n\n2026-03-09 Mon\n";

/** A line in each language, the first of which is there at the beginning; each becomes the other. */
function checkBoth(one: NamesId, line: string, other: NamesId, renamed: string): void {
  const file = (id: NamesId, text: string): Files => ({ "a.practice": `names ${id}${DAY}${text}` });
  expect(named(file(one, line), other)).toEqual({ files: file(other, renamed) });
  expect(named(file(other, renamed), one)).toEqual({ files: file(one, line) });
}

// The names of notes are those of test/reference/note-names.json (LilyPond 2.24.1); words for major and minor: from memory.
describe("notes and keys are named in the other language, there and back", () => {
  test("English and German", () => {
    checkBoth(
      "english",
      "F# melodic minor: F# G# A B C# D# E# F#",
      "german",
      "fis-Moll melodisch: Fis Gis A H Cis Dis Eis Fis",
    );
    checkBoth("english", "Bb major, from F4 to Bb5, at 60 clean", "german", "B-Dur, from F4 to B5, at 60 clean");
    checkBoth("english", "C major > Bb major > B minor", "german", "C-Dur > B-Dur > h-Moll");
    checkBoth("english", "notes B4 Bb4, back and forth", "german", "notes H4 B4, back and forth");
    checkBoth("english", "Eb dominant seventh, slurred", "german", "Es dominant seventh, slurred");
  });
  test("German and French", () => {
    checkBoth(
      "german",
      "B-Dur: B C D Es F G A B, slow",
      "french",
      "si bémol majeur: sib do ré mib fa sol la sib, slow",
    );
  });
  test("English and Italian, Spanish, Dutch", () => {
    checkBoth("english", "G harmonic minor, thirds", "italian", "sol minore armonica, thirds");
    checkBoth("english", "F# major, slow", "spanish", "fa sostenido mayor, slow");
    checkBoth("english", "Ab minor arpeggio", "dutch", "As mineur arpeggio");
  });
});

test("as they stand where they are not written as they are shown", () => {
  const after = (line: string, from: NamesId, to: NamesId) =>
    named({ "a.practice": `names ${from}${DAY}${line}` }, to).files["a.practice"]!.split(DAY)[1];
  expect(after("d-moll: d e f g a h c", "german", "english")).toBe("D minor: d e f g a b c");
  expect(after("fis Moll, melodic", "german", "english")).toBe("F# minor, melodic");
  expect(after("C, G and B major", "english", "german")).toBe("C, G and H-Dur");
  expect(after("Bbm7 arpeggio", "english", "german")).toMatch(/^(?:Bm7|B minor seventh)/);
});

test("in declarations, too, but not in names, titles, remarks and sentences", () => {
  const english = {
    "journal.practice": `player B. Flat
piece "Air in B minor" as B: B minor, 48 bars, range B3 to Bb5
aim Bb major, thirds, at 84
instrument "my flute": D4 to B5, half holes D#4`,
    "week.practice": `2026-03-09 Mon
"Air in B minor", bars 1-8, at 60 -- from B to Bb
B major, slow
Felt good on B today.
`,
  };
  const { files, note } = named(english, "german");
  expect(files).toEqual({
    "journal.practice": `player B. Flat
piece "Air in B minor" as B: h-Moll, 48 bars, range H3 to B5
aim B-Dur, thirds, at 84
instrument "my flute": D4 to H5, half holes Dis4
names german`,
    "week.practice": english["week.practice"].replace("B major, slow", "H-Dur, slow"),
  });
  expect(note).toBeUndefined();
});

test("terms that the other language does not know become the English ones, which all know", () => {
  const german = { "a.practice": `names german${DAY}d-Moll melodisch, Terzen, gebunden, Achtel at 60 clean\n` };
  const { files, note } = named(german, "french");
  expect(files["a.practice"]).toBe(`names french${DAY}ré mineur mélodique, thirds, slurred, 8ths at 60 clean\n`);
  expect(note).toBeUndefined();
});

test("where words are not known any more, which lines these are is told, and their notes are named anew", () => {
  const german = { "a.practice": `names german${DAY}B-Dur, at 60 sauber\nC-Dur, slow\n` };
  const { files, note } = named(german, "english");
  expect(files["a.practice"]).toContain("Bb major, at 60 ");
  if (files["a.practice"]!.includes("sauber"))
    expect(note).toBe(
      "Please look at line 4 of a.practice: it is not read as before, as some of its words mean something else in the new language, or nothing.",
    );
});

test("what only looks like a note stays", () => {
  const english = { "a.practice": `names english${DAY}Concerto in a, i, dev, bb 88-104, slow\nC major 3 oct, slow\n` };
  expect(named(english, "german")).toEqual({
    files: { "a.practice": english["a.practice"].replace("english", "german").replace("C major", "C-Dur") },
  });
});

test("nothing is changed where that cannot be, and a sentence says why", () => {
  const reason = (files: Files, language: string | undefined) => {
    const answer = atOnce(changeNames(journalOf(files), `${FOLDER}/a.practice`, { line: 0, character: 0 }, language));
    return answer.ok ? "" : answer.reason;
  };
  expect(reason({ "a.practice": "names german" }, "german")).toBe("Notes are named so already: german.");
  expect(reason({ "a.practice": "" }, "klingon")).toMatch(/^Say in which language: english, german,/);
  expect(reason({ "a.practice": "", "journal.practice": "shared\n" }, "german")).toMatch(/^Other journals share/);
  expect(reason({ "a.practice": "2026-03-02\n<<<<<<< a\n" }, "german")).toMatch(/^A merge has left/);
});

const SAMPLES = "samples";

function filesBelow(folder: string): Files {
  const names = readdirSync(folder).filter((name) => name.endsWith(".practice"));
  return Object.fromEntries(names.map((name) => [name, readFileSync(`${folder}/${name}`, "utf8")]));
}

const JOURNALS = ["quickstart", "year", ...NOTE_NAMES.slice(1).map(({ id }) => `languages/${id}`)];

describe.each(JOURNALS)("of the sample %s what was played is the same", (name) => {
  const files = filesBelow(`${SAMPLES}/${name}`);
  const journal = journalOf(files);
  const before = playedIn(journal);
  const others = NOTE_NAMES.map(({ id }) => id).filter((id) => id !== journal.names.id);

  test.each(others)("in %s", (id) => {
    const after = named(files, id);
    expect(before.length).toBeGreaterThanOrEqual(3);
    expect([after.note, playedIn(journalOf(after.files))]).toEqual([undefined, before]);
  });
});

const LANGUAGE = fc.constantFrom(...NOTE_NAMES.map(({ id }) => id));

test("of any lines what was played is the same, or it is said which are not read as before", () => {
  let [same, changed] = [0, 0];
  fc.assert(
    fc.property(journalText, LANGUAGE, LANGUAGE, (lines, first, language) => {
      const files = { "a.practice": `names ${first}\n\n2026-03-01\n${lines.replaceAll(/^[<=>|]{7}.*$/gm, "")}` };
      if (first === language || journalOf(files).names.id !== first) return;
      const after = named(files, language);
      if (after.files["a.practice"]!.slice(20) !== files["a.practice"].slice(20)) changed++;
      if (after.note !== undefined) return;
      same++;
      expect(playedIn(journalOf(after.files))).toEqual(playedIn(journalOf(files)));
    }),
    { seed: 20260309, numRuns: times(10) },
  );
  expect(same).toBeGreaterThan(times(3));
  expect(changed).toBeGreaterThan(times(3));
});

const TONIC = fc.record({ letter: fc.constantFrom(...LETTERS), alter: fc.integer({ min: -1, max: 1 }) });
const SCALE = fc.tuple(TONIC, fc.constantFrom(...KINDS.map(({ id }) => id))).map(
  ([tonic, kind]) =>
    (names: NoteNames) =>
      scaleText({ type: "scale", tonic, kind, declared: false }, names),
);
const LIST = fc.array(TONIC, { minLength: 3, maxLength: 8 });

test("what is written as it is shown is written so in the other language, and comes back as it was", () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(SCALE, LIST), { minLength: 1, maxLength: 4 }),
      LANGUAGE,
      LANGUAGE,
      (lines, one, two) => {
        if (one === two) return;
        const file = (id: NamesId): Files => {
          const names = NOTE_NAMES.find((each) => each.id === id)!;
          const rows = lines.map(
            ([scale, notes]) => `${scale(names)}: ${notes.map((note) => names.name(note)).join(" ")}`,
          );
          return { "a.practice": `names ${id}${DAY}${rows.join("\n")}` };
        };
        expect(named(file(one), two)).toEqual({ files: file(two) });
      },
    ),
    { seed: 20260309, numRuns: times(8) },
  );
});
