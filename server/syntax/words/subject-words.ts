import { faultyAt } from "./faulty-subject.ts";
import type { FaultySubject, MeaningOf, ScaleMeaning, SubjectMeaning, WrittenNote } from "./meaning.ts";
import { type NoteRun, noteOf } from "./note-word.ts";
import { type Found, type Words, withScaleWord } from "./words.ts";

const FIFTH_ABOVE: Readonly<Record<WrittenNote["letter"], WrittenNote["letter"]>> = {
  C: "G",
  D: "A",
  E: "B",
  F: "C",
  G: "D",
  A: "E",
  B: "F",
};

/** The subject that begins at a token: a scale, a chord, a title, a figure, an activity, or one that is at fault. */
export function subjectAt(words: Words, i: number): Found<SubjectMeaning | FaultySubject> | undefined {
  return longest([
    chordAt(words, i),
    scaleAt(words, i),
    figureAt(words, i),
    freeAt(words, i),
    activityAt(words, i),
    words.phrase(i, "title"),
    faultyAt(words, i),
  ]);
}

/** The first of the longest. */
export function longest<F extends Found>(found: readonly (F | undefined)[]): F | undefined {
  return found.reduce((best, each) => (each && (!best || each.length > best.length) ? each : best), undefined);
}

/** A tonic and a kind; `"name" on D`; `chromatic from G4 to G6`; `chromatic` alone. */
export function scaleAt(words: Words, i: number): Found<ScaleMeaning> | undefined {
  return longest([tonicAndKind(words, i), declaredScale(words, i), chromatic(words, i), kindOnTonic(words, i)]);
}

function tonicAndKind(words: Words, i: number): Found<ScaleMeaning> | undefined {
  const tonic = words.note(i);
  const declared = tonic && words.quoted(i + tonic.length);
  const name = declared && words.vocabulary.scale(declared.text);
  if (tonic && name !== undefined)
    return { length: tonic.length + 1, meaning: { type: "scale", tonic: tonic.note, kind: name, declared: true } };
  const kind = tonic && words.phrase(i + tonic.length, "kind");
  if (tonic && !kind && !tonic.lower && words.is(i + tonic.length, "scale")) return loneTonic(tonic, 1); // `C scale`
  if (!tonic || !kind) return undefined;
  const { id, unsaid } = kind.meaning;
  const length = withScaleWord(words, i, tonic.length + kind.length);
  return {
    length,
    meaning: { type: "scale", tonic: tonic.note, kind: id, declared: false, ...(unsaid ? { unsaid } : {}) },
  };
}

/** An upper-case letter alone is major. */
function loneTonic(tonic: NoteRun, further: number): Found<ScaleMeaning> {
  return {
    length: tonic.length + further,
    meaning: { type: "scale", tonic: tonic.note, kind: "major", declared: false, unsaid: "major" },
  };
}

function declaredScale(words: Words, i: number): Found<ScaleMeaning> | undefined {
  const quoted = words.quoted(i);
  const name = quoted && words.vocabulary.scale(quoted.text);
  const tonic = name !== undefined && words.is(i + 1, "on", "from", "in") ? words.note(i + 2) : undefined;
  if (name === undefined || !tonic) return undefined;
  return {
    length: withScaleWord(words, i, 2 + tonic.length),
    meaning: { type: "scale", tonic: tonic.note, kind: name, declared: true },
  };
}

function chromatic(words: Words, i: number): Found<ScaleMeaning> | undefined {
  const kind = words.phrase(i, "kind");
  if (kind?.meaning.id !== "chromatic") return undefined;
  const length = withScaleWord(words, i, kind.length);
  const led = leadIn(words, i + length);
  const tonic = led ? words.note(i + length + led) : undefined;
  if (!tonic)
    return {
      length,
      meaning: {
        type: "scale",
        tonic: { letter: "C", alter: 0 },
        kind: "chromatic",
        declared: false,
        fromLowest: true,
      },
    };
  const meaning = { type: "scale", tonic: tonic.note, kind: "chromatic", declared: false } as const;
  const end = length + led + tonic.length;
  const to = words.is(i + end, "to") ? words.note(i + end + 1) : undefined;
  return to ? { length: end + 1 + to.length, meaning: { ...meaning, to: to.note } } : { length: end, meaning };
}

