import { expect, test } from "vitest";
import { diagnosticsOf } from "../../../server/features/diagnostics/diagnostics.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { Journal } from "../../../server/journal/journal.ts";
import { createDocument } from "../../../server/syntax/document/document.ts";
import { rowsOf } from "./print.ts";

// Slips of the pen, and the word that is offered for each.

const URI = "file:///j/journal.practice";
const HEAD = 'instrument alto recorder\npiece "Ground in G minor" as Ground\npattern "zigzag": 1 3 2 4\n2026-03-02\n';
const TODAY = parseIsoDate("2026-06-01")!;

/** Rows of a line and what it becomes by the first fix of each of its findings; "-" where none is offered. */
function check(rows: string): void {
  for (const [typed, mended] of rowsOf(rows)) {
    const journal = new Journal("file:///j", new Map([[URI, createDocument(HEAD + typed)]]));
    const edits = diagnosticsOf(journal, URI, TODAY).flatMap(({ fixes }) => fixes[0]?.edits ?? []);
    let line: string = typed;
    for (const { range, newText } of [...edits].reverse())
      line = line.slice(0, range.start.character) + newText + line.slice(range.end.character);
    expect([typed, edits.length ? line : "-"]).toEqual([typed, mended]);
  }
}

test("letters turned round, left out, or doubled", () => {
  check(`
    D minor, thrdis               => D minor, thirds
    D minor, slurde               => D minor, slurred
    D minor, tounged              => D minor, tongued
    D minor, stacatto             => D minor, staccato
    D minor, at 60 claen          => D minor, at 60 clean
    D minor, at 60 nealry         => D minor, at 60 nearly
    D minor, eights               => D minor, eighths
    D minor, third                => D minor, thirds
    D minor, full rnage           => D minor, full range
    D minor, top-dwon             => D minor, top down
    D minor, by hart              => D minor, by heart
    D minor, 2 ocatves            => D minor, 2 octaves
    D minor, uneveen, slwo        => D minor, uneven, slow
    D minor, thrdis slurde        => D minor, thirds, slurred
    set D minor, thrdis           => set D minor, thirds
    pieces, plna                  => pieces, plan
    2026-03-03 pln                => 2026-03-03 plan
  `);
});

test("one slip in a word of the trade is passed over", () => {
  check(`
    D minor, thrids               => -
    D minor, slured               => -
    D minor, doted                => -
    D minor, crochets             => -
    D minor melodc, slow          => -
  `);
});

test("names that are declared", () => {
  check(`
    D minor, "zigzga"             => D minor, "zigzag"
    "Ground in G mino", slow      => "Ground in G minor", slow
  `);
});

test("instruments behind `on`: the nearest, or the first of several that share the word", () => {
  check(`
    D minor, on tenor recoder     => D minor, on tenor recorder
    D minor, on violni            => D minor, on violin
    D minor, on treble            => -
    D minor, on viol              => D minor, on treble viol
    D minor, on kazoo             => -
    D minor, on alto, slow        => D minor, on alto recorder, slow
    D minor, on contrabass        => D minor, on contrabass recorder
  `);
});

test("no guess for words that are short, far from any, or over 40 characters", () => {
  check(`
    D minor, xyz                  => -
    D minor, of                   => -
    D minor, tk                   => -
    D minor, wobbly wobbly wobbly => -
    D minor, staccatostaccatostaccatostaccatostaccato => -
  `);
  const long = "staccatoo".padEnd(40, "o");
  for (const word of [long, `${long}o`]) check(`    D minor, ${word} => -`);
});
