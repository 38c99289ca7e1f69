import { describe, expect, test } from "vitest";
import { declareTitle, declareTitleIn } from "../../../server/features/commands/declare-title.ts";
import { edited, journalOf, URI } from "../journal-text.ts";
import { type OtherFiles, run } from "../marked-text.ts";
import { playedIn } from "../played.ts";

// What teaches a title is in syntaxes/FORMAT.md, "Titles"; titles and days are invented.

const DAYS = `2026-03-02 Mon
The Sleepy Frog, bars 1-8, at 60 clean

2026-03-03 Tue
the sleepy frog, both hands
`;
const FROG = 'piece "The Sleepy Frog"';

function check(marked: string, after: string | RegExp, others: OtherFiles = {}): void {
  expect(run(declareTitle, marked, others)).toEqual(after instanceof RegExp ? expect.stringMatching(after) : after);
}

describe("a title that lines taught is declared", () => {
  test("above the days, from the line that taught it or from a later one", () => {
    check(`‸${DAYS}`, /^There is no entry on this line/);
    check(DAYS.replace("The", "‸The"), `${FROG}‸\n${DAYS}`);
    check(DAYS.replace("both", "‸both"), `${FROG}‸\n${DAYS}`);
  });

  test("below the other pieces, as they are set in, else at the end of the head", () => {
    const head = '  piece "Gavotte": D minor\n  player Noor\n\n';
    check(head + DAYS.replace("The", "‸The"), `  piece "Gavotte": D minor\n  ${FROG}‸\n  player Noor\n\n${DAYS}`);
    check(`player Noor\r\n\r\n${DAYS.replace("The", "‸The")}`, `player Noor\r\n${FROG}‸\r\n\r\n${DAYS}`);
  });

  test("in journal.practice, where the journal has that", () => {
    check(DAYS.replace("The", "‸The"), `journal.practice\nplayer Noor\n${FROG}‸\n`, {
      "journal.practice": "player Noor\n",
      "april.practice": 'piece "Gavotte"\n',
    });
  });

  test("with the short name that most lines write", () => {
    const short = `${DAYS}
2026-03-04 Wed
Frog 2 times good
Frog 2 times bad
Sleepy 1 time bad
`;
    check(short.replace("both", "‸both"), `${FROG} as Frog‸\n${short}`);
    check(short.replace("1 time", "‸1 time"), `${FROG} as Frog‸\n${short}`);
  });

  test("without one that could be another title's as well", () => {
    const two = `${DAYS}
2026-03-04 Wed
Frog 2 times good

2026-03-05 Thu
Frog Gavotte, bars 1-8, at 60
`;
    check(two.replace("both", "‸both"), `${FROG}‸\n${two}`);
  });
});

test("nothing is declared twice, nor what is not a title", () => {
  check(`${FROG}\n${DAYS.replace("The S", "‸The S")}`, "This title is declared already.");
  check("2026-03-02\n‸F major, slow\n", "There is no title of a piece on this line.");
});

/** The titles of the actions on a line. */
function offered(text: string, line: number): readonly string[] {
  const at = { line, character: 0 };
  return declareTitleIn(journalOf(text), URI, { start: at, end: at }).map(({ title }) => title);
}

test("as an action on the line, where a diagnostic does not have the same fix", () => {
  expect(offered(DAYS, 4)).toEqual([`Declare ${FROG}`]);
  expect(offered(DAYS, 1)).toEqual([]); // "The Sleepy Frog" is not declared yet, and its fix is the same
  expect(offered(`${DAYS}\n2026-03-04\nFrog 2 times good\n`, 1)).toEqual([`Declare ${FROG} as Frog`]);
  expect(offered(`${FROG}\n${DAYS}`, 2)).toEqual([]);
  expect(offered(DAYS, 0)).toEqual([]);
});

test("the history is as it was", () => {
  const text = `${DAYS}
2026-03-04 Wed
Frog, bars 1-8, at 66 clean
Sleepy Frog with the CD, at 70
`;
  const journal = journalOf(text);
  const found = declareTitle(journal, URI, { line: 1, character: 0 });
  const after = found.ok ? edited(text, found.edits) : "";
  expect(after).toContain(`${FROG} as `);
  expect(playedIn(journalOf(text))).toHaveLength(4);
  expect(playedIn(journalOf(after))).toEqual(playedIn(journalOf(text)));
});
