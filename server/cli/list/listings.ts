import { CODES, type Code, MEANINGS } from "../../checks/codes.ts";
import { CHORDS } from "../../music/chords/chord-kinds.ts";
import { INSTRUMENTS } from "../../music/instruments/instruments.ts";
import { transpositionWords } from "../../music/instruments/transposition.ts";
import { type Degree, MAJOR_SEMITONES } from "../../music/notes/degree.ts";
import { printNote } from "../../music/notes/note.ts";
import { PATTERNS, VARIANTS } from "../../music/patterns/pattern.ts";
import { KINDS } from "../../music/scales/kinds.ts";
import type { Listing } from "./listing.ts";
import { keyOf, lexiconWords, otherWordsText, subjectWords, together } from "./other-words.ts";

/** The instruments that need no declaration. */
export function instrumentsListed(): Listing {
  const rows = INSTRUMENTS.map(({ names, family, low, high, sounding, soft }) => {
    const [name = "", ...also] = names;
    const sounds = transpositionWords(sounding) ?? "as written";
    const range = { low: printNote(low), high: printNote(high) };
    return {
      cells: [
        name,
        `${range.low} to ${range.high}`,
        sounds,
        together(soft && `Varies: ${soft}.`, otherWordsText(also)),
      ],
      json: { names, family, ...range, sounds, varies: soft ?? null },
    };
  });
  return { headings: ["Instrument", "As written", "Sounds", "Other names"], rows };
}

/** Kinds of scales, and of chords as arpeggios are made of. */
export function kindsListed(): Listing {
  const kinds = [
    ...KINDS.map(({ names, degrees, falling, sentence }) => ({ of: "scale", names, degrees, falling, sentence })),
    ...CHORDS.map(({ names, degrees, sentence }) => ({ of: "arpeggio", names, degrees, falling: undefined, sentence })),
  ];
  const rows = kinds.map(({ of, names, degrees, falling, sentence }) => {
    const [name = "", ...also] = names;
    const languages = subjectWords(names);
    const rising = degreesText(degrees);
    const down = falling ? degreesText(falling) : undefined;
    const formula = rising + (down === undefined ? "" : `, down ${down}`);
    return {
      cells: [name, of, formula, together(sentence, otherWordsText(also, languages))],
      json: { names, of, degrees: rising, falling: down ?? null, sentence, languages },
    };
  });
  return { headings: ["Kind", "Of", "Degrees", "What it is"], rows };
}

function degreesText(degrees: readonly Degree[]): string {
  return degrees.map(degreeText).join(" ");
}

/** `b3`: a degree of the major scale, lowered. */
function degreeText({ step, semitones }: Degree): string {
  const alter = semitones - MAJOR_SEMITONES[step]!;
  return (alter < 0 ? "b".repeat(-alter) : "#".repeat(alter)) + (step + 1);
}

/** Patterns, and the variants that some of them have. */
export function patternsListed(): Listing {
  const words = lexiconWords();
  const patterns = PATTERNS.map(({ id, names, sentence, variants }) => {
    const [name = "", ...also] = names;
    const languages = words.get(keyOf({ type: "pattern", id })) ?? {};
    const played = variants.length > 0 ? `Variants: ${variants.join(", ")}.` : undefined;
    return {
      cells: [name, "pattern", together(sentence, played, otherWordsText(also, languages))],
      json: { names, of: "pattern", sentence, variants, languages },
    };
  });
  const variants = VARIANTS.map(({ names, sentence }) => {
    const [name = "", ...also] = names;
    return {
      cells: [name, "variant", together(sentence, otherWordsText(also))],
      json: { names, of: "variant", sentence, variants: [], languages: {} },
    };
  });
  return { headings: ["Pattern", "Of", "What it plays"], rows: [...patterns, ...variants] };
}

/** What `daystave check` can report. */
export function codesListed(): Listing {
  const rows = Object.entries(CODES).map(([code, severity]) => {
    const meaning = MEANINGS[code as Code];
    return { cells: [code, severity, `${meaning}.`], json: { code, severity, meaning } };
  });
  return { headings: ["Code", "Severity", "What it means"], rows };
}
