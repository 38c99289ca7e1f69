import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { repeatEntry } from "../../../server/features/commands/repeat-entry.ts";
import { isoDate } from "../../../server/journal/calendar.ts";
import type { Journal } from "../../../server/journal/journal.ts";
import type { Attempt, Conditions } from "../../../server/journal/model.ts";
import { times } from "../../support/random-runs.ts";
import { edited, journalOf, URI } from "../journal-text.ts";
import { type OtherFiles, run, TODAY } from "../marked-text.ts";

// Invented journals. The steps of a metronome: 40-60 by 2, 60-72 by 3, 72-120 by 4, 120-144 by 6, 144-208 by 8, common
// practice; their range stands in the Oxford Dictionary of Music under "metronome". They are typed out here as figures.

const STEPS =
  "40 42 44 46 48 50 52 54 56 58 60 63 66 69 72 76 80 84 88 92 96 100 104 108 112 116 120 126 132 138 144 152 160 168 176 184 192 200 208"
    .split(" ")
    .map(Number);

const DAY = "2026-03-09 Mon\n";

function check(step: "faster" | "slower", before: string, after: string, others?: OtherFiles): void {
  expect(
    run((journal, uri, position) => repeatEntry(journal, uri, position, { today: TODAY, step }), before, others),
  ).toBe(after);
}

/** An entry, and the line that is put in below it. */
function checkLine(step: "faster" | "slower", entry: string, copy: string): void {
  check(step, `${DAY}${entry}‸`, `${DAY}${entry}\n${copy}`);
}

/** An entry that is not repeated, and the beginning of the sentence that says why. */
function checkRefused(step: "faster" | "slower", marked: string, reason: RegExp): void {
  expect(run((journal, uri, position) => repeatEntry(journal, uri, position, { today: TODAY, step }), marked)).toMatch(
    reason,
  );
}

test("the tempo goes to the next metronome step, and the cursor behind it", () => {
  checkLine("faster", "D minor, at 60", "D minor, at 63‸");
  checkLine("slower", "D minor, at 60", "D minor, at 58‸");
  checkLine("faster", "D minor, at 61", "D minor, at 63‸");
  checkLine("slower", "D minor, at 72.5 bpm", "D minor, at 72 bpm‸");
  checkLine("slower", "Study 9 second page, crotchet 100 ish", "Study 9 second page, crotchet 96 ish‸");
  checkLine("slower", "F major, 112 to the crotchet", "F major, 108 to the crotchet‸");
  checkLine("faster", "D minor, 8ths at 120, focus ease", "D minor, 8ths at 126‸, focus ease");
});

test("a line that goes on with the one above it is repeated below it, and on no other day", () => {
  check("faster", `${DAY}D minor, at 60\nsame, 66 clean‸`, `${DAY}D minor, at 60\nsame, 66 clean\nsame, 69‸`);
  checkRefused("faster", "2026-03-08\nD minor, at 60\nsame, 66‸\n2026-03-09\nC major", /goes on with the one above/);
});

test("what was found is left off: outcomes, tries, minutes, soreness and remarks", () => {
  checkLine("faster", "D minor, thirds, 8ths at 72 clean 5 in a row, 10 min", "D minor, thirds, 8ths at 76‸");
  checkLine("slower", "D minor, at 60 tense 1 of 4 -- too far", "D minor, at 58‸");
  checkLine("faster", "D minor, clean at 60, 3 times, by heart", "D minor, at 63‸, by heart");
  checkLine("faster", "  - D minor, done, at 60", "  - D minor, at 63‸");
});

