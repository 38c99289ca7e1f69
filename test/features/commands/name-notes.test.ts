import fc from "fast-check";
import { expect, test } from "vitest";
import { nameNotesIn } from "../../../server/features/commands/name-notes.ts";
import { diagnosticsOf } from "../../../server/features/diagnostics/diagnostics.ts";
import type { CodeAction, Range } from "../../../server/features/types.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import modes from "../../reference/modes.json" with { type: "json" };
import scales from "../../reference/scales.json" with { type: "json" };
import { times } from "../../support/random-runs.ts";
import { anyText, edited, journalOf, journalText, URI } from "../journal-text.ts";

const TODAY = parseIsoDate("2026-06-01")!;
const HEAD = 'scale "purvi": 1 b2 3 #4 5 b6 7\n2026-03-02 Mon\n';

/** The actions at the mark `‸` on a line below a day. */
function actionsAt(marked: string, only?: readonly string[]): readonly CodeAction[] {
  const [before = "", after = ""] = marked.split("‸");
  const place = { line: 2, character: before.length };
  return nameNotesIn(journalOf(HEAD + before + after), URI, { start: place, end: place }, only);
}

/** Each action: its title, and what the line becomes. */
function check(marked: string, ...expected: readonly string[]): void {
  const text = HEAD + marked.replace("‸", "");
  const shown = actionsAt(marked).map(({ title, edits }) => `${title}: ${edited(text, edits).slice(HEAD.length)}`);
  expect(shown).toEqual(expected);
}

test("notes that are the subject get the name of their scale, and stay as a claim", () => {
  check(
    "no‸tes D E F G A Bb C#, slurred, at 60 clean",
    "Name this as D harmonic minor: D harmonic minor: D E F G A Bb C#, slurred, at 60 clean",
  );
  check(
    "notes D4, E4, F4, G4, A4, B♭4, C♯5‸",
    "Name this as D harmonic minor: D harmonic minor: D4, E4, F4, G4, A4, B♭4, C♯5",
  );
});

// test/reference/modes.json, scales.json: LilyPond 2.24.1.
test("every mode, and every minor scale up and down, by its notes from the references", () => {
  const first = (notes: readonly string[]): string => actionsAt(`‸notes ${notes.join(" ")}`)[0]!.title;
  const names: Readonly<Record<string, string>> = { ionian: "major", aeolian: "natural minor" };
  for (const { mode, tonic, up } of modes.modes)
    expect(first([...up, tonic])).toBe(`Name this as ${tonic} ${names[mode] ?? mode}`);
  for (const { tonic, scales: forms } of scales.minor)
    for (const [form, { up, down }] of Object.entries(forms))
      expect(first([...up, ...down.slice(1)]), `${tonic} ${form}`).toBe(`Name this as ${tonic} ${form} minor`);
});

test("the first notes of a scale are named with how many they are; three names at most", () => {
  check(
    "‸notes D E F G A, slurred",
    "Name this as D natural minor: D natural minor, 5 notes: D E F G A, slurred",
    "Name this as D harmonic minor: D harmonic minor, 5 notes: D E F G A, slurred",
    "Name this as D melodic minor: D melodic minor, 5 notes: D E F G A, slurred",
  );
});

test("notes with no subject before them get one", () => {
  check("D E F G A Bb C#‸, slow", "Name this as D harmonic minor: D harmonic minor: D E F G A Bb C#, slow");
});

test("a chord is named where the notes are no others", () => {
  check("‸notes D F A D, slow", "Name this as D minor arpeggio: D minor arpeggio: D F A D, slow");
});

test("a scale of the journal's own is named like any other", () => {
  check("‸notes D Eb F# G# A Bb C#", 'Name this as "purvi" on D: "purvi" on D: D Eb F# G# A Bb C#');
});

