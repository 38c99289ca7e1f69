import fc from "fast-check";
import { expect, test } from "vitest";
import { writeNotes } from "../../server/features/commands/write-notes.ts";
import { diagnosticsOf } from "../../server/features/diagnostics/diagnostics.ts";
import { parseIsoDate } from "../../server/journal/calendar.ts";
import { subjectKey, subjectText } from "../../server/journal/subject-text.ts";
import { CHORDS } from "../../server/music/chords/chord-kinds.ts";
import { LETTERS, type NoteName, printName } from "../../server/music/notes/note.ts";
import { type NamesId, NOTE_NAMES } from "../../server/music/notes/note-names.ts";
import { KINDS } from "../../server/music/scales/kinds.ts";
import { isTheoretical } from "../../server/music/scales/signature.ts";
import { createDocument } from "../../server/syntax/document/document.ts";
import { edited, journalOf, URI } from "../features/journal-text.ts";

// In every language: what is shown is read as what it says, and what is written out is right.

const TODAY = parseIsoDate("2026-03-09")!;
const OTHERS = NOTE_NAMES.filter(({ id }) => id !== "english");

function head(id: NamesId): string {
  return `names ${id}\n\n2026-03-09 Mon\n`;
}

/** Any name of a scale or a chord that is shown is read as what it names. */
test.each(OTHERS)("the names of subjects in $id are read as what they say", (names) => {
  const tonic = fc.record({ letter: fc.constantFrom(...LETTERS), alter: fc.integer({ min: -2, max: 2 }) });
  const words = fc.constantFrom(
    ...KINDS.map(({ id }) => ({ type: "scale", id, words: id })),
    ...CHORDS.map(({ id, degrees }) => ({ type: "chord", id, words: degrees.length === 3 ? `${id} arpeggio` : id })),
  );
  const before = journalOf(head(names.id));
  fc.assert(
    fc.property(tonic, words, (name: NoteName, kind) => {
      const text = names.key(name, kind.words);
      const journal = before.with(URI, createDocument(head(names.id) + text));
      const [entry] = journal.model(journal.files.get(URI)!.blocks.at(-1)!).entries;
      const english = `${kind.type}: ${printName(name)} ${kind.words}`
        .toLowerCase()
        .replace(/\boctatonic\b/, "half-whole");
      expect(entry?.subject && subjectKey(entry.subject), text).toBe(english);
      expect(entry?.subject && subjectText(entry.subject, names), text).toBe(text);
    }),
    { seed: 21 },
  );
});

/** The notes that the command writes beside any key in use are right. */
test.each(OTHERS)("what is written out in $id is found to be right", (names) => {
  let journal = journalOf(head(names.id));
  const put = (text: string): void => {
    journal = journal.with(URI, createDocument(text));
  };
  for (const kind of KINDS)
    for (const letter of LETTERS)
      for (const alter of [-1, 0, 1]) {
        const name = { letter, alter };
        if (kind.id === "chromatic" || isTheoretical(name, kind)) continue;
        const line = names.key(name, kind.id);
        put(head(names.id) + line);
        const text = edited(head(names.id) + line, editsOf(writeNotes(journal, URI, AT_LINE, { today: TODAY })));
        expect(text).toContain(`${line}: `);
        put(text);
        expect([text, diagnosticsOf(journal, URI, TODAY).map(({ message }) => message)]).toEqual([text, []]);
      }
});

const AT_LINE = { line: 3, character: 0 };

function editsOf(answer: ReturnType<typeof writeNotes>) {
  if (!answer.ok) throw new Error(answer.reason);
  return answer.edits;
}