test("of several tempos the last goes on, faster the last that was reached, in the words of the first", () => {
  checkLine("faster", "D minor, 8ths at 60 clean, 66 clean, 72 uneven, by heart", "D minor, 8ths at 69‸, by heart");
  checkLine("faster", "D minor, 8ths at 60 clean, 66 clean, 72", "D minor, 8ths at 69‸");
  checkLine("faster", "D minor, 8ths at 60, 66, 72", "D minor, 8ths at 76‸");
  checkLine("faster", "D minor, 8ths 60 ✓ 66 ✓ 72 ✗", "D minor, 8ths 69‸");
  checkLine("slower", "D minor, 8ths at 60 clean, 66 clean, 72 uneven, by heart", "D minor, 8ths at 69‸, by heart");
  checkLine("slower", "D minor, 8ths at 60 clean, 66 clean, 72 uneven", "D minor, 8ths at 69‸");
  checkLine("faster", "D minor, at quarter=60 clean, half=40 slips", "D minor, at quarter=63‸");
  checkLine("faster", "D minor, at quarter=60 clean, half=40 clean", "D minor, half=42‸");
  checkLine("faster", "D minor, ♩. = 60 clean, 66 clean", "D minor, ♩. = 69‸");
  checkLine("faster", "D minor, straight 8ths at 60 to 66 clean", "D minor, straight 8ths at 69‸");
  checkLine("faster", "D minor, 60-66 bpm clean", "D minor, 69 bpm‸");
});

test("what held for the attempt that it goes on from holds for the copy", () => {
  checkLine("faster", "D minor, slurred at 60 clean, tongued at 66 clean", "D minor, tongued at 69‸");
  checkLine("faster", "D minor, 8ths, slurred at 60 clean, 16ths, 44 clean", "D minor, slurred, 16ths, at 46‸");
  checkLine("faster", "D minor, slurred up, tongued down, at 60 clean", "D minor, slurred up, tongued down, at 63‸");
  checkLine(
    "faster",
    "D minor, by heart, with drone D, at 60 clean, sung, 66 clean",
    "D minor, with drone D, sung, at 69‸",
  );
  checkLine("faster", "D minor, slurred at 60 clean, tongued at 66 slips", "D minor, slurred at 63‸");
});

test("a leap that stands alone is no start: a notch above what was reached before, and it says why", () => {
  const text = "2026-03-07\n  D minor, at 54 clean\n2026-03-09 Mon\n  D minor, at 160 clean";
  const told = (from: string) => {
    const answer = repeatEntry(journalOf(from), URI, { line: 3, character: 4 }, { today: TODAY, step: "faster" });
    return answer.ok && [answer.edits[0]!.newText.trim(), answer.note];
  };
  const why =
    "160 is far above what you played before. Check its digits; once you reach it on a second day, it counts.";
  expect(told(text)).toEqual(["D minor, at 56", why]);
  expect(told(text.replace("54 clean", "54 nearly"))).toEqual(["D minor", why]);
  expect(told(text.replace("54 clean", "54 clean, 160 clean"))).toEqual(["D minor, at 168", undefined]);
});

// Invented, and lines of test/reference/natural-lines.tsv and more-hands.tsv.
test("words that are not known stay before the tempo, and go with what was found behind it", () => {
  checkLine("faster", "D minor, thrdis, at 60", "D minor, thrdis, at 63‸");
  checkLine("slower", "Study in Am, b.17-24 barre bit @60 buzzes", "Study in Am, b.17-24 barre bit @58‸");
  checkLine(
    "slower",
    "F major, two octaves, slurred, q=60 fine, q=72 stumbled at the break",
    "F major, two octaves, slurred, q=69‸",
  );
  checkLine("faster", "Eb maj 3rds stacc 60 ok 72 ok 80 fingers late", "Eb maj 3rds stacc 76‸");
  checkLine(
    "slower",
    "D major, 2 notes to a bow, metronome at 54, then 58, ragged",
    "D major, 2 notes to a bow, metronome at 56‸",
  );
  checkLine("faster", "Db maj in 3rds @ 72 - ok / @ 80 - ok / @ 88 - pinky slips", "Db maj in 3rds @ 84‸");
  checkLine("slower", "chrom frets 1-4 up+down 1234 4321 @66 1/16", "chrom frets 1-4 up+down 1234 4321 @63‸ 1/16");
  checkLine("slower", "Ground at 60 clean, bars 5-8, hm", "Ground at 58‸, bars 5-8");
  checkLine("faster", "at 60 clean F maj tongue heavy", "at 63‸, F maj");
  checkLine("slower", "Invention m. 1-17 HT ♩=56 ok ♩=60 fell apart in m. 14", "Invention m. 1-17 HT ♩=58‸");
  checkLine("slower", "E harm. min., 7ths (broken), @ 60, @ 63 ugh", "E harm. min., 7ths (broken), @ 60‸");
});

