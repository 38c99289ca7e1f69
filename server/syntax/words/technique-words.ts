import { PRACTISED_AS } from "../lexicon/articulations/english.ts";
import { ON_NOTE, ON_ONE_NOTE, STRINGS } from "../lexicon/note-leads.ts";
import { articulationAt } from "./articulation-words.ts";
import type { MeaningOf } from "./meaning.ts";
import { type Notes, noteIn, notesAt } from "./note-rows.ts";
import { joinedPairAt, pairsAt } from "./trill-words.ts";
import type { Found, Words } from "./words.ts";

type Technique = MeaningOf<"technique">;

/**
 * A technique; and what an articulation or a technique is practised on where notes follow: `lip slurs`, `harmonics on
 * C`, `double tonguing on G`, `ttk on C`.
 */
export function techniqueAt(words: Words, i: number): Found<Technique> | undefined {
  const technique = words.phrase(i, "technique");
  const articulation = technique ? undefined : articulationAt(words, i);
  const named = technique ?? articulation;
  if (!named) return undefined;
  const name = technique ? technique.meaning.name : practisedAs(articulation!.meaning);
  const isProgression = technique !== undefined && PROGRESSION.test(name);
  const notes =
    practisedOn(words, i + named.length, isProgression ? IN_KEY : ON_NOTE) ??
    (technique && trilled(words, i + named.length, name));
  if (!notes) return technique && { length: named.length, meaning: { type: "technique", name } };
  return { length: named.length + notes.length, meaning: { type: "technique", name, notes: notes.notes } };
}

/** An articulation, or a technique, on notes. */
export function practisedOnNotes(words: Words, i: number): Found<Technique> | undefined {
  const found = techniqueAt(words, i);
  return found?.meaning.notes ? found : onOneNote(words, i);
}

/** `d.tg one note`, `double tonguing did-dle on repeated notes`: of an articulation by its name. */
function onOneNote(words: Words, i: number): Found<Technique> | undefined {
  const named = words.phrase(i, "articulation");
  if (!named) return undefined;
  const syllables = articulationAt(words, i + named.length)?.length ?? 0;
  const at = i + named.length + syllables;
  for (let end = Math.min(words.tokens.length, at + LONGEST_ON_NOTE); end > at; end--)
    if (ON_ONE.test(words.text(at, end)))
      return { length: end - i, meaning: { type: "technique", name: practisedAs(named.meaning) } };
  return undefined;
}

const ON_ONE = new RegExp(`^${ON_ONE_NOTE}$`, "iu");
/** In words. */
const LONGEST_ON_NOTE = 4;

/** What one practises who plays so: `double tonguing` for `double tongued` and for `tktk`. */
export function practisedAs({ id, tonguing }: MeaningOf<"articulation">): string {
  const named = PRACTISED_AS[id];
  if (named !== undefined) return named;
  if (tonguing !== "multiple") return id;
  return THREES.test(id) ? PRACTISED_AS["triple tongued"]! : PRACTISED_AS["double tongued"]!;
}

/** `ii V I`, `I IV V`: chords by their degrees, which are practised in a key. */
const PROGRESSION = /^[iv]+(?: [iv]+)+$/i;
const IN_KEY = [...ON_NOTE, "in"];

/** Strokes in threes: `ttk`, `t-t-k`, `t-k-t`. */
const THREES = /^(?:(?:ttk|tkt|ddg|dgd)+|t-t-k|t-k-t|d-d-g|d-g-d)$/;

/** `lip trills e-g f-a`: of trills both notes follow at once. */
function trilled(words: Words, i: number, name: string): Notes | undefined {
  if (!name.endsWith("trills")) return undefined;
  const { pairs, length } = pairsAt(words, i, joinedPairAt);
  return pairs.length > 0 ? { notes: pairs.flat(), length } : undefined;
}

/** `on G`, `on F and G`, `on one note, G`. An instrument is no note, nor is a string, and `G major` is a scale. */
function practisedOn(words: Words, i: number, leads: readonly string[]): Notes | undefined {
  if (!words.is(i, ...leads) || words.phrase(i + 1, "instrument")) return undefined;
  const one = words.is(i + 1, "one", "a", "the") && words.is(i + 2, "note") ? 2 : 0;
  const at = i + 1 + one;
  const first = noteIn(words, at) ?? notesAt(words, at);
  if (first.length === 0) return undefined;
  const further = notesAt(words, at + first.length, true);
  const end = at + first.length + further.length;
  if (words.is(end, ...STRINGS) || words.phrase(end, "kind", "part of a kind", "chord kind")) return undefined;
  const notes = "note" in first ? [first.note] : first.notes;
  return { notes: [...notes, ...further.notes], length: end - i };
}
