import { describe, expect, test } from "vitest";
import { renameableAt } from "../../../server/features/navigation/prepare-rename.ts";
import { renameAt } from "../../../server/features/navigation/rename.ts";
import { URI } from "../journal-text.ts";
import type { OtherFiles } from "../marked-text.ts";
import { atOnce, bracketed, editedTexts, marked } from "./marked.ts";

// Invented journals and titles.

/** What the file with the mark is after a rename, or the sentence that says why there is none. */
function renamed(text: string, name: string, others?: OtherFiles): string {
  const { journal, position, texts } = marked(text, others);
  const answer = atOnce(renameAt(journal, URI, position, name));
  if (!answer.ok) return answer.reason;
  const after = editedTexts(texts, answer.files);
  return [...after].map(([uri, each]) => (uri === URI ? each : `${uri.split("/").at(-1)}\n${each}`)).join("\n");
}

function check(before: string, name: string, after: string, others?: OtherFiles): void {
  expect(renamed(before, name, others)).toBe(after);
}

describe("a title", () => {
  test("that is declared", () => {
    check(
      'piece "Courante in F" as Courante: F major\n\n2026-03-02\n"Courante in‸ F", bars 1-8, at 60\nCourante, slow\nCourante in F, at 66 clean\n',
      "Gigue in G",
      'piece "Gigue in G" as Courante: F major\n\n2026-03-02\n"Gigue in G", bars 1-8, at 60\nCourante, slow\nGigue in G, at 66 clean\n',
    );
  });

  test("by its short name", () => {
    check(
      'piece "Courante in F" as Courante: F major\n\n2026-03-02\n"Courante in F", bars 1-8, at 60\nCour‸ante, slow\ncourante, at 66 clean\n',
      "Dance",
      'piece "Courante in F" as Dance: F major\n\n2026-03-02\n"Courante in F", bars 1-8, at 60\nDance, slow\ndance, at 66 clean\n',
    );
  });

  test("that lines teach, in every hand", () => {
    check(
      "2026-03-02\nThe Sleepy Frog, bars 1-8, at 60 clean\n\n2026-03-03\nThe Sleepy ‸Frog with the CD, too fast for me\nFrog 2 times good 1 time bad\nthe sleepy frog, both hands\nTHE SLEEPY FROG, at 60\n",
      "The Lazy Toad",
      "2026-03-02\nThe Lazy Toad, bars 1-8, at 60 clean\n\n2026-03-03\nThe Lazy Toad with the CD, too fast for me\nToad 2 times good 1 time bad\nthe lazy toad, both hands\nTHE LAZY TOAD, at 60\n",
    );
  });

  test("in whatever file, aim or concert", () => {
    check(
      'aim "Lament", by heart by 2026-09-01\n\n2026-03-02\nLam‸ent, slow\n',
      "Song",
      'journal.practice\npiece "Song": last note D, 1 flat\nmovement "Song" 2 "Air": C major\nconcert "Harvest" on 2026-09-12: "Song"\n\naim "Song", by heart by 2026-09-01\n\n2026-03-02\nSong, slow\n',
      {
        "journal.practice":
          'piece "Lament": last note D, 1 flat\nmovement "Lament" 2 "Air": C major\nconcert "Harvest" on 2026-09-12: "Lament"\n',
      },
    );
  });
});

test("a pattern, a scale and the journal's own words", () => {
  check(
    'pattern "zig‸zag": 1 3 2 4\n\n2026-03-02\nC major, "Zigzag", at 60\nD major, "zigzag", at 60\n',
    "to and fro",
    'pattern "to and fro": 1 3 2 4\n\n2026-03-02\nC major, "To and fro", at 60\nD major, "to and fro", at 60\n',
  );
  check(
    'scale "ragged": 1 2 b3 4 5 6 7\n\n2026-03-02\n"rag‸ged" on D, slow\n',
    "torn",
    'scale "torn": 1 2 b3 4 5 6 7\n\n2026-03-02\n"torn" on D, slow\n',
  );
  check(
    'outcome "in the zone": reached\nphase "dance band"\n\n2026-03-02\ndance band: 40 min\n  C major at 60 in the zo‸ne, 66 clean\n',
    "flying",
    'outcome "flying": reached\nphase "dance band"\n\n2026-03-02\ndance band: 40 min\n  C major at 60 flying, 66 clean\n',
  );
  check(
    'phase "dance band"\n\n2026-03-02\ndance ba‸nd: 40 min, with the neighbours\n  C major at 60\n',
    "Market band",
    'phase "Market band"\n\n2026-03-02\nMarket band: 40 min, with the neighbours\n  C major at 60\n',
  );
});

