import fc from "fast-check";
import { TextDocument } from "vscode-languageserver-textdocument";
import type { TextEdit } from "../../server/features/types.ts";
import { Journal } from "../../server/journal/journal.ts";
import { createDocument } from "../../server/syntax/document/document.ts";

export const URI = "file:///journal/week.practice";

/** A journal of one file. */
export function journalOf(text: string): Journal {
  return new Journal("file:///journal", new Map([[URI, createDocument(text)]]));
}

/** A text after edits, by the protocol's own library: it refuses edits that overlap. */
export function edited(text: string, edits: readonly TextEdit[]): string {
  const document = TextDocument.create(URI, "practice-journal", 0, text);
  return TextDocument.applyEdits(document, [...edits] as never);
}

/** Invented lines, one or more of every kind, and odd ones. */
const LINES = [
  "player Noor",
  "instrument alto recorder",
  'instrument "my flute": D4 to B5, half holes D#4',
  "pitch A=415, Vallotti",
  "note value 8ths",
  "usual articulation tongued",
  'piece "Ground in G" as Ground: G minor 96 bars, goal quarter=84, due 2026-05-09',
  'movement "Ground in G" 2 "Air": C major, goal ♩.=66',
  'concert "Recital" on 2026-05-09: "Ground in G", "Solo"',
  "aim D minor melodic thirds 8ths at 96 by 2026-04-30",
  'set "clap line 4, then say it" by 2026-03-09',
  "set D melodic minor, thirds, tongued, 8ths at 76, 5 days by 2026-03-09",
  'pattern "zigzag": 1 3 2 4, step 2',
  'phase "market band"',
  "2026-03-02 Mon, 50 min",
  "2026-03-03 50 min plan",
  "02.03.2026",
  "2026-13-45",
  "- 2026-03-04: rest, thumb hurts",
  "session 19:30, 40 min",
  "session 45 min",
  "groundwork, 15 min",
  "warm up: 5 min",
  "pieces plan",
  "market band",
  "together with Ann",
  "break 5 min",
  "plan",
  "rest",
  "D minor melodic: D E F G A B C# D C Bb A G F E D, 1 flat",
  "D minor, five notes: D,E,F,G|A slow",
  "C major: TTSTTTS, thirds",
  "D minor thirds top down tongued 8ths at 60 clean 66 clean 5 in a row 72 uneven tense focus finger changes",
  "F# major 6 sharps slurred up tongued down dotted 16ths at 60 no click",
  "G major, clean at 60",
  "G major clean tense at 60, 66",
  "straight 8ths at 60",
  "C major > F major→Bb major straight 8ths at 66 nearly",
  "notes E5, F5, back and forth at 60 clean 4 of 5 3 times",
  "long tones on F4 C5 with drone F 5 min",
  "trill E6 with F6 slow",
  "Ground bars 5-8, 17-20 by heart",
  "“Ground in G”, mvt 2 from the top, slow",
  'D major "zigzag" staccato',
  'done "clap line 4, then say it"',
  "thirds in D minor, slow",
  "Dm, slow",
  "C, G and D major",
  "H major, slow",
  "C major, thrdis, slow",
  "C major 60",
  'C major, "no end, slow',
  "tuning, with Anna -- at last",
  "-- a remark,with  signs",
  "ask: breathe here",
  "said: roll the thumb",
  "— long dash",
  "Sound freer today, at last.",
  "A major -- > Bb major",
  "playr Noor",
  "<<<<<<< mine",
  "=======",
  "- * • D minor",
  "• D minor,slow",
  ",,:",
  "\uFEFF",
  "\uFEFFD minor slow",
  "",
  "",
];

/** A line as a hurried hand would type it: white space and commas where they fall. */
const sloppyLine = fc
  .tuple(
    fc.constantFrom("", "", "  ", "    ", "\t", " \t"),
    fc.constantFrom(...LINES),
    fc.array(fc.constantFrom(" ", " ", " ", "  ", "\t", "\u00A0", ", ", " ,"), { minLength: 1, maxLength: 7 }),
    fc.constantFrom("", "", " ", "\t "),
    fc.boolean(),
  )
  .map(([indent, line, spaces, trail, sloppy]) => {
    let at = 0;
    const typed = sloppy ? line.replace(/, ?| /g, () => spaces[at++ % spaces.length]!) : line;
    return indent + typed + trail;
  });

const lineEnd = fc.constantFrom("\n", "\n", "\r\n", "\r");

/** Whole journals of such lines, with every kind of line end, mixed. */
export const journalText: fc.Arbitrary<string> = fc
  .tuple(fc.array(fc.tuple(sloppyLine, lineEnd), { maxLength: 14 }), fc.boolean())
  .map(([lines, ended]) => {
    const text = lines.map(([line, end]) => line + end).join("");
    return ended ? text : text.replace(/\r\n$|\n$|\r$/, "");
  });

/** Anything at all, with the signs that the language cuts at. */
export const anyText: fc.Arbitrary<string> = fc.oneof(
  fc.string({ unit: "binary", maxLength: 60 }),
  fc
    .array(
      fc.constantFrom(
        ...'"“»,:>→-–|=\n\r\t #b♭𝄪0172\uFEFF\u2028Aa'.split(""),
        "2026-03-02",
        "--",
        " -- ",
        "D minor",
        "at 60",
        "clean",
        "bars 1",
        "piece ",
        "set ",
        "rest",
        "plan",
      ),
      { maxLength: 40 },
    )
    .map((parts) => parts.join("")),
);
