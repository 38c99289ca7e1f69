import { expect, test } from "vitest";
import { definitionsAt } from "../../../server/features/navigation/definition.ts";
import { URI } from "../journal-text.ts";
import type { OtherFiles } from "../marked-text.ts";
import { atOnce, marked, shownPlaces } from "./marked.ts";

// Invented journals. What a definition leads to is the format's own decision.

/** Where the mark leads to: each line with the place in brackets. */
function check(text: string, expected: string, others?: OtherFiles): void {
  const { journal, position, texts } = marked(text, others);
  expect(shownPlaces(texts, atOnce(definitionsAt(journal, URI, position)))).toBe(expected);
}

const HEAD = { "journal.practice": 'piece "Courante in F" as Courante: F major\npattern "zigzag": 1 3 2 4\n' };

test("a title leads to its declaration, and a short name to the short name there", () => {
  check('2026-03-02\n"Courante‸ in F", slow\n', 'journal.practice: piece "[Courante in F]" as Courante: F major', HEAD);
  check("2026-03-02\nCour‸ante, slow\n", 'journal.practice: piece "Courante in F" as [Courante]: F major', HEAD);
  check("aim ‸Courante, by heart\n", 'journal.practice: piece "Courante in F" as [Courante]: F major', HEAD);
});

test("a title that nobody declares leads to the line that teaches it, wherever that is", () => {
  check("2026-03-03\nFro‸g 2 times good\n", "a.practice: [The Sleepy Frog], at 60", {
    "a.practice": "2026-03-02\nThe Sleepy Frog, at 60\n",
  });
  check("2026-03-09\nThe Sleepy Frog‸, at 66\n\n2026-03-02\nThe Sleepy Frog, at 60\n", "[The Sleepy Frog], at 60");
});

test("patterns, scales, phases, articulations, outcomes, instruments and set work lead to what declares them", () => {
  check('2026-03-02\nC major, "zig‸zag", slow\n', 'journal.practice: pattern "[zigzag]": 1 3 2 4', HEAD);
  check('scale "ragged": 1 2 b3 4\n2026-03-02\n"ragg‸ed" on D, slow\n', 'scale "[ragged]": 1 2 b3 4');
  check('phase "dance band"\n2026-03-02\nDance‸ band\n', 'phase "[dance band]"');
  check('articulation "ghosted"\n2026-03-02\nC major, ghos‸ted\n', 'articulation "[ghosted]"');
  check('outcome "flying": reached\n2026-03-02\nC major at 60 fly‸ing\n', 'outcome "[flying]": reached');
  check('instrument "my flute": D4 to B5\n2026-03-02\nC major, on my fl‸ute\n', 'instrument "[my flute]": D4 to B5');
  check("instrument alto recorder\n2026-03-02\nC major, on treble ‸recorder\n", "instrument [alto recorder]");
  check('set "clap it"\n2026-03-02\ndone "clap‸ it"\n', 'set "[clap it]"');
  check('focus "left thumb"\n2026-03-02\nC major, focus left th‸umb\n', 'focus "[left thumb]"');
  check(
    'piece "Suite": C major\nmovement "Suite" 2 "Air": C major\n2026-03-02\n"Suite", mvt ‸2, slow\n',
    'movement "Suite" [2] "Air": C major',
  );
});

test("an exercise leads to the aim at it, to what is set of it, or else to the first time", () => {
  const days = "2026-03-02\nD minor, thirds, at 60\n\n2026-03-03\nd minor, th‸irds, at 66\n";
  check(days, "[D minor], thirds, at 60");
  check(`aim D minor, thirds, 8ths at 96\n${days}`, "aim [D minor], thirds, 8ths at 96");
  check(
    `set D minor, thirds\naim D minor, thirds at 96\n${days}`,
    "aim [D minor], thirds at 96\nset [D minor], thirds",
  );
  check("2026-03-02\nD minor, at 60\n\n2026-03-03\nsame, 66\nD minor‸\nsame, 66\n", "[D minor], at 60");
});

test("remarks, prose, days and tempos of nothing lead nowhere", () => {
  check("2026-03-02\nD minor, at 60 -- the fr‸og\n", "");
  check("2026-03-02\nLovely ‸tone today.\n", "");
  check("2026-03-‸02\n", "");
  check("‸", "");
});