/** `whole-tone scale on C`. */
function kindOnTonic(words: Words, i: number): Found<ScaleMeaning> | undefined {
  const kind = words.phrase(i, "kind");
  if (!kind || kind.meaning.id === "chromatic") return undefined;
  const length = withScaleWord(words, i, kind.length);
  const led = leadIn(words, i + length);
  const tonic = led ? words.note(i + length + led) : undefined;
  if (!tonic) return undefined;
  const { id, unsaid } = kind.meaning;
  return {
    length: length + led + tonic.length,
    meaning: { type: "scale", tonic: tonic.note, kind: id, declared: false, ...(unsaid ? { unsaid } : {}) },
  };
}

/** How many words lead to a tonic behind its kind: `on`, `from`, `starting on`; none before an instrument. */
function leadIn(words: Words, i: number): number {
  const before = words.is(i, "starting", "beginning") ? 1 : 0;
  const leads = words.is(i + before, "on", "from") && !words.phrase(i + before + 1, "instrument");
  return leads ? before + 1 : 0;
}

/** `D minor arpeggio`, `A dominant seventh`, `diminished seventh on A`, `dominant seventh in D`. */
function chordAt(words: Words, i: number): Found<MeaningOf<"chord">> | undefined {
  const root = words.note(i);
  const kind = root && words.phrase(i + root.length, "chord kind");
  if (root?.note.octave === 7 && kind?.meaning.id === "major") return undefined; // see `seventhByFigure`
  if (root && kind)
    return {
      length: root.length + kind.length,
      meaning: { type: "chord", root: root.note, chord: kind.meaning.id, broken: kind.meaning.broken },
    };
  return root ? undefined : (chordOnRoot(words, i) ?? dominantIn(words, i));
}

/** `diminished seventh starting on A`. */
function chordOnRoot(words: Words, i: number): Found<MeaningOf<"chord">> | undefined {
  const kind = words.phrase(i, "chord kind");
  const led = kind ? leadIn(words, i + kind.length) : 0;
  const root = led ? words.note(i + kind!.length + led) : undefined;
  if (!kind || !root) return undefined;
  const { id: chord, broken } = kind.meaning;
  return { length: kind.length + led + root.length, meaning: { type: "chord", root: root.note, chord, broken } };
}

/** A dominant seventh by its key: `in D`, `of D major`, `in D minor`, `in the key of G`. */
function dominantIn(words: Words, i: number): Found<MeaningOf<"chord">> | undefined {
  const dominant = words.phrase(i, "chord kind");
  if (dominant?.meaning.id !== "dominant seventh" || !words.is(i + dominant.length, "in", "of")) return undefined;
  const led = dominant.length + keyLed(words, i + dominant.length);
  const key = words.note(i + led);
  if (!key) return undefined;
  const end = led + key.length;
  const mode = words.phrase(i + end, "kind");
  const minor = mode && MINOR_KEYS.includes(mode.meaning.id) ? ({ keyMode: "minor" } as const) : undefined;
  const said = mode && (minor || mode.meaning.id === "major") ? mode.length : 0;
  const { id: chord, broken } = dominant.meaning;
  return {
    length: end + said,
    meaning: { type: "chord", root: fifthAbove(key.note), chord, broken, key: key.note, ...minor },
  };
}

const MINOR_KEYS: readonly string[] = ["natural minor", "harmonic minor", "melodic minor"];

/** The words that lead from a chord to its key: `in`, `of`, `in the key of`. */
function keyLed(words: Words, i: number): number {
  const whole = words.is(i + 1, "the") && words.is(i + 2, "key") && words.is(i + 3, "of");
  return whole ? 4 : 1;
}

function fifthAbove({ letter, alter }: WrittenNote): WrittenNote {
  return { letter: FIFTH_ABOVE[letter], alter: letter === "B" ? alter + 1 : alter };
}

