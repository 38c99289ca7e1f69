import { describe, expect, test } from "vitest";
import { fingerChange } from "../../../server/features/commands/finger-change.ts";
import { writeNotes } from "../../../server/features/commands/write-notes.ts";
import { completionsAt } from "../../../server/features/completion/completion.ts";
import { codeActionsIn } from "../../../server/features/diagnostics/code-actions.ts";
import { diagnosticsOf } from "../../../server/features/diagnostics/diagnostics.ts";
import { hoverAt } from "../../../server/features/hover/hover.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { subjectText } from "../../../server/journal/subject-text.ts";
import { type NamesId, namesById } from "../../../server/music/notes/note-names.ts";
import { rowsOf } from "../../syntax/line/print.ts";
import { edited, journalOf, URI } from "../journal-text.ts";
import { run } from "../marked-text.ts";

// A journal whose notes have names in another language: read, checked, mended, offered and shown in it. What the names
// are is held against test/reference/note-names.json in test/music/notes/note-names.test.ts.

const TODAY = parseIsoDate("2026-03-09")!;

function head(id: NamesId, instrument = ""): string {
  return `names ${id}\n${instrument}\n2026-03-02 Mon\n`;
}

/** What a line is found to be, in English; in parentheses the findings. */
function meaning(id: NamesId, line: string): string {
  const journal = journalOf(head(id) + line);
  const [entry] = journal.model(journal.files.get(URI)!.blocks.at(-1)!).entries;
  const found = diagnosticsOf(journal, URI, TODAY).map(({ code }) => code);
  const subject = entry?.subject ? subjectText(entry.subject, namesById("english")!) : "no subject";
  return [subject, ...(found.length ? [`(${found.join(", ")})`] : [])].join(" ");
}

function check(id: NamesId, rows: string): void {
  for (const [typed, means] of rowsOf(rows)) expect([typed, meaning(id, typed)]).toEqual([typed, means]);
}

describe("subjects are read", () => {
  test("German", () =>
    check(
      "german",
      `
    Fis-Dur                     => F# major
    fis-Moll                    => F# natural minor
    fis-moll, slow              => F# natural minor
    B-Dur                       => Bb major
    H-Dur                       => B major
    Bb major                    => Bb major
    es moll                     => Eb natural minor
    d-Moll melodic, thirds      => D melodic minor
    d melodic Moll              => D melodic minor
    harmonic minor on d         => D harmonic minor
    As dorian                   => Ab dorian
    g-Moll arpeggio, 2 octaves  => G minor arpeggio
    A dominant seventh          => A dominant seventh
    notes fis' g', slurred      => notes F#4 G4
    notes Fis-Gis               => notes F# G#
    long tones on f' c'' f''    => long tones on F4 C5 F5
    trill e'' with fis''        => trill E5 with F#5
    C-Dur > F-Dur > B-Dur       => C major > F major > Bb major
    chromatic from g to g'      => chromatic from G to G4
    H                           => B major
    `,
    ));

  test("Dutch", () =>
    check(
      "dutch",
      `
    bes groot            => Bb major
    Bes majeur           => Bb major
    b klein              => B natural minor
    d kleine terts       => D natural minor
    d klein melodic      => D melodic minor
    es mineur arpeggio   => Eb minor arpeggio
    `,
    ));

  test("French, Italian and Spanish", () => {
    check(
      "french",
      `
    fa dièse mineur              => F# natural minor
    Fa diese mineur, slow        => F# natural minor
    si bémol majeur              => Bb major
    fa# mineur melodic, thirds   => F# melodic minor
    ut majeur                    => C major
    ré mineur arpeggio           => D minor arpeggio
    notes mi5 fa5, slurred       => notes E5 F5
    six notes                    => no subject (no-subject)
    `,
    );
    check(
      "italian",
      `
    fa diesis minore        => F# natural minor
    si bemolle maggiore     => Bb major
    sol minore harmonic     => G harmonic minor
    `,
    );
    check(
      "spanish",
      `
    fa sostenido menor   => F# natural minor
    si bemol mayor       => Bb major
    la doble bemol mayor => Abb major (theoretical-key)
    `,
    );
  });

  test("a small letter alone may be either, and both are offered in the language", () => {
    expect(meaning("german", "d")).toBe("no subject (ambiguous-subject)");
    expect(messages("german", "d").join()).toContain('"D-Dur" or "d-Moll"');
    expect(messages("french", "ré").join()).toContain('"ré majeur" or "ré mineur"');
  });

  test("prose stays prose", () => {
    for (const line of ["Es war heute schwer.", "des Morgens geübt", "As ever, a good day."])
      expect([line, meaning("german", line)]).toEqual([line, "no subject (prose)"]);
    expect(meaning("italian", "La mano stanca.")).toBe("no subject"); // of the body, and no more than kept
    for (const line of ["sol quattro righe"])
      expect([line, meaning("italian", line)]).toEqual([line, "no subject (prose)"]);
  });
});

