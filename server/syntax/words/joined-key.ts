import { fold } from "./fold.ts";
import { isSyllabic, noteOf } from "./note-word.ts";
import type { Token } from "./token.ts";
import type { Vocabulary } from "./vocabulary.ts";

/** How a chord's symbol stands in the tables: apart from words, as `7` or `m` mean something else there. */
export function symbolKey(symbol: string): string {
  return `chord:${plainSymbol(symbol)}`;
}

/** A symbol's case tells major from minor; what follows is without it: `M7` and `Δ7` are `maj7`, `-7` is `m7`. */
function plainSymbol(symbol: string): string {
  if (symbol === "Δ") return "maj7";
  const [, minor = "", major = "", rest = ""] = SYMBOL.exec(symbol)!;
  const plain = rest.replace(/♯/gu, "#").replace(/♭/gu, "b").toLowerCase();
  return `${minor && "m"}${major && "maj"}${plain}`;
}

/** A minor triad, a major one or a major seventh, and what is added. */
const SYMBOL =
  /^(-|[Mm](?:in?|IN?)(?![a-z])|m(?!a))?\/?((?:[Mm]aj?|MAJ?|ma)(?![a-z])|M(?=[^a-z]|add|b|$)|[\^Δ])?(.*)$/su;

const TONIC = /^([A-Ha-h](?:##|#|x|♯|bb|b|♭|𝄪|𝄫)?)(\D.*|\d\D.*|\d\d.*)$/su;
/** Directly behind a tonic their case decides. */
const MODES: ReadonlyMap<string, string> = new Map([
  ["M", "major"],
  ["maj", "major"],
  ["Maj", "major"],
  ["MAJ", "major"],
  ["m", "minor"],
  ["mi", "minor"],
  ["min", "minor"],
  ["Min", "minor"],
  ["MIN", "minor"],
]);
/** Apart from the tonic; `mm` before a number is a metronome's. */
const MINORS: ReadonlyMap<string, string> = new Map([
  ["hm", "harmonic minor"],
  ["mm", "melodic minor"],
  ["nm", "natural minor"],
  ["hm.", "harmonic minor"],
  ["nm.", "natural minor"],
]);

/**
 * Keys and chords that are written in one word, as two: `Fmaj`, `Dm`, `Cm7b5`; and the letters that stand for a kind
 * behind a tonic, written out: `F M`, `F# hm`. Columns stay those of the text.
 */
export function keysApart(tokens: readonly Token[], vocabulary: Vocabulary): readonly Token[] {
  if (!tokens.some(({ text, quote }) => !quote && text.length > 1) && tokens.length < 2) return tokens;
  const tempos = tokens.filter(({ text, quote }) => !quote && KEY_TEMPO.test(text)).length > 1;
  let apart: Token[] | undefined;
  for (const [i, token] of tokens.entries()) {
    const keys = token.quote
      ? undefined
      : ((tempos ? tempoApart(token) : undefined) ??
        joined(tokens, i, vocabulary) ??
        behindTonic(tokens, i, vocabulary) ??
        kindsBetween(token, vocabulary));
    if (keys) apart ??= tokens.slice(0, i);
    apart?.push(...(keys ?? [token]));
  }
  return apart ?? tokens;
}

/** `C108`: a tonic and its tempo; a single one may be anything. */
const KEY_TEMPO = /^([A-H][#♯b♭]?)((?:[3-9]\d|1\d\d|2[0-3]\d|240))$/u;
const SOME_KEY_TEMPO = /(?:^|\s)[A-H][#♯b♭]?\d\d/u;

/** Whether a text may have tonics with their tempos, whose words bear on each other. */
export function hasKeyTempos(text: string): boolean {
  return SOME_KEY_TEMPO.test(text);
}

function tempoApart(token: Token): readonly Token[] | undefined {
  const [, tonic, tempo] = KEY_TEMPO.exec(token.quote ? "" : token.text) ?? [];
  if (tonic === undefined || tempo === undefined) return undefined;
  const at = token.start + tonic.length;
  return [
    { ...token, end: at, text: tonic },
    { ...token, start: at, text: tempo },
  ];
}

function joined(tokens: readonly Token[], i: number, vocabulary: Vocabulary): readonly Token[] | undefined {
  const token = tokens[i]!;
  const { text, start } = token;
  const match = text.length > 1 && text.length <= LONGEST ? TONIC.exec(text) : null;
  if (!match) return undefined;
  const [, tonic = "", rest = ""] = match;
  const { notes } = vocabulary;
  if (!noteOf(tonic, notes) || noteOf(text, notes)) return undefined;
  const kind = rest === "-" ? minorBefore(tokens[i + 1], vocabulary) : MODES.get(rest);
  if (kind === "minor" && isMinorLetters(tokens[i + 1]?.text ?? "")) return [{ ...token, text: tonic }];
  const meant = kind === undefined ? chordOf(rest, vocabulary) : isMode(tokens, i, rest, vocabulary) ? kind : undefined;
  if (meant === undefined || (kind === undefined && tonic[0]! >= "a")) return undefined;
  const at = start + tonic.length;
  return [
    { ...token, end: at, text: tonic },
    { ...token, start: at, text: meant },
  ];
}

/** The longest word that may name a chord. */
const LONGEST = 16;

/** `am`, `Am I`, `5 cm` and the German `am` and `Hm` are words; with a kind behind it a small letter names a key. */
function isMode(tokens: readonly Token[], i: number, mode: string, vocabulary: Vocabulary): boolean {
  const { text } = tokens[i]!;
  if (mode !== "m" && mode !== "mi") return true;
  const next = fold(tokens[i + 1]?.text ?? "");
  if (/^[A-H]/.test(text))
    return text !== "Hm" && !(text === "Am" && (vocabulary.notes.words !== null || next === "i"));
  return /^[a-h][#♯b♭]m$/u.test(text) || (next !== "" && isKindWord(next, vocabulary));
}

/** `C- mel`, `E- pent`: a dash is minor where a kind stands behind it. */
function minorBefore(next: Token | undefined, vocabulary: Vocabulary): string | undefined {
  return next && !next.quote && isKindWord(fold(next.text), vocabulary) ? "minor" : undefined;
}

function isKindWord(word: string, vocabulary: Vocabulary): boolean {
  const known = vocabulary.standard(word) ?? word;
  return KINDS_BEHIND.includes(known) || known === "arpeggio" || known === "scale";
}

/** `gm hm`: the letters behind tell which minor. */
function isMinorLetters(text: string): boolean {
  return MINORS.has(text);
}

const KINDS_BEHIND = ["harmonic", "melodic", "natural", "pentatonic"];

/** A chord by its symbol, in words. */
function chordOf(symbol: string, vocabulary: Vocabulary): string | undefined {
  if (NO_SYMBOLS.has(symbol)) return undefined;
  const meaning = vocabulary.meanings(symbolKey(symbol))?.[0];
  if (meaning?.type !== "chord kind") return undefined;
  return meaning.id === "diminished" ? "dim" : meaning.id; // written out, it may be a scale
}

/** What as a symbol is too like a word or a dash. */
const NO_SYMBOLS: ReadonlySet<string> = new Set(["-", "o", "h", "-flat", "-sharp"]);

/** `M`, `m` and `hm` behind a tonic, `maj7` behind one. */
function behindTonic(tokens: readonly Token[], i: number, vocabulary: Vocabulary): readonly Token[] | undefined {
  const token = tokens[i]!;
  const syllabic = isSyllabic(vocabulary.notes);
  const isApart = syllabic && /^[b#♭♯]$/u.test(tokens[i - 1]?.text ?? "");
  const before = tokens[i - (isApart ? 2 : 1)];
  const { text } = token;
  if (before && MINORS.has(text) && isBehindMinor(tokens, i, vocabulary))
    return [{ ...token, text: MINORS.get(text)! }];
  const tonic = before && !before.quote && noteOf(before.text, vocabulary.notes);
  if (!tonic || tonic.note.octave !== undefined) return undefined;
  const isTempo = /^\d/.test(tokens[i + 1]?.text ?? "") && /^\d+$/.test(tokens[i + 1]!.text);
  if (text === "M" || text === "m")
    return !syllabic && (isTempo || tonic.lower) ? undefined : [{ ...token, text: MODES.get(text)! }];
  const minor = MINORS.get(text);
  if (minor !== undefined) return isTempo && text === "mm" ? undefined : [{ ...token, text: minor }];
  const chord = /\d/.test(text) && /^[a-zA-Z]/.test(text) ? chordOf(text, vocabulary) : undefined;
  return chord === undefined ? undefined : [{ ...token, text: chord }];
}

/** `gm hm`, and `hm` behind the stroke of `cm nm / hm`; `mm` before a number is a metronome's. */
function isBehindMinor(tokens: readonly Token[], i: number, vocabulary: Vocabulary): boolean {
  if (tokens[i]!.text === "mm" && /^\d+$/.test(tokens[i + 1]?.text ?? "")) return false;
  const before = tokens[i - 1]!.text;
  const tonic = /^([A-Ha-h](?:#|♯|b|♭)?)(?:m|mi|min)$/u.exec(before)?.[1];
  if (tonic !== undefined) return noteOf(tonic, vocabulary.notes) !== undefined;
  return /^(?:[/&+]|and)$/.test(before) && MINORS.has(tokens[i - 2]?.text ?? "");
}

/** `nat/harm/mel`, or what is left of it: words of kinds with strokes between, each by itself. */
function kindsBetween(token: Token, vocabulary: Vocabulary): readonly Token[] | undefined {
  if (token.text.indexOf("/") < 0) return undefined;
  const words = token.text.split("/");
  if (!words.every((word, i) => (word === "" ? i === 0 : isKindWord(fold(word), vocabulary)))) return undefined;
  let start = token.start;
  return words.flatMap((text, i): Token[] => {
    const word = { ...token, start, end: start + text.length, text };
    start += text.length + 1;
    const stroke = i === 0 ? [] : [{ ...token, start: word.start - 1, end: word.start, text: "/" }];
    return text === "" ? stroke : [...stroke, word];
  });
}
