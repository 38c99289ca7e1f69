import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { askedFixesIn } from "../../../server/features/diagnostics/asked-fixes.ts";
import { underlinedOf } from "../../../server/features/diagnostics/diagnostics.ts";
import { type LineRow, lineRows } from "../../../server/features/explain/line-rows.ts";
import type { CodeAction } from "../../../server/features/types.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { FEW } from "../../support/random-runs.ts";
import { anyText, edited, journalOf, journalText, URI } from "../journal-text.ts";

const TODAY = parseIsoDate("2026-06-01")!;
const DAY = "2026-03-02\n";

/** The text without its mark `‸`, and what is offered there. */
function at(
  marked: string,
  only?: readonly string[],
): { readonly text: string; readonly actions: readonly CodeAction[] } {
  const [before = "", after = ""] = marked.split("‸");
  const lines = before.split("\n");
  const place = { line: lines.length - 1, character: lines.at(-1)!.length };
  const text = before + after;
  return { text, actions: askedFixesIn(journalOf(text), URI, { start: place, end: place }, only) };
}

/** What the text becomes by each fix at the mark on a line below a day, by the fix's title. */
function fixed(marked: string): Readonly<Record<string, string>> {
  const { text, actions } = at(DAY + marked);
  return Object.fromEntries(actions.map(({ title, edits }) => [title, edited(text, edits)]));
}

function titles(marked: string): readonly string[] {
  return Object.keys(fixed(marked));
}

describe("words of an entry that were kept as typed", () => {
  test("are declared, or become a remark", () =>
    expect(fixed("D minor, swo‸opy, at 60 clean")).toEqual({
      'Declare articulation "swoopy"': `articulation "swoopy"\n${DAY}D minor, swoopy, at 60 clean`,
      'Declare pattern "swoopy" (add its degrees)': `pattern "swoopy":\n${DAY}D minor, "swoopy", at 60 clean`,
      'Declare focus "swoopy"': `focus "swoopy"\n${DAY}D minor, focus swoopy, at 60 clean`,
      "Make it a remark": `${DAY}D minor, at 60 clean -- swoopy`,
    }));

  test("behind a tempo most likely say how it went", () =>
    expect(fixed("D minor, at 60 purple rain‸")).toEqual({
      'Declare outcome "purple rain": reached': `outcome "purple rain": reached\n${DAY}D minor, at 60 purple rain`,
      'Declare outcome "purple rain": nearly': `outcome "purple rain": nearly\n${DAY}D minor, at 60 purple rain`,
      'Declare outcome "purple rain": not': `outcome "purple rain": not\n${DAY}D minor, at 60 purple rain`,
      'Declare articulation "purple rain"': `articulation "purple rain"\n${DAY}D minor, at 60 purple rain`,
      'Declare pattern "purple rain" (add its degrees)': `pattern "purple rain":\n${DAY}D minor, at 60 "purple rain"`,
      'Declare focus "purple rain"': `focus "purple rain"\n${DAY}D minor, at 60, focus purple rain`,
      "Make it a remark": `${DAY}D minor, at 60 -- purple rain`,
    }));

  test("the likeliest verdict first: that of the words in it, not quite where they are denied", () => {
    expect(titles("D minor, at 60 ok but pur‸ple")[0]).toBe('Declare outcome "ok but purple": nearly');
    expect(titles("D minor, at 60 purple and mes‸sy")[0]).toBe('Declare outcome "purple and messy": not');
    expect(titles("D minor, at 60 purple and cle‸an")[0]).toBe('Declare outcome "purple and clean": reached');
  });

  test("are no outcome before the tempo", () =>
    expect(titles("D minor, swo‸opy, at 60").filter((title) => title.includes("outcome"))).toEqual([]));

  test("go before what is noted already", () =>
    expect(fixed("D minor, at 60 purple‸ -- tired")["Make it a remark"]).toBe(`${DAY}D minor, at 60 -- purple; tired`));

  test("a declaration stands below those that are there", () => {
    const { text, actions } = at(`instrument flute\n\n${DAY}D minor, swoopy‸`);
    expect(edited(text, actions[0]!.edits)).toBe(`instrument flute\narticulation "swoopy"\n\n${DAY}D minor, swoopy`);
  });

  test("a quoted name that is no pattern's is declared as it stands", () =>
    expect(fixed('D minor, "zig‸", slow')).toEqual({
      'Declare pattern "zig" (add its degrees)': `pattern "zig":\n${DAY}D minor, "zig", slow`,
      "Make it a remark": `${DAY}D minor, slow -- "zig"`,
    }));

  test("a number gets what it counts", () =>
    expect(fixed("D minor, 4‸, slow")).toEqual({
      'Write "4 min"': `${DAY}D minor, 4 min, slow`,
      'Write "bars 4"': `${DAY}D minor, bars 4, slow`,
      "Make it a remark": `${DAY}D minor, slow -- 4`,
    }));

  test("what is understood has none, nor has a line that goes on with another", () => {
    expect(titles("D minor, slu‸rred, at 60 clean")).toEqual([]);
    expect(titles("swoopy words o‸f a diary")).toEqual([]);
    expect(titles("D minor at 60\nsame, 66, swo‸opy")).toEqual([]);
  });

  test("only as quick fixes", () => {
    expect(at(`${DAY}D minor, swoo‸py`, ["refactor"]).actions).toEqual([]);
    expect(at(`${DAY}D minor, swoo‸py`, ["quickfix"]).actions).not.toEqual([]);
  });

  test("nothing of it is underlined", () => {
    const { text } = at(`${DAY}D minor, swoo‸py, at 60 purple`);
    expect(underlinedOf(journalOf(text), URI, TODAY)).toEqual([]);
  });
});

