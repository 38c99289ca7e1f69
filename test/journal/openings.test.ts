import { expect, test } from "vitest";
import { lineRows } from "../../server/features/explain/line-rows.ts";
import { attemptsOfJournal } from "../../server/history/attempts.ts";
import { Journal } from "../../server/journal/journal.ts";
import { applyChanges, createDocument } from "../../server/syntax/document/document.ts";

// `homework`, `ask:`, `Ruth says:` alone on a line hold for the lines below. Common practice, no source.

const URI = "file:///j/journal.practice";

function journalOf(text: string): Journal {
  return new Journal("file:///j", new Map([[URI, createDocument(text)]]));
}

/** The kind of each line of a day, but for blank ones. */
function kinds(day: string, head = ""): string {
  const rows = lineRows(journalOf(`${head}2026-03-02\n${day}`), URI);
  return rows
    .slice(1 + Number(head !== ""))
    .map(({ kind }) => kind)
    .join(", ");
}

test.each([
  ["homework", "set, set, set"],
  ["HW:", "set, set, set"],
  ["for next week:", "set, set, set"],
  ["set", "set, set, set"],
  ["homework for thursday:", "set, set, set"],
  ["ask:", "question, question, question"],
  ["questions for Ruth:", "question, question, question"],
  ["said:", "teacher, teacher, teacher"],
  ["Ruth says:", "teacher, teacher, teacher"],
])("below %j", (opening, expected) => expect(kinds(`${opening}\n- G major at 66 clean\n- the Gavotte`)).toBe(expected));

test("with something behind it, it holds for its own line alone", () => {
  expect(kinds("homework: G major\nF major at 60")).toBe("set, exercise");
  expect(kinds("Ruth says: slower\nF major at 60")).toBe("teacher, exercise");
});

test("up to a blank line, a heading or a day", () => {
  expect(kinds("homework\nG major\n\nF major")).toBe("set, set, exercise");
  expect(kinds("homework\nG major\nscales\nF major")).toBe("set, set, heading, exercise");
  expect(kinds("homework\nG major\nsession\nF major")).toBe("set, set, heading, exercise");
  expect(kinds("homework\nG major\n2026-03-03\nF major")).toBe("set, set, date, exercise");
});

test("a remark, what hurts and what another line says stay what they are", () =>
  expect(kinds("homework\n-- so\nthumb hurts\nask: why\nG major")).toBe("set, remark, pain, question, set"));

test("in German", () => expect(kinds("Hausaufgabe:\nG-Dur, 60 sauber", "names german\n")).toBe("set, set"));

function subjects(journal: Journal): readonly string[] {
  return attemptsOfJournal(journal).map(({ subject }) => subject);
}

test("nothing below counts, and a line put in between tells anew", () => {
  const before = "2026-03-02\nF major at 60\nhomework\nG major at 66 clean\nC major at 60\n";
  const journal = journalOf(before);
  expect(subjects(journal)).toEqual(["F major"]);
  const at = { line: 4, character: 0 };
  const after = journal.with(
    URI,
    applyChanges(journal.files.get(URI)!, [{ range: { start: at, end: at }, text: "\n" }]),
  );
  expect(subjects(after)).toEqual(["F major", "C major"]);
});