test("of several keys with tempos of their own the last is repeated", () => {
  checkLine("slower", "D minor 60 clean, G minor 66 slips", "G minor 63‸");
  checkLine("slower", "B flat major 76 clean. Arpeggio 66", "B flat major, Arpeggio 63‸");
  checkLine("slower", "C, G and D major, at 60 clean", "C, G and D major, at 58‸");
});

test("notes and names stay as they are written", () => {
  checkLine("faster", "D minor: D, E,F  G A Bb C D, at 60 clean", "D minor: D, E,F  G A Bb C D, at 63‸");
  checkLine("faster", '"Ground,  at 60", bars 5-8, 17-20, at 60 clean', '"Ground,  at 60", bars 5-8, 17-20, at 63‸');
  checkLine("slower", "C major > F major, at 60 nearly", "C major > F major, at 58‸");
});

test("the copy goes below the entry and the remarks that are its own", () => {
  check(
    "faster",
    `${DAY}pieces\n  D minor, at 60‸ clean\n    -- E to F\n  -- ? breathe\n  C major, slow\n`,
    `${DAY}pieces\n  D minor, at 60 clean\n    -- E to F\n  -- ? breathe\n  D minor, at 63‸\n  C major, slow\n`,
  );
  check("faster", "2026-03-09\r\nD minor, at 60‸\r\n", "2026-03-09\r\nD minor, at 60\r\nD minor, at 63‸\r\n");
});

const MONDAY = "2026-03-02 Mon\ngroundwork, 10 min\n  D minor, at 60‸ clean\n";
const PLAYED = MONDAY.replace("‸", "");

test("an entry of an earlier day is repeated today: in the same phase, or at the end", () => {
  check(
    "faster",
    `${MONDAY}\n${DAY}groundwork, 5 min\n\tC major, slow\npieces\n`,
    `${PLAYED}\n${DAY}groundwork, 5 min\n\tC major, slow\n\tD minor, at 63‸\npieces\n`,
  );
  check(
    "faster",
    `${MONDAY}\n${DAY}groundwork\n  \npieces\n`,
    `${PLAYED}\n${DAY}groundwork\n  D minor, at 63‸\npieces\n`,
  );
  check("faster", `${MONDAY}\n${DAY}pieces\n`, `${PLAYED}\n${DAY}pieces\n  D minor, at 63‸\n`);
  check("faster", `${MONDAY}\n${DAY}`, `${PLAYED}\n${DAY}D minor, at 63‸\n`);
  check("faster", MONDAY, `today.practice\n${DAY}D minor, at 63‸\n\n2026-03-08\n`, {
    "today.practice": `${DAY}\n2026-03-08\n`,
  });
});

test("a day that was begun with room for its first entry takes it there", () =>
  check(
    "faster",
    "2026-03-08\n  D minor, at 60 clean‸\n2026-03-09\n  ",
    "2026-03-08\n  D minor, at 60 clean\n2026-03-09\n  D minor, at 63‸",
  ));

test("where there is no today it is begun, and earlier days stay as they are", () => {
  check("slower", MONDAY, `${PLAYED}\n2026-03-09 Mon\nD minor, at 58‸\n`);
  check("faster", "2026-03-05\n  D minor, at 60‸\n", "2026-03-05\n  D minor, at 60\n\n2026-03-09\n  D minor, at 63‸\n");
  check("faster", "2026-02-23\nD minor, at 60‸", "march.practice\n2026-03-02\n\n2026-03-09\nD minor, at 63‸\n", {
    "march.practice": "2026-03-02\n",
  });
});

