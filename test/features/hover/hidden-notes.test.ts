import { describe, expect, test } from "vitest";
import { fingerChange } from "../../../server/features/commands/finger-change.ts";
import { writeNotes } from "../../../server/features/commands/write-notes.ts";
import { completionsAt, explainCompletion } from "../../../server/features/completion/completion.ts";
import { diagnosticsOf } from "../../../server/features/diagnostics/diagnostics.ts";
import { hoverAt } from "../../../server/features/hover/hover.ts";
import { fingersUnderCursor } from "../../../server/features/preview/fingers.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { NOTE_NAMES } from "../../../server/music/notes/note-names.ts";
import { journalOf, URI } from "../journal-text.ts";
import { run } from "../marked-text.ts";

// `hide notes`, for the journal or for a line: no name of a note is told until somebody asks. Each test holds as much
// against the same journal without it, so that something is there to hide.

const TODAY = parseIsoDate("2026-03-09")!;
const HEAD = "instrument alto recorder\npitch A=415, Vallotti\n";
const DAY = "\n2026-03-02 Mon\n";

/**
 * A name of a note that stands by itself, with signs and an octave perhaps; not in the name of a key, and not a word
 * `A`.
 */
const NAMED = /(?<![\w#-])(?!A )[A-G](?:#|b)*\d?(?![\w#'])(?! (?:major|natural minor|minor|dorian|whole-tone))(?!=\d)/;

function hover(head: string, marked: string): string {
  const text = head + DAY + marked.replace("‸", "");
  const lines = (head + DAY + marked.split("‸")[0]!).split("\n");
  const position = { line: lines.length - 1, character: lines.at(-1)!.length };
  return hoverAt(journalOf(text), URI, position, { today: TODAY })!.markdown;
}

describe("the hover names no note", () => {
  const rows = [
    ["on a scale", "F# mi‸nor, slurred, 8ths at 60 clean"],
    ["on an arpeggio", "G minor arpe‸ggio, slow"],
    ["on a symmetrical scale", "C whole-t‸one, slow"],
    ["on a mode", "D dor‸ian, slow"],
    ["on a pattern", "Bb major, thir‸ds, slow"],
    ["on leaps", "Bb major, lea‸ps, slow"],
    ["on a signature", "Bb major, 2 fl‸ats"],
    ["on a scale of a chain", "Bb major > G mi‸nor, slow"],
    ["on a figure over a scale", "long tones on Bb ma‸jor"],
  ] as const;

  test.each(rows)("%s, where the journal hides notes", (_, marked) => {
    expect(hover(HEAD, marked)).toMatch(NAMED);
    expect(hover(`${HEAD}hide notes\n`, marked)).not.toMatch(NAMED);
  });

  test.each(rows)("%s, where the line hides them", (_, marked) => {
    expect(hover(HEAD, `${marked}, hide notes`)).not.toMatch(NAMED);
  });

  test("and tells all else", () => {
    const told = hover(`${HEAD}hide notes\n`, "F# mi‸nor, slurred, 8ths at 60 clean");
    for (const words of [
      "Notes: hidden until you have them written out",
      "; three sharps.",
      "Relative: A major; parallel: F# major",
      "Steps: T S T T S T T",
      "| Week of | Best | Usual | Reached |",
    ])
      expect(told).toContain(words);
  });

  test("on a note that the player wrote it says what it is", () =>
    expect(hover(`${HEAD}hide notes\n`, "D minor: D E F‸ G A Bb C D")).toBe(
      "F is the third degree of D natural minor.",
    ));
});

test("completion offers the notes without naming them, and puts them in when they are taken", () => {
  const offered = (head: string) => {
    const text = `${head + DAY}Bb major: `;
    const lines = text.split("\n");
    return completionsAt(journalOf(text), URI, { line: lines.length - 1, character: lines.at(-1)!.length }, TODAY);
  };
  expect(offered(HEAD)[0]!.label).toBe("Bb C D Eb F G A Bb");
  const hidden = offered(`${HEAD}hide notes\n`).filter(({ label }) => label.startsWith("the notes"));
  expect(hidden.map(({ label }) => label)).toEqual(["the notes, up", "the notes, up and down"]);
  expect(hidden[0]!.edit.newText).toBe("Bb C D Eb F G A Bb");
});

test("the explanation of what is offered names none either", () => {
  const resolve = { topic: "subject", key: "Bb major" };
  expect(explainCompletion(journalOf(HEAD), resolve)).toMatch(NAMED);
  expect(explainCompletion(journalOf(`${HEAD}hide notes\n`), resolve)).not.toMatch(NAMED);
});

test("and tells the signature, the steps or both, as the hover does", () => {
  const told = (explain: "signature" | "steps" | "both" | "none") =>
    explainCompletion(journalOf(HEAD), { topic: "subject", key: "Bb major" }, explain)!;
  const says = (text: string) => [text.includes("Signature: 2 flats"), text.includes("Steps: T T S T T T S")];
  expect([told("both"), told("signature"), told("steps"), told("none")].map(says)).toEqual([
    [true, true],
    [true, false],
    [false, true],
    [false, false],
  ]);
});

test("the side preview tells no hard steps", () => {
  const text = `${HEAD + DAY}Bb major, slow`;
  expect(fingersUnderCursor(journalOf(text), URI, 4)!.steps).toHaveLength(3);
  expect(fingersUnderCursor(journalOf(`hide notes\n${text}`), URI, 5)).toBeNull();
  expect(fingersUnderCursor(journalOf(`${text}, hide notes`), URI, 4)).toBeNull();
});

test("commands are a question, and are answered", () => {
  const head = `instrument alto recorder\nhide notes\n\n2026-03-09 Mon\n`; // where they write, today
  expect(run(writeNotes, `${head}Bb maj‸or`)).toBe(`${head}Bb major: Bb C D Eb F G A Bb‸`);
  expect(run(fingerChange, `${head}Bb maj‸or, slow`)).toContain("\nnotes ");
});

test("what the player wrote is checked, and named", () => {
  const [found] = diagnosticsOf(journalOf(`hide notes\n${DAY}F# major: F# G# A# B C# D# F F#`), URI, TODAY);
  expect(found!.message).toBe("F# major has E#, not F: its seventh degree takes the letter E.");
});

test("a word behind the declaration, and a second one, are told; below a day it moves up", () => {
  const codes = (text: string) => diagnosticsOf(journalOf(text), URI, TODAY).map(({ code }) => code);
  expect(codes("hide notes please")).toEqual(["bad-declaration"]);
  expect(codes("hide notes\nhide-notes")).toEqual(["duplicate-declaration"]);
  expect(codes(`${DAY}hide notes`)).toEqual(["bad-declaration"]);
  expect(codes(`${DAY}D minor, hide notes, slow`)).toEqual([]);
});

test("it holds in every language of names", () => {
  for (const { id } of NOTE_NAMES) {
    const told = hover(`names ${id}\nhide notes\n${HEAD}`, "Bb ma‸jor, thirds, slow");
    expect(told, id).toContain("Notes: hidden");
    expect(told, id).toContain("; two flats.");
  }
});