/** `notes E5 F5`, `long tones on F4 C5`, `long tones on D minor`, `trill E6 with F6`. */
function figureAt(words: Words, i: number): Found<MeaningOf<"figure">> | undefined {
  if (words.is(i, "notes", "note")) {
    const notes = notesAt(words, i + 1);
    return notes.notes.length
      ? { length: 1 + notes.length, meaning: { type: "figure", figure: "notes", notes: notes.notes } }
      : undefined;
  }
  if (words.is(i, "trill", "trills")) return trill(words, i);
  const long = words.is(i, "long-tones", "long-tone", "longtones", "longtone")
    ? 1
    : words.is(i, "long") && words.is(i + 1, "tones", "tone", "notes")
      ? 2
      : 0;
  return long ? longTones(words, i, long) : undefined;
}

function longTones(words: Words, i: number, named: number): Found<MeaningOf<"figure">> {
  const bare = { length: named, meaning: { type: "figure", figure: "long tones", notes: [] } } as const;
  const start = named + (words.is(i + named, "on", "in") ? 1 : 0);
  if (words.phrase(i + start, "instrument")) return bare; // `on A clarinet` is no note A
  const scale = scaleAt(words, i + start);
  if (scale && !scale.meaning.fromLowest)
    return { length: start + scale.length, meaning: { ...bare.meaning, scale: scale.meaning } };
  const notes = notesAt(words, i + start);
  return notes.notes.length ? { length: start + notes.length, meaning: { ...bare.meaning, notes: notes.notes } } : bare;
}

function trill(words: Words, i: number): Found<MeaningOf<"figure">> | undefined {
  const on = words.is(i + 1, "on") ? 2 : 1;
  const main = words.note(i + on);
  if (!main) return undefined;
  const joined = words.is(i + on + main.length, "with", "to") ? 1 : 0;
  const upper = words.note(i + on + main.length + joined);
  const notes = upper ? [main.note, upper.note] : [main.note];
  const length = on + main.length + (upper ? joined + upper.length : 0);
  return { length, meaning: { type: "figure", figure: "trill", notes } };
}

/** Notes one after another; `E5-F5` is two. */
export function notesAt(words: Words, i: number): { readonly notes: readonly WrittenNote[]; readonly length: number } {
  const notes: WrittenNote[] = [];
  let next = i;
  for (;;) {
    const run = words.note(next) ?? hyphenatedNotes(words, next);
    if (run && "note" in run) notes.push(run.note);
    else if (run) notes.push(...run.notes);
    else if (words.typed(next) !== "|" && !(notes.length > 0 && words.is(next, "and", "&") && words.note(next + 1)))
      break;
    next += run?.length ?? 1;
  }
  return { notes, length: next - i };
}

function hyphenatedNotes(
  words: Words,
  i: number,
): { readonly notes: readonly WrittenNote[]; readonly length: number } | undefined {
  const token = words.tokens[i];
  if (!token || token.quote || !/^[A-Z]/.test(token.text) || !/[-–]/.test(token.text)) return undefined;
  const runs = token.text.split(/[-–]/).map((word) => noteOf(word, words.vocabulary.notes));
  return runs.every((run) => run !== undefined) ? { notes: runs.map((run) => run.note), length: 1 } : undefined;
}

function freeAt(words: Words, i: number): Found<MeaningOf<"free">> | undefined {
  const quoted = words.is(i, "done") ? words.quoted(i + 1) : undefined;
  return quoted && { length: 2, meaning: { type: "free", words: quoted.text } };
}

function activityAt(words: Words, i: number): Found<MeaningOf<"activity">> | undefined {
  const activity = words.phrase(i, "activity");
  if (!activity) return undefined;
  const on = words.is(i + activity.length, "on", "in") && !words.phrase(i + activity.length + 1, "instrument");
  const lone = on ? words.note(i + activity.length + 1) : undefined;
  const scale = on
    ? (scaleAt(words, i + activity.length + 1) ?? (lone && !lone.lower ? loneTonic(lone, 0) : undefined))
    : undefined;
  return scale
    ? { length: activity.length + 1 + scale.length, meaning: { ...activity.meaning, scale: scale.meaning } }
    : activity;
}