describe("a line of which nothing says what was played", () => {
  test("has words before a tempo or a place that may be a title", () => {
    expect(fixed("sleepy fr‸og at 60 clean")).toEqual({
      'Declare piece "sleepy frog"': `piece "sleepy frog"\n${DAY}sleepy frog at 60 clean`,
    });
    expect(fixed("- sleepy frog, b‸ars 1-8")).toEqual({
      'Declare piece "sleepy frog"': `piece "sleepy frog"\n${DAY}- sleepy frog, bars 1-8`,
    });
  });
  test("has none in a sentence, or without tempo and place", () => {
    expect(titles("I was a‸t 60 today")).toEqual([]);
    expect(titles("sleepy fr‸og")).toEqual([]);
  });
});

describe("a subject with two readings", () => {
  test("a letter and a figure: the chord is taken, a note is offered", () =>
    expect(fixed("C7‸, slow")).toEqual({
      'Change to "notes C7"': `${DAY}notes C7, slow`,
      'Change to "long tones on C7"': `${DAY}long tones on C7, slow`,
    }));
  test("not where it can only be the chord", () => {
    expect(titles("C dominant sev‸enth")).toEqual([]);
    expect(titles("Cmaj‸7")).toEqual([]);
  });
  test("minor alone is natural minor: all three are offered", () =>
    expect(fixed("E m‸inor, slurred")).toEqual({
      'Change to "E natural minor"': `${DAY}E natural minor, slurred`,
      'Change to "E harmonic minor"': `${DAY}E harmonic minor, slurred`,
      'Change to "E melodic minor"': `${DAY}E melodic minor, slurred`,
    }));
  test("in the journal's names", () => {
    const { actions } = at(`names german\n${DAY}fis-M‸oll`);
    expect(actions.map(({ title }) => title)).toEqual([
      'Change to "fis-Moll natürlich"',
      'Change to "fis-Moll harmonisch"',
      'Change to "fis-Moll melodisch"',
    ]);
  });
  test("octatonic begins with the semitone or the tone", () =>
    expect(titles("C octa‸tonic")).toEqual(['Change to "C half-whole"', 'Change to "C whole-half"']));
  test("none where the kind is said", () => expect(titles("E harmonic m‸inor")).toEqual([]));
});

/** Invented: an entry with a word that means nothing somewhere behind its subject. */
const ENTRY_WITH_WORDS = fc
  .tuple(
    fc.constantFrom("D minor", "C major arpeggio", "Ground bars 5-8", "notes E5 F5", "sight-reading", "E octatonic"),
    fc.subarray(["slurred", "thirds", "8ths", "at 60", "clean", "66", "5 min", "with Ann", "slow"]),
    fc.constantFrom("swoopy", "purple rain", "ok but wild", "Über-swing", "4 wheels"),
    fc.nat(),
    fc.constantFrom(" ", ", "),
    fc.constantFrom("", " -- tired"),
  )
  .map(([subject, terms, words, at, separator, remark]) => {
    const column = at % (terms.length + 1);
    const before = [subject, ...terms.slice(0, column)].join(separator) + separator;
    return `${before}‸${[words, ...terms.slice(column)].join(separator)}${remark}`;
  });

// Held against the journal as a whole, read afresh.
test("what a fix makes of kept words is kept no longer, and what was played at which tempo stays", () => {
  let offered = 0;
  fc.assert(
    fc.property(ENTRY_WITH_WORDS, (marked) => {
      const [before] = rowsOf(DAY + marked.replace("‸", ""));
      for (const [title, text] of Object.entries(fixed(marked))) {
        if (!/^(?:Declare (?:outcome|articulation|pattern|focus)|Make|Write)/.test(title)) continue;
        const [after] = rowsOf(text);
        expect(after!.wordsLeft.length, text).toBeLessThan(before!.wordsLeft.length);
        expect([after!.kind, after!.subject, after!.tempos], text).toEqual([
          before!.kind,
          before!.subject,
          before!.tempos,
        ]);
        offered++;
      }
    }),
    { seed: 20260309, numRuns: FEW },
  );
  expect(offered).toBeGreaterThan(FEW);
});

function rowsOf(text: string): readonly LineRow[] {
  return lineRows(journalOf(text), URI).filter(({ kind }) => kind !== "date" && kind !== "declaration");
}

test("in any text, at any place, edits that can be made", () => {
  fc.assert(
    fc.property(fc.oneof(anyText, journalText), fc.nat(), fc.nat(), (text, line, character) => {
      const place = { line: line % 12, character: character % 40 };
      for (const { edits } of askedFixesIn(journalOf(text), URI, { start: place, end: place }))
        expect(edited(text, edits)).not.toBe(text);
    }),
    { seed: 20260309, numRuns: FEW },
  );
});
