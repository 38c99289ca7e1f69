import { describe, expect, test } from "vitest";
import { explainDeclaration, explainKind, explainTerm } from "../../../server/features/explain/explain.ts";
import { termSentenceTexts } from "../../../server/features/explain/term-sentence-texts.ts";
import { theorySentenceTexts } from "../../../server/features/explain/theory-sentence-texts.ts";
import { explainTemperamentNamed } from "../../../server/features/explain/tuning.ts";
import { languageWords } from "../../../server/journal/language.ts";
import { CHORD_SYMBOLS } from "../../../server/music/chords/chord-dictionary.ts";
import { CHORDS } from "../../../server/music/chords/chord-kinds.ts";
import { instrumentTexts } from "../../../server/music/instruments/instrument-texts.ts";
import { INSTRUMENTS } from "../../../server/music/instruments/instruments.ts";
import { transpositionWords } from "../../../server/music/instruments/transposition.ts";
import { ENGLISH_NAMES, NOTE_NAMES } from "../../../server/music/notes/note-names.ts";
import { parseCell } from "../../../server/music/patterns/cell.ts";
import { PATTERNS, VARIANTS } from "../../../server/music/patterns/pattern.ts";
import { declaredKind } from "../../../server/music/scales/declared-kind.ts";
import { KINDS } from "../../../server/music/scales/kinds.ts";
import { likelyScales } from "../../../server/music/scales/likely-scales.ts";
import { signatureTexts } from "../../../server/music/scales/signature-texts.ts";
import { declaredTemperament } from "../../../server/music/tuning/declared-temperament.ts";
import { TEMPERAMENT_NAMES } from "../../../server/music/tuning/read-temperament.ts";
import { DECLARATION_WORDS } from "../../../server/syntax/line/declaration-word.ts";
import { TERMS } from "../../../server/syntax/words/terms.ts";
import { journalOf } from "../../features/journal-text.ts";
import { englishLeft } from "../english-left.ts";

// The tables keep one sentence for each meaning, in English; each has its own in German. Terms of music: from memory.

function untranslated(sentences: readonly (string | undefined)[], of: (sentence: string) => string): readonly string[] {
  return sentences.flatMap((each) => (each !== undefined && of(each) === each ? [each] : []));
}

describe("every sentence of the tables has a German one", () => {
  test("scales, patterns and chords", () => {
    const sentences = [...KINDS, ...PATTERNS, ...VARIANTS, ...CHORDS].map(({ sentence }) => sentence);
    expect(sentences.length).toBeGreaterThan(60);
    expect(untranslated(sentences, theorySentenceTexts.of)).toEqual([]);
  });

  test("the terms of each language", () => {
    const phrases = [...TERMS, ...NOTE_NAMES.flatMap((names) => languageWords(names).phrases)];
    const sentences = phrases.map(({ sentence }) => sentence);
    expect(new Set(sentences).size).toBeGreaterThan(90);
    const chords = CHORD_SYMBOLS.map(({ chord }) => chord.sentence);
    const german = sentences.filter((each) => each !== undefined && !chords.includes(each));
    expect(untranslated(german, (each) => termSentenceTexts.of(theorySentenceTexts.of(each)))).toEqual([]);
  });

  test("and no English is left in what explains a term, a kind, a chord, a temperament or a declaration", () => {
    const journal = journalOf("");
    const said = [
      ...TERMS.map(({ meaning }) => explainTerm(meaning, journal.vocabulary)),
      ...KINDS.map(({ id }) => explainKind(id, undefined, ENGLISH_NAMES)),
      ...CHORD_SYMBOLS.map(({ chord }) => theorySentenceTexts.of(chord.sentence)),
      ...TEMPERAMENT_NAMES.map((name) => explainTemperamentNamed(name, ENGLISH_NAMES)),
      ...DECLARATION_WORDS.map(explainDeclaration),
    ];
    expect(said.filter((each) => each !== undefined && englishLeft(each, "").length > 0)).toEqual([]);
  });
});

