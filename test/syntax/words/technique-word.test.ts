import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { completionsAt } from "../../../server/features/completion/completion.ts";
import { hoverAt } from "../../../server/features/hover/hover.ts";
import { attemptsOfJournal } from "../../../server/history/attempts.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { TERMS } from "../../../server/syntax/words/terms.ts";
import { journalOf, URI } from "../../features/journal-text.ts";
import { lineText, read, rowsOf } from "../line/print.ts";

// Techniques are practised by their name: common practice, no source.

const TODAY = parseIsoDate("2026-03-02")!;
const REFERENCE = readFileSync(join(import.meta.dirname, "../../../syntaxes/FORMAT.md"), "utf8");

/** Rows of a line, and what it means. */
function check(rows: string): void {
  for (const [typed, meaning] of rowsOf(rows)) expect([typed, lineText(read(typed))]).toEqual([typed, meaning]);
}

function journalOfLine(line: string) {
  return journalOf(`2026-03-02 Mon\n${line}\n`);
}

test("a technique is the subject, with notes where they follow", () => {
  check(`
    open strings, 5 min        => entry: open strings | 5 min
    lip slurs, at 60 clean     => entry: lip slurs | tempo 60 | outcome clean
    lip slur, 5 min            => entry: lip slurs | 5 min
    vibrato                    => entry: vibrato
    harmonics on C, 5 min      => entry: harmonics on C | 5 min
    Harmonics on low C, 5 min  => entry: harmonics on C | 5 min
    Messa di voce on F and G   => entry: messa di voce on F G
    double tonguing on G, 8ths => entry: double tongued on G | note value 1/8
    octave leaps               => entry: (no subject) | pattern octaves
    sirens                     => entry: sirens
    slow bows, 3 min           => entry: slow bows | 3 min
    barre chords               => entry: barre chords
    pedal tones, at 60         => entry: pedal tones | tempo 60
    lip trills, 3 min          => entry: lip trills | 3 min
  `);
});

test("its attempts count by its name", () => {
  const attempts = attemptsOfJournal(journalOfLine("lip slurs, at 60 clean, at 66 nearly"));
  expect(attempts.map(({ subject, pattern, reached }) => ({ subject, pattern, reached }))).toEqual([
    { subject: "lip slurs", pattern: null, reached: true },
    { subject: "lip slurs", pattern: null, reached: false },
  ]);
});

test("completion offers it at the beginning of a line", () => {
  const journal = journalOfLine("lip");
  const labels = completionsAt(journal, URI, { line: 1, character: 3 }, TODAY).map(({ label }) => label);
  expect(labels).toEqual(expect.arrayContaining(["lip slurs", "lip trills"]));
});

test("the hover says when it was last practised", () => {
  const journal = journalOf("2026-03-01 Sun\nlip slurs, at 60 clean\n\n2026-03-02 Mon\nlip slurs, at 66\n");
  expect(hoverAt(journal, URI, { line: 4, character: 2 }, { today: TODAY })?.markdown).toContain("at 60 clean");
});

test("the format reference names every technique and activity", () => {
  const names = TERMS.flatMap(({ words, meaning }) =>
    meaning.type === "technique" || meaning.type === "activity" ? [words[0]!] : [],
  );
  expect(names.length).toBeGreaterThan(100);
  expect(names.filter((name) => !REFERENCE.includes(`\`${name}\``))).toEqual([]);
});