test("faster goes on from what was reached before, where all of the line failed, and never from what failed", () => {
  const before = "2026-03-05\nD minor, 8ths at 60 clean\nD minor, 8ths at 80 slips\n\n";
  const faster = (line: string, copy: string) =>
    check("faster", `${before}${DAY}${line}‸`, `${before}${DAY}${line}\n${copy}`);
  faster("D minor, 8ths at 66 slips", "D minor, 8ths at 63‸");
  faster("D minor, 16ths at 46 nearly", "D minor, 16ths at 40‸"); // 60 in 8ths are 30 in 16ths
  checkRefused(
    "faster",
    `${before}${DAY}D major, 8ths at 66 slips‸`,
    /^No tempo reached yet: repeat it a notch slower/,
  );
  checkRefused("faster", `${DAY}D minor, 8ths at 66 slips‸\nD minor, 8ths at 60 clean`, /^No tempo reached yet/);
});

test("a line of a plan goes below it", () => {
  check(
    "slower",
    `${DAY}\n2026-03-10, plan\nD minor, at 60‸`,
    `${DAY}\n2026-03-10, plan\nD minor, at 60\nD minor, at 58‸`,
  );
});

test("where there is nothing to go on from, a sentence says so", () => {
  checkRefused("faster", `${DAY}D minor, slow‸`, /^Write a tempo on this line/);
  checkRefused("faster", `${DAY}D minor, at 208‸`, /^208 is the top of the metronome/);
  checkRefused("slower", `${DAY}D minor, at 40‸`, /^40 is the bottom of the metronome/);
  checkRefused("faster", `${DAY}d, at 60‸`, /^What was played on this line is not known/);
  checkRefused("faster", `${DAY}‸`, /^There is no entry on this line/);
  checkRefused("faster", `${DAY}Sound freer today.‸`, /^There is no entry on this line/);
  checkRefused("faster", "aim D minor, at 60 by 2026-04-30‸", /^There is no entry on this line/);
});

/** Invented terms, some of them several times, in any order and with commas or without. */
const terms = fc.array(
  fc.constantFrom(
    ..."slurred|tongued up|slurred down|t-k|dotted|straight 8ths|16ths|2 octaves|five notes|down|by heart|sung".split(
      "|",
    ),
    ..."slow|thirds|focus ease|with drone D|sore thumb|10 min|3 times|1 flat|done|done|on tenor recorder".split("|"),
    ..."at 60|at 60|at 72 clean|at 66 slips|clean at 84|at half=50|♩. = 52 to 56 nearly|at 63.5 bpm|100 bpm".split("|"),
  ),
  { minLength: 1, maxLength: 9 },
);
const entry = fc
  .tuple(
    fc.constantFrom("D minor", "D minor: D E F G A", "Ground", "notes E5 F5", "D minor > A minor"),
    terms,
    fc.infiniteStream(fc.constantFrom(", ", ", ", " ")),
  )
  .map(([subject, words, gaps]) => words.reduce((line, word) => line + gaps.next().value + word, subject));

/** Halves and manners, which mean the same in whatever order they stand. */
function inAnyOrder({ articulation, manner, ...conditions }: Conditions): unknown {
  return {
    ...conditions,
    halves: articulation?.text.split(", ").sort(),
    tonguing: articulation?.tonguing,
    manner: [...manner].sort(),
  };
}

/** Notes a minute; a quarter for each beat where the line does not say. */
function rateOf({ tempo, conditions }: Attempt): number {
  const { numerator, denominator } = tempo!.beat ?? { numerator: 1, denominator: 4 };
  const note = conditions.noteValue ?? tempo!.beat ?? { numerator: 1, denominator: 4 };
  return (tempo!.bpm * numerator * note.denominator) / (denominator * note.numerator);
}