function messages(id: NamesId, line: string): readonly string[] {
  return diagnosticsOf(journalOf(head(id) + line), URI, TODAY).map(({ message }) => message);
}

/** What is said of a line, and what the line is after the first fix of each finding, one after another. */
function checkMend(id: NamesId, line: string, says: string, mended: string): void {
  expect(messages(id, line).join("\n"), line).toBe(says);
  const text = head(id) + line;
  const diagnostics = diagnosticsOf(journalOf(text), URI, TODAY);
  const [fix] = codeActionsIn(diagnostics, diagnostics[0]!.range);
  expect(edited(text, fix!.edits)).toBe(head(id) + mended);
}

describe("claims are checked, and mended as they are written", () => {
  test("right ones", () => {
    for (const line of [
      "D-Dur: d e fis g a h cis d",
      "D-Dur: D E Fis G A H Cis D, 2 sharps",
      "Fis-Dur: Fis Gis Ais H Cis Dis Eis Fis, 6#",
      "es-Moll, from es' to es'': es' f' ges' as' b' ces'' des'' es''",
    ])
      expect([line, messages("german", line)]).toEqual([line, []]);
    for (const line of ["ré majeur: ré mi fa# sol la si do# ré", "ré majeur: re mi fa dièse sol la si do dièse re"])
      expect([line, messages("french", line)]).toEqual([line, []]);
    expect(messages("spanish", "re mayor: re mi fa# sol la si do# re")).toEqual([]);
  });

  test("a wrong pitch and a wrong letter", () => {
    checkMend(
      "german",
      "Fis-Dur: Fis Gis Ais H Cis Dis F Fis",
      "Fis-Dur has Eis, not F: its seventh degree takes the letter E.",
      "Fis-Dur: Fis Gis Ais H Cis Dis Eis Fis",
    );
    checkMend(
      "german",
      "D-Dur: d e fis g a b cis d",
      "D-Dur has H, not B: its sixth degree lies a whole tone above A.",
      "D-Dur: d e fis g a h cis d",
    );
    checkMend(
      "german",
      "g-Moll, from g' to g'': g' a' b' c'' d'' e'' f'' g''",
      "g-Moll natürlich has Es, not E: its sixth degree lies a semitone above D.",
      "g-Moll, from g' to g'': g' a' b' c'' d'' es'' f'' g''",
    );
    checkMend(
      "french",
      "fa dièse majeur: fa dièse, sol dièse, la dièse, si, do dièse, ré dièse, fa, fa dièse",
      "fa dièse majeur has mi#, not fa: its seventh degree takes the name mi.",
      "fa dièse majeur: fa dièse, sol dièse, la dièse, si, do dièse, ré dièse, mi dièse, fa dièse",
    );
    checkMend(
      "italian",
      "re maggiore: re mi fa♯ sol la si do re",
      "re maggiore has do#, not do: its seventh degree lies a whole tone above si.",
      "re maggiore: re mi fa♯ sol la si do♯ re",
    );
  });

  test("a missing note, a signature, a word that is no note, a key of theory", () => {
    checkMend(
      "dutch",
      "D majeur: D E Fis G A Cis D",
      "B is missing between A and Cis: D majeur goes A B Cis.",
      "D majeur: D E Fis G A B Cis D",
    );
    checkMend(
      "german",
      "H-Dur, 2 sharps",
      "H-Dur has 5 sharps (Fis Cis Gis Dis Ais), not 2 sharps. 2 sharps belong to D-Dur and h-Moll.",
      "H-Dur, 5 sharps",
    );
    checkMend("german", "C-Dur: C D E F G A X C", "X is not a note name: C-Dur has H here.", "C-Dur: C D E F G A H C");
    checkMend(
      "german",
      "Gis-Dur, slow",
      "Gis-Dur would need 8 sharps (Fisis). Its usual name is As-Dur, 4 flats.",
      "As-Dur, slow",
    );
  });
});

