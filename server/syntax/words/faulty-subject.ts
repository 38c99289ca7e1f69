import { faultTexts } from "./fault-texts.ts";
import type { FaultySubject, WrittenNote } from "./meaning.ts";
import { hasTooManySigns } from "./note-word.ts";
import { type Found, type Words, withScaleWord } from "./words.ts";

const TONIC_LIKE = /^(?:[A-Za-z](?:[#♯b♭x𝄪𝄫]{0,6})|[A-H](?:is|es|isis|eses)|As|Es|Ases|Eses)\d?$/u;

/** What opens like a subject and cannot be one: `H minor`, `D diminished`, `D mjor`. */
export function faultyAt(words: Words, i: number): Found<FaultySubject> | undefined {
  return (
    unknownTonic(words, i) ??
    halfKind(words, i) ??
    misspeltKind(words, i) ??
    undeclaredScale(words, i) ??
    beyondDoubleSigns(words, i)
  );
}

function unknownTonic(words: Words, i: number): Found<FaultySubject> | undefined {
  const typed = words.typed(i);
  if (!TONIC_LIKE.test(typed) || words.note(i)) return undefined;
  const kind = words.phrase(i + 1, "kind", "chord kind");
  if (!kind) return undefined;
  const length = withScaleWord(words, i, 1 + kind.length);
  const because = faultTexts.noSuchNote(typed);
  return {
    length,
    meaning: {
      type: "faulty subject",
      code: "unknown-key",
      because,
      offers: tonicsMeant(typed).map((tonic) => words.vocabulary.notes.key(tonic, words.text(i + 1, i + length))),
      certain: false,
    },
  };
}

/** The German names, and letters with too many signs; nothing is guessed for other letters. */
export function tonicsMeant(typed: string): readonly WrittenNote[] {
  if (/^h$/i.test(typed)) return [{ letter: "B", alter: 0 }];
  if (/^h[b♭]$/i.test(typed)) return [{ letter: "B", alter: -1 }];
  const german = /^([A-Ga-g])(is|es|s)$/.exec(typed);
  return german
    ? [{ letter: german[1]!.toUpperCase() as WrittenNote["letter"], alter: german[2] === "is" ? 1 : -1 }]
    : [];
}

function halfKind(words: Words, i: number): Found<FaultySubject> | undefined {
  const tonic = words.note(i);
  const half = tonic && words.phrase(i + tonic.length, "part of a kind");
  if (!tonic || !half) return undefined;
  const length = withScaleWord(words, i, tonic.length + half.length);
  const { key } = words.vocabulary.notes;
  const offers = half.meaning.offers.map((kind) => key(tonic.note, kind, words.text(i, i + tonic.length)));
  return ambiguous(
    length,
    faultTexts.halfKind(words.text(i + tonic.length, i + length)),
    offers,
    offers.length === 1 && !words.phrase(i + length, "kind"), // `D harmonic` before another kind is another scale
  );
}

/** `D mjor`: a tonic, and a word that is nearly a kind. */
function misspeltKind(words: Words, i: number): Found<FaultySubject> | undefined {
  const tonic = words.note(i);
  const word = tonic && !tonic.lower ? words.typed(i + tonic.length) : "";
  if (!tonic || word.length < 4 || words.phrase(i + tonic.length, ...KNOWN_BEHIND_A_TONIC)) return undefined;
  const kinds = words.vocabulary.own.filter(({ meaning }) => meaning.type === "kind").flatMap((phrase) => phrase.words);
  const near = words.vocabulary.nearest(word, kinds);
  if (near === undefined) return undefined;
  const offer = `${words.text(i, i + tonic.length)} ${near}`;
  const because = faultTexts.noKind(word.slice(0, 40));
  return {
    length: tonic.length + 1,
    meaning: { type: "faulty subject", code: "unknown-term", because, offers: [offer], certain: false },
  };
}

/** Words that have a meaning of their own behind a lone tonic. */
const KNOWN_BEHIND_A_TONIC = [
  "articulation",
  "pattern",
  "direction",
  "span",
  "rhythm",
  "note value",
  "without click",
  "outcome",
  "manner",
  "variant",
  "instrument",
  "activity",
  "technique",
  "phase",
  "title",
  "place",
  "part of a kind",
  "kind",
  "chord kind",
] as const;

function undeclaredScale(words: Words, i: number): Found<FaultySubject> | undefined {
  const quoted = words.quoted(i);
  const tonic = quoted && words.is(i + 1, "on") ? words.note(i + 2) : undefined;
  if (!quoted || !tonic || words.vocabulary.title(quoted.text) !== undefined) return undefined;
  const near = words.vocabulary.nearest(quoted.text, words.vocabulary.declared.scales);
  const offers = near === undefined ? [] : [`"${near}" on ${words.text(i + 2, i + 2 + tonic.length)}`];
  const because = faultTexts.noSuchScale(quoted.text.slice(0, 40));
  return {
    length: 2 + tonic.length,
    meaning: { type: "faulty subject", code: "unknown-declaration", because, offers, certain: false },
  };
}

/** `notes F### G4`: a figure that names a note with more than two sharps or flats. */
function beyondDoubleSigns(words: Words, i: number): Found<FaultySubject> | undefined {
  const opening = FIGURES.exec(`${words.word(i)} ${words.word(i + 1)} ${words.word(i + 2)} `)?.[0];
  if (!opening) return undefined;
  let end = i + opening.trimEnd().split(" ").length;
  let beyond: string | undefined;
  for (;;) {
    const run = words.note(end);
    const typed = words.typed(end);
    if (!run && hasTooManySigns(typed)) beyond ??= typed;
    else if (!run && typed !== "|" && !words.is(end, "with", "to", "and")) break;
    end += run?.length ?? 1;
  }
  if (beyond === undefined) return undefined;
  const because = faultTexts.noSuchNote(beyond);
  const meaning = { type: "faulty subject", code: "unknown-key", because, offers: [], certain: false } as const;
  return { length: end - i, meaning };
}

const FIGURES = /^(?:notes?|trills?(?: on)?|long[ -]?tones?(?: on)?|long notes(?: on)?) /;

function ambiguous(length: number, because: string, offers: readonly string[], certain: boolean): Found<FaultySubject> {
  return { length, meaning: { type: "faulty subject", code: "ambiguous-subject", because, offers, certain } };
}
