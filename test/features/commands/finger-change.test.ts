import { expect, test } from "vitest";
import { fingerChange } from "../../../server/features/commands/finger-change.ts";
import { diagnosticsOf } from "../../../server/features/diagnostics/diagnostics.ts";
import { isoDate } from "../../../server/journal/calendar.ts";
import { edited, journalOf, URI } from "../journal-text.ts";
import { run, TODAY } from "../marked-text.ts";

// Invented journals. Which step is the hardest is tested in test/music/fingering/finger-change.test.ts.

const ALTO = "instrument alto recorder\n";
const DAY = "2026-03-09 Mon\n";

/** A day before and after. */
function check(before: string, after: string, head = ALTO): void {
  expect(run(fingerChange, head + DAY + before)).toBe(head + DAY + after);
}

/** An entry, and the one that is put in below it. */
function checkBelow(entry: string, added: string, head = ALTO): void {
  check(`‸${entry}`, `${entry}\n${added}‸`, head);
}

function checkRefused(line: string, reason: RegExp, head = ALTO): void {
  expect(run(fingerChange, `${head}${DAY}${line}‸`)).toMatch(reason);
}

test("the hardest finger change as it is first played, in the pattern and over the span of the line", () => {
  checkBelow("F major, slow", "notes A4 Bb4, back and forth, slurred");
  checkBelow("F major, thirds, five notes", "notes Bb4 A4, back and forth, slurred");
  checkBelow("F major, down", "notes Bb4 A4, back and forth, slurred");
  checkBelow("C major, five notes", "notes E5 F5, back and forth, slurred");
  checkBelow("F# major, slow", "notes G#4 A#4, back and forth, slurred");
  checkBelow("F# major, full range, at 60 clean", "notes E#6 F#6, back and forth, slurred");
  checkBelow("G minor arpeggio, tongued", "notes G4 Bb4, back and forth, slurred");
});

test("whatever is said of how it went", () =>
  checkBelow("F maj slurred 8ths 72 ok bit stiff today", "notes A4 Bb4, back and forth, slurred"));

test("where its day is over, today, which is begun if need be", () => {
  const before = `${ALTO}2026-03-08\nF major, slow‸\n`;
  const played = before.replace("‸", "");
  expect(run(fingerChange, before)).toBe(`${played}\n2026-03-09\nnotes A4 Bb4, back and forth, slurred‸\n`);
  expect(run(fingerChange, `${before}\n${DAY}C major, slow\n`)).toBe(
    `${played}\n${DAY}C major, slow\nnotes A4 Bb4, back and forth, slurred‸\n`,
  );
});

test("below the entry and its remarks, led in as the entry is", () => {
  check(
    "groundwork\n  - F major, at 60 cl‸ean\n    -- the fork!\n  G major, slow\n",
    "groundwork\n  - F major, at 60 clean\n    -- the fork!\n  - notes A4 Bb4, back and forth, slurred‸\n  G major, slow\n",
  );
  const crlf = (text: string): string => text.replaceAll("\n", "\r\n");
  const added = "notes A4 Bb4, back and forth, slurred‸";
  expect(run(fingerChange, crlf(`${ALTO}${DAY}F maj‸or\n`))).toBe(crlf(`${ALTO}${DAY}F major\n${added}\n`));
});

test("on the instrument of the line, which is named again", () =>
  checkBelow("C major, on tenor recorder", "notes E4 F4, back and forth, slurred, on tenor recorder"));

test("the second or third hardest, where that is meant; where there is none any more, that is said", () => {
  const put = (rank: number) =>
    run(
      (journal, uri, at) => fingerChange(journal, uri, at, { today: TODAY, rank }),
      `${ALTO}${DAY}F major, five notes‸`,
    );
  expect(put(1)).toContain("notes Bb4 C5, back and forth, slurred‸");
  expect(put(2)).toContain("notes F4 G4, back and forth, slurred‸");
  expect(put(9)).toMatch(/^This line no longer has that finger change/);
});

test("where nothing can be done, a sentence says why", () => {
  checkRefused('"Gigue", slow', /^The hardest finger change can be taken out of a scale or an arpeggio/);
  checkRefused("notes E5 F5, back and forth", /^The hardest finger change can be taken out of a scale or an arpeggio/);
  checkRefused("F major, thrdis, slow", /^The hardest finger change can be taken out of a scale or an arpeggio/);
  checkRefused('"odd" on F', /^The pattern or the scale of this line is declared/, `scale "odd": what\n${ALTO}`);
  checkRefused("-- a remark", /^There is no entry on this line/);
  checkRefused("F major", /^Which finger change is hardest is known for recorders only/, "");
  checkRefused("F major, on oboe", /^Which finger change is hardest is known for recorders only/);
  checkRefused(
    "F major",
    /^Finger changes are not known for German fingering/,
    "instrument alto recorder, german fingering\n",
  );
  checkRefused("F major, 1 notes", /^Within the range of the instrument this line never goes/);
});

test("what is put in is read without a finding, whatever the key and the recorder", () => {
  for (const recorder of ["garklein", "alto recorder in G", "voice flute", "great bass", "contrabass recorder"])
    for (const tonic of ["C", "Db", "D", "Eb", "E", "F", "F#", "G", "Ab", "A", "Bb", "B", "Cb", "C#"]) {
      const text = `instrument ${recorder}\n${DAY}  ${tonic} major, full range, on ${recorder}\n`;
      const answer = fingerChange(journalOf(text), URI, { line: 2, character: 0 }, { today: TODAY });
      if (!answer.ok) throw new Error(`${tonic} major on ${recorder}: ${answer.reason}`);
      const after = edited(text, answer.edits);
      expect(after.split("\n")[3]).toMatch(/^ {2}notes [A-G][#b]*\d [A-G][#b]*\d, back and forth, slurred, on /);
      expect(diagnosticsOf(journalOf(after), URI, TODAY)).toEqual([]);
    }
});

test("nothing on the day after a pain, and slowly for some days after that", () => {
  const answer = (ago: number) => {
    const pain = `${isoDate(TODAY - ago)}\n  F major, slow, sore left thumb\n`;
    const text = `instrument alto recorder\n${pain}${isoDate(TODAY)}\nF major, slow\n`;
    return fingerChange(journalOf(text), URI, { line: 4, character: 0 }, { today: TODAY });
  };
  const refused = answer(1);
  expect(refused.ok || refused.reason).toMatch(
    /Yesterday you noted “sore left thumb”\. If something hurts, stop and rest/,
  );
  const slowly = answer(3);
  expect(slowly.ok && slowly.edits[0]!.newText).toMatch(/, back and forth, slurred, slow$/);
  const usual = answer(40);
  expect(usual.ok && usual.edits[0]!.newText).toMatch(/, back and forth, slurred, slow$/); // back after a break
});