test("a claim that is not what its subject says, and exactly another scale or chord: another subject", () => {
  check("F major‸: D E F G A Bb C#", "Change the subject to D harmonic minor: D harmonic minor: D E F G A Bb C#");
  check(
    "D natural minor: D E F G A Bb C#‸, 1 flat, at 60 clean",
    "Change the subject to D harmonic minor: D harmonic minor: D E F G A Bb C#, 1 flat, at 60 clean",
  );
  check(
    "C major, thirds: C Eb D F ‸Eb G F Ab G Bb Ab C",
    "Change the subject to C natural minor: C natural minor, thirds: C Eb D F Eb G F Ab G Bb Ab C",
  );
  check("G minor arpeggio: ‸G B D G", "Change the subject to G major arpeggio: G major arpeggio: G B D G");
  check("Dm: D E ‸F G A Bb C#"); // `other-scale` offers it
});

test("a claim that is right, or nearly right and no other scale, is left alone", () => {
  check("D harmonic minor: D E ‸F G A Bb C#");
  check("D melodic minor: D E F G A B C# D C Bb A G ‸F E D");
  check("D major: D E F# G# A B‸b C#");
  check("F# major: F# G# A# B C# D# F‸ F#");
  check("D minor: D E F‸ G A H C D");
  check("D minor: D E F‸ G A Bb C# D"); // which `other-scale` says, and offers
});

test("two notes, notes of too many scales, titles, activities and prose get no name", () => {
  check("‸notes E5 F5, back and forth, at 60 clean");
  check("‸notes D E G A");
  check('"Air": D E F G ‸A Bb C#');
  check("improvising: D E F G ‸A Bb C#");
  check("Felt ‸tense today");
  check("long tones on D E F G ‸A Bb C#, slow");
});

test("nothing is offered beside the notes and their subject, or over several lines", () => {
  check("notes D E F G A Bb C#, slur‸red, at 60 clean");
  check("F major: D E F G A Bb C#, slur‸red");
  const lines: Range = { start: { line: 1, character: 0 }, end: { line: 2, character: 9 } };
  expect(nameNotesIn(journalOf(`${HEAD}notes D E F G A Bb C#`), URI, lines)).toEqual([]);
});

// Language Server Protocol 3.17, CodeActionKind.RefactorRewrite.
test("it is a rewriting, given where such a kind or any is asked for, and neither preferred nor a mend", () => {
  const marked = "‸notes D E F G A Bb C#";
  for (const only of [undefined, [""], ["refactor"], ["refactor.rewrite"], ["quickfix", "refactor"]])
    expect(actionsAt(marked, only), String(only)).toMatchObject([
      { kind: "refactor.rewrite", preferred: false, diagnostics: [] },
    ]);
  for (const only of [[], ["quickfix"], ["source"], ["refactor.extract"]]) expect(actionsAt(marked, only)).toEqual([]);
});

test("other faults of the line neither hinder it nor grow more", () => {
  check(
    "‸notes D E F G A Bb C#, slurde, slow",
    "Name this as D harmonic minor: D harmonic minor: D E F G A Bb C#, slurde, slow",
  );
});

test("whatever the text, there is an answer, and what is offered makes no error or warning more", () => {
  const faults = (text: string): number =>
    diagnosticsOf(journalOf(text), URI, TODAY).filter(({ severity }) => severity === "error" || severity === "warning")
      .length;
  const line = fc.oneof(
    journalText,
    anyText,
    fc
      .tuple(
        fc.constantFrom("notes ", "", "F major: ", "D minor, thirds: ", "Dm: "),
        fc.constantFrom(...modes.modes),
        fc.nat(9),
        fc.constantFrom("", ", slow", " slurred at 60 clean", ", back and forth", ", 1 flat", ", slurde"),
      )
      .map(([before, { up }, length, after]) => before + [...up, up[0]].slice(0, length).join(" ") + after),
  );
  let offered = 0;
  fc.assert(
    fc.property(line, fc.nat(12), (text, character) => {
      const journal = HEAD + text;
      const place = { line: 2, character };
      for (const { edits } of nameNotesIn(journalOf(journal), URI, { start: place, end: place })) {
        offered++;
        expect(faults(edited(journal, edits))).toBeLessThanOrEqual(faults(journal));
      }
    }),
    { seed: 5 },
  );
  expect(offered).toBeGreaterThan(times(2));
});
