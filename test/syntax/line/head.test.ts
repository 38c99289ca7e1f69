import { expect, test } from "vitest";
import { lineText, read, rowsOf } from "./print.ts";

// What a line is above the first day.

/** Rows of a line, as it is typed above the first day, and what it is. */
function check(rows: string): void {
  for (const [typed, meaning] of rowsOf(rows)) expect([typed, lineText(read(typed, true))]).toEqual([typed, meaning]);
}

test("declarations above the first day", () => {
  check(`
    player Noor                => declaration: player
    player                     => declaration: player
    Instrument: alto recorder  => declaration: instrument
    notevalue 8ths             => declaration: note value
    usual-articulation slurred => declaration: usual articulation
    piece "X"                  => declaration: piece
    piece X                    => declaration: piece
    set D minor                => declaration: set
    aim D minor                => declaration: aim
    pattern                    => declaration: pattern
    focus "sound"              => declaration: focus
    aim for the stars.         => prose
  `);
});

test("a word near one that declares", () => {
  check(`
    playr Noor        => near declaration: playr for player
    instruments: alto => near declaration: instruments for instrument
    peice "X"         => near declaration: peice for piece
    phaze "x"         => near declaration: phaze for phase
    name german       => near declaration: name for names
  `);
});

test("others", () => {
  check(`
    D minor           => entry: D natural minor (natural unsaid)
    focus sound, slow => entry: (no subject) | focus sound | without click slow
    warm-up           => phase: phase warm-up
    -- a remark       => remark "a remark"
    My journal        => prose
    goals             => prose
  `);
});