test("whatever the line, the copy is read as the attempt that it goes on from, a notch on", () => {
  const entryAt = (journal: Journal, line: number) =>
    journal.model(journal.files.get(URI)!.blocks[1]!).entries.find(({ place }) => place.line === line);
  let repeated = 0;
  fc.assert(
    fc.property(entry, fc.constantFrom("faster", "slower"), (line, step) => {
      const text = `piece "Ground" as Ground: C major\n${DAY}${line}\n`;
      const journal = journalOf(text);
      const before = entryAt(journal, 1);
      const tried = before?.attempts.filter(({ tempo }) => tempo) ?? [];
      const reached = tried.findLast((each) => each.reached) ?? tried.findLast((each) => each.reached === null);
      const last = step === "faster" ? reached : tried.at(-1);
      const answer = repeatEntry(journal, URI, { line: 2, character: 0 }, { today: TODAY, step });
      expect(answer.ok).toBe(last !== undefined);
      if (!answer.ok || !last?.tempo) return;
      repeated++;
      const copy = entryAt(journalOf(edited(text, answer.edits)), 2)!;
      const { bpm, beat } = last.tempo;
      if (before!.sore !== undefined) {
        expect(copy.attempts.map(({ tempo }) => tempo)).toEqual([undefined]);
        return;
      }
      const next = step === "faster" ? STEPS.find((each) => each > bpm) : STEPS.findLast((each) => each < bpm);
      expect(copy.attempts).toHaveLength(1);
      expect(copy.attempts[0]!.outcomes).toEqual([]);
      if (answer.note !== undefined) {
        // It may be a slip of the pen, so it is not gone on from: `at 60 16ths, at 72 clean`, of which 16ths begin at 72.
        expect(rateOf(last)).toBeGreaterThan(1.5 * Math.min(...tried.map(rateOf)));
        expect(copy.attempts[0]!.tempo?.bpm ?? 0).toBeLessThan(next!);
        return;
      }
      expect(inAnyOrder(copy.attempts[0]!.conditions)).toEqual(inAnyOrder(last.conditions));
      expect(copy.attempts[0]!.tempo).toEqual({ bpm: next, ...(beat ? { beat } : {}) });
      expect(copy).toMatchObject({ subject: before!.subject, pattern: before!.pattern, remarks: [] });
      expect([copy.minutes, copy.sore, copy.done]).toEqual([undefined, undefined, false]);
    }),
    { seed: 6066 },
  );
  expect(repeated).toBeGreaterThan(times(40));
});

describe("how fast the day allows", () => {
  /** The entry below these days, repeated faster: the text of the new line, and what is told beside. */
  function faster(days: string, line = "D minor, 8ths at 72 clean") {
    const text = `${days}${DAY}${line}\n`;
    const journal = journalOf(text);
    const at = { line: text.split("\n").length - 2, character: 0 };
    const answer = repeatEntry(journal, URI, at, { today: TODAY, step: "faster" });
    expect(answer.ok).toBe(true);
    return answer.ok && [answer.edits[0]!.newText.trim(), answer.note];
  }
  const ago = (days: number) => isoDate(TODAY - days);
  const played = (days: number, words: string) => `${ago(days)}\n  D minor, 8ths at ${words}\n`;

  test("a notch more on a usual day", () =>
    expect(faster(played(3, "72 clean"))).toEqual(["D minor, 8ths at 76", undefined]));

  test("without a tempo on the day after a pain, and it is told why", () => {
    expect(faster(played(1, "72 clean, sore left thumb"))).toEqual([
      "D minor, 8ths",
      "Written without a tempo: yesterday you noted “sore left thumb”.",
    ]);
  });

  test("at four fifths of the steady tempo, or of the last reached, for some days after that, and it says why", () => {
    const thumb = (bpm: number) => `Not above ${bpm} today: on 6 March you noted “sore left thumb”.`;
    expect(faster(played(3, "72 clean, sore left thumb"))).toEqual(["D minor, 8ths at 56", thumb(56)]); // 57.6
    const steady = played(3, "60 clean 5 in a row, 72 clean, sore left thumb");
    expect(faster(steady)).toEqual(["D minor, 8ths at 48", thumb(48)]);
  });

  test("and on the first days back after a break of weeks", () => {
    const back = "Not above 56 today: it is one of the first days back.";
    expect(faster(played(30, "72 clean"))).toEqual(["D minor, 8ths at 56", back]);
  });

  test("and of what is played today where nothing was before", () => {
    expect(faster(`${ago(3)}\n  C major, slow, sore left thumb\n`)).toEqual([
      "D minor, 8ths at 56",
      "Not above 56 today: on 6 March you noted “sore left thumb”.",
    ]);
  });
});