test("instruments have their names, and what is not firm of their ranges", () => {
  expect(INSTRUMENTS.map(({ soft = "" }) => soft).filter((soft) => englishLeft(soft, "").length > 0)).toEqual([]);
  const alike = INSTRUMENTS.map(({ id }) => id).filter((id) => instrumentTexts.name(id) === id);
  expect(alike).toEqual([]);
  const sounding = (id: string) => transpositionWords(INSTRUMENTS.find((each) => each.id === id)!.sounding);
  expect(sounding("clarinet in A")).toBe("eine kleine Terz tiefer");
  expect(sounding("bass clarinet")).toBe("eine Oktave und eine große Sekunde tiefer");
  expect(sounding("garklein recorder")).toBe("zwei Oktaven höher");
});

test("signatures are counted, also where they decline", () => {
  expect([0, 1, 2, -1, -2].map((fifths) => signatureTexts.accidentals(fifths))).toEqual([
    "keine Vorzeichen",
    "1 Kreuz",
    "2 Kreuze",
    "1 b",
    "2 b",
  ]);
  expect([0, 1, 2, -2].map((fifths) => signatureTexts.withAccidentals(fifths))).toEqual([
    "ohne Vorzeichen",
    "mit 1 Kreuz",
    "mit 2 Kreuzen",
    "mit 2 b",
  ]);
});

test("what scale a piece is likely in, whatever its last note and signature", () => {
  const german = NOTE_NAMES.find(({ id }) => id === "german")!;
  const compass = (octaves: number) => ({
    from: { letter: "D", alter: 0, octave: 4 } as const,
    to: { letter: "G", alter: 0, octave: 4 + octaves } as const,
  });
  const said = ["C", "D", "E", "F", "G", "A", "B"].flatMap((letter) =>
    [-4, -3, -2, -1, 0, 1, 2, 3, 4].flatMap((fifths) =>
      [undefined, compass(0), compass(1), compass(2)].flatMap((range) => {
        const last = { letter: letter as "C", alter: 0 };
        const { readings, ambitus } = likelyScales(last, fifths, range, german);
        return [...readings.map(({ reason }) => reason), ambitus?.sentence ?? ""];
      }),
    ),
  );
  expect(said).toContain("Mit 1 b (B) sind die Töne von G bis G die von G dorian.");
  expect(said).toContainEqual(
    expect.stringMatching(
      /^Mit 1 b steht d-Moll, und es endet auf dem Grundton\. Kommt Cis mit Versetzungszeichen vor, /,
    ),
  );
  expect(said).toContain(
    "Der Umfang, D4 bis G5, reicht von einer Quarte unter G4 bis zu einer Oktave darüber: sowohl der authentische als auch der plagale Umfang (hypomixolydisch).",
  );
  expect([...new Set(said.filter((each) => englishLeft(each, "As").length > 0))]).toEqual([]);
});

test.each([
  ["scale", declaredKind("Wald", "1 2 2 4"), "`2` ist nicht höher als `2` davor: Eine Tonleiter steigt"],
  [
    "scale",
    declaredKind("Wald", "1 9"),
    "`9` ist keine Stufe: Schreib 1 bis 7, davor höchstens zwei # oder b, wie in `1 b2 3`",
  ],
  [
    "scale",
    declaredKind("Wald", "1 2 3 down 3 1"),
    "3 Töne gehen aufwärts und 2 abwärts: In beiden Richtungen sind es gleich viele",
  ],
  ["pattern", parseCell("1 99"), "`99` liegt zu weit weg: Stufen gehen von -7 bis 22"],
  [
    "temperament",
    declaredTemperament("Wald", "0"),
    "eine Stimmung braucht zwölf Tasten, C bis H, in Cent oder Verhältnissen, und eine ist angegeben",
  ],
])("a faulty %s says why", (_, reading, reason) => {
  expect(reading).toMatchObject({ ok: false, reason });
});
