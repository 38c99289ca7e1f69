import { expect, test } from "vitest";
import { referencesAt } from "../../../server/features/navigation/references.ts";
import { URI } from "../journal-text.ts";
import type { OtherFiles } from "../marked-text.ts";
import { atOnce, marked, shownPlaces } from "./marked.ts";

// Invented journals.

function check(text: string, expected: string, others?: OtherFiles, includeDeclaration = true): void {
  const { journal, position, texts } = marked(text, others);
  expect(shownPlaces(texts, atOnce(referencesAt(journal, URI, position, { includeDeclaration })))).toBe(expected);
}

test("a title, by whatever words, in all files of the journal", () => {
  const head = {
    "journal.practice": 'piece "Courante in F" as Courante: F major\nconcert "Play" on 2026-09-12: "Courante in F"\n',
    "a.practice": "2026-03-02\nCOURANTE, at 60\n",
  };
  const week = "2026-03-03\r\n  🎈 Lovely.\r\n  «Courante in F», slow\r\n  Cour‸ante, at 66 -- Courante\r\n";
  check(
    week,
    `journal.practice: piece "[Courante in F]" as Courante: F major
journal.practice: piece "Courante in F" as [Courante]: F major
journal.practice: concert "Play" on 2026-09-12: "[Courante in F]"
a.practice: [COURANTE], at 60
  «[Courante in F]», slow
  [Courante], at 66 -- Courante`,
    head,
  );
  check(
    week,
    `journal.practice: concert "Play" on 2026-09-12: "[Courante in F]"
a.practice: [COURANTE], at 60
  «[Courante in F]», slow
  [Courante], at 66 -- Courante`,
    head,
    false,
  );
});

test("a title that lines teach, in short, too", () => {
  check(
    "2026-03-02\nThe Sleepy Frog‸, at 60\n\n2026-03-03\nthe Sleepy Frog was fun\nFrog 2 times good\nthe sleepy frog, both hands\nsame, 66\n",
    "[The Sleepy Frog], at 60\n[Frog] 2 times good\n[the sleepy frog], both hands",
  );
});

test("patterns and the journal's own words", () => {
  check(
    'pattern "zigzag": 1 3 2 4\n2026-03-02\nC major, "zig‸zag"\nD major, “Zigzag”, at 60\n',
    'pattern "[zigzag]": 1 3 2 4\nC major, "[zigzag]"\nD major, “[Zigzag]”, at 60',
  );
  check(
    'phase "dance band"\n2026-03-02\ndance-ba‸nd: 40 min\n  C major, slow\n2026-03-03\nDANCE BAND\n',
    'phase "[dance band]"\n[dance-band]: 40 min\n[DANCE BAND]',
  );
  check(
    'articulation "ghosted"\nusual articulation gho‸sted\n2026-03-02\nC major, ghosted up, slurred down\n',
    'articulation "[ghosted]"\nusual articulation [ghosted]\nC major, [ghosted] up, slurred down',
  );
});

test("an exercise: wherever it was played, however it is written; aims and set work declare it", () => {
  const text =
    "aim D minor, thirds, 8ths at 96\n2026-03-02\nD minor, thirds‸, at 60\nD minor, at 60\n\n2026-03-03\nthirds in d minor, slurred, 66\nsame, 72\nC, D minor and G major, thirds, at 60\n";
  check(
    text,
    `aim [D minor], thirds, 8ths at 96
[D minor], thirds, at 60
thirds in [d minor], slurred, 66
[same], 72
C, [D minor] and G major, thirds, at 60`,
  );
  check(
    text,
    "[D minor], thirds, at 60\nthirds in [d minor], slurred, 66\n[same], 72\nC, [D minor] and G major, thirds, at 60",
    {},
    false,
  );
});

test("on a tempo: the tempos that were played in the same way", () => {
  check(
    "2026-03-02\nD minor, thirds, slurred at 6‸0, tongued at 54\n\n2026-03-03\nD minor, thirds, slurred at 66 clean\n",
    "D minor, thirds, slurred [at 60], tongued at 54\nD minor, thirds, slurred [at 66] clean",
  );
});

test("an aim's own words lead to the attempts at it", () => {
  check("aim D minor‸, thirds at 96\n2026-03-02\nD minor, thirds, at 60\n", "[D minor], thirds, at 60", {}, false);
});