describe("everything that is shown", () => {
  const shown = (id: NamesId, line: string, instrument = "instrument alto recorder"): string => {
    const text = head(id, instrument) + line.replace("‸", "");
    const position = { line: 3, character: line.indexOf("‸") };
    return hoverAt(journalOf(text), URI, position, { today: TODAY })?.markdown ?? "";
  };

  test("the hover on a scale and on a note of it", () => {
    const hover = shown("german", "H-Dur‸, slow");
    for (const words of [
      "**H-Dur**",
      "H Cis Dis E Fis Gis Ais H; five sharps.",
      "Relative: gis-Moll natürlich; parallel: h-Moll natürlich",
    ])
      expect(hover).toContain(words);
    expect(shown("german", "D-Dur: d e fis g a h‸ cis d")).toBe("H is the sixth degree of D-Dur.");
    expect(shown("spanish", "la menor‸, slow")).toContain("`menor` alone means natural minor.");
    expect(shown("french", "D minor‸, slow")).toContain("ré mi fa sol la sib do ré; one flat.");
    expect(shown("german", "H-Dur, 5 sharps‸")).toContain("H-Dur and gis-Moll have it.");
  });

  test("completion keeps the tonic as it is typed, and offers keys in the language", () => {
    const labels = (id: NamesId, line: string) => {
      const text = head(id) + line;
      return completionsAt(journalOf(text), URI, { line: 3, character: line.length }, TODAY).map(({ label }) => label);
    };
    expect(labels("german", "fis")).toEqual(
      expect.arrayContaining(["Fis-Dur", "fis-Moll", "fis-Moll melodisch", "fis dorian"]),
    );
    expect(labels("german", "H")).toEqual(expect.arrayContaining(["H-Dur", "h-Moll", "h-Moll arpeggio"]));
    const text = `${head("german")}H`;
    const [minor] = completionsAt(journalOf(text), URI, { line: 3, character: 1 }, TODAY).filter(
      ({ label }) => label === "h-Moll",
    );
    expect(minor!.filterText).toBe("H-Moll");
    expect(labels("german", "E")).toEqual(expect.arrayContaining(["E-Dur", "Es-Dur"]));
    expect(labels("french", "fa#")).toEqual(expect.arrayContaining(["fa# majeur", "fa# mineur mélodique"]));
    expect(labels("french", "si bémol ")).toEqual(expect.arrayContaining(["si bémol majeur"]));
    expect(labels("dutch", "es kl")).toEqual(
      expect.arrayContaining(["es klein", "es klein melodisch", "es klein arpeggio"]),
    );
    expect(labels("dutch", "bes grote t")).toEqual(expect.arrayContaining(["bes grote terts"]));
    expect(labels("dutch", "es m")).toEqual(expect.arrayContaining(["es mineur", "es majeur"]));
    expect(labels("german", "Fis-Dur: ")[0]).toBe("Fis Gis Ais H Cis Dis Eis Fis");
    expect(labels("german", "names ")).toEqual([]);
  });

  test("what commands write", () => {
    const today = (...words: Parameters<typeof head>) => head(...words).replace("03-02", "03-09"); // where they write
    expect(run(writeNotes, `${today("german")}H-‸Dur`)).toBe(`${today("german")}H-Dur: H Cis Dis E Fis Gis Ais H‸`);
    expect(run(writeNotes, `${today("french")}fa dièse ‸mineur`)).toBe(
      `${today("french")}fa dièse mineur: fa dièse sol dièse la si do dièse ré mi fa dièse‸`,
    );
    const before = today("german", "instrument alto recorder");
    expect(run(fingerChange, `${before}B‸-Dur, from f' to f''`)).toMatch(
      /\nnotes (?:[A-H](?:is|es|s)?\d ){1}\S+\d, back and forth, slurred‸$/,
    );
  });
});

test("a name that is no language is an error on its word, with the nearest", () => {
  const [found] = diagnosticsOf(journalOf("names germann\n\n2026-03-02 Mon\nD major, slow"), URI, TODAY);
  expect([found!.code, found!.message]).toEqual([
    "bad-declaration",
    expect.stringContaining("english, german, dutch, french, italian, spanish"),
  ]);
});

test("the first declaration counts for the whole journal, and a change of it is a change of everything", () => {
  const line = "B: B C D Es F G A B";
  const german = journalOf(`names german\nnames french\n\n2026-03-02 Mon\n${line}`);
  expect([german.names.id, german.conventions(URI).names.id]).toEqual(["german", "german"]);
  expect(diagnosticsOf(german, URI, TODAY).map(({ code }) => code)).toEqual(["duplicate-declaration"]);
  const english = german.with(URI, journalOf(`\n\n2026-03-02 Mon\n${line}`).files.get(URI)!);
  expect([english.names.id, english.conventions(URI).names.id]).toEqual(["english", "english"]);
  expect(diagnosticsOf(english, URI, TODAY).length).toBeGreaterThan(0);
});