describe("quotes", () => {
  test("come where the new name is not read as a title without them, and there alone", () => {
    check(
      "2026-03-02\nThe Sleepy Frog‸, bars 1-8, at 60\nThe Sleepy Frog 2 good\n",
      "slow study",
      '2026-03-02\nslow study, bars 1-8, at 60\n"slow study" 2 good\n',
    );
  });

  test("stay as they were, of whatever language, and need not be typed", () => {
    check(
      "2026-03-02\n„Der Frosch‸“, at 60\n«Der Frosch», slow\n",
      ' "Die Kröte 🐸" ',
      "2026-03-02\n„Die Kröte 🐸“, at 60\n«Die Kröte 🐸», slow\n",
    );
  });
});

test("line ends, spaces and remarks stay", () => {
  check(
    "\uFEFF2026-03-02\r\n\tThe Frog‸,  at 60 🎈 -- The Frog\r\n  The Frog, at  66\r",
    "The Toad",
    "\uFEFF2026-03-02\r\n\tThe Toad,  at 60 🎈 -- The Frog\r\n  The Toad, at  66\r",
  );
});

test("some words of a title become their fellows in the new one, or all of it, or stay", () => {
  const days = "2026-03-02\nThe Sleepy Frog‸, at 60\n\n2026-03-03\nFrog 2 times good\n";
  check(days, "The Lazy Toad", "2026-03-02\nThe Lazy Toad, at 60\n\n2026-03-03\nToad 2 times good\n");
  check(days, "Old Toad", "2026-03-02\nOld Toad, at 60\n\n2026-03-03\nOld Toad 2 times good\n");
  check(days, "The Sleepy Frog Song", "2026-03-02\nThe Sleepy Frog Song, at 60\n\n2026-03-03\nFrog 2 times good\n");
});

test("the same name changes nothing, another case of it does", () => {
  check("2026-03-02\nThe Frog‸, at 60\n", "The Frog", "2026-03-02\nThe Frog, at 60\n");
  check("2026-03-02\nThe frog‸, at 60\n", "The Frog", "2026-03-02\nThe Frog, at 60\n");
});

test("in a journal of another language", () => {
  check(
    'names german\npiece "Walzer in a" as Walzer: a-Moll\n\n2026-03-02\nWal‸zer, Takt 1-8, 60\n',
    "Abendlied",
    'names german\npiece "Walzer in a" as Abendlied: a-Moll\n\n2026-03-02\nAbendlied, Takt 1-8, 60\n',
  );
});

describe("is refused", () => {
  test.each([
    ["2026-03-02\nC maj‸or, slow\n", "x", /Put the cursor/],
    ["2026-03-02\nThe Frog‸, at 60\n", "D minor", /something else, such as/],
    ["2026-03-02\nThe Frog‸, at 60\n", "17", /letter/],
    ["2026-03-02\nThe Frog‸, at 60\n", 'a "b', /no quotes/],
    ["2026-03-02\nThe Frog‸, at 60\nThe Toad, at 60\n", "The Toad", /called that already/],
    ["instrument alto rec‸order\n", "x", /Every journal calls/],
    ['phase "dance‸ band"\n', "warm-up", /something else, such as/],
    ['pattern "zig‸zag": 1 3\npattern "hop": 1 4\n', "Hop", /called that already/],
    ['shared\npattern "zig‸zag": 1 3\n', "hop", /Other journals/],
    ['piece "A": C major\nmovement "A" ‸2 "Air": C major\n', "hop", /by its number/],
    ['phase "dance‸ band"\n2026-03-02\ndance band\n  Hop, at 60\n', "Hop", /line 4 would mean something else/],
    ["2026-03-02\nThe Frog‸, at 60\n", "x".repeat(61), /60 characters/],
  ])("%j to %j", (text, name, reason) => {
    expect(renamed(text, name)).toMatch(reason);
  });
});

test("what is offered to be changed", () => {
  const offered = (text: string): string => {
    const { journal, position, texts } = marked(text);
    const found = atOnce(renameableAt(journal, URI, position));
    return found.ok ? `${found.called} ${bracketed(texts.get(URI)!, found.range)}` : found.reason;
  };
  expect(offered('2026-03-02\n"Winter Air‸", at 60\n')).toBe('Winter Air "[Winter Air]", at 60');
  expect(offered("2026-03-02\nThe Frog, at 60\nFrog‸ 2 times good\n")).toBe("The Frog [Frog] 2 times good");
  expect(offered('piece "Lament in F" as Sad: F major\n2026-03-02\nSAD‸, at 60\n')).toBe("Sad [SAD], at 60");
});
