import { type DayNumber, isoDate } from "../../journal/calendar.ts";
import { FINGERINGS } from "../../journal/declarations/fingering.ts";
import { TONGUINGS } from "../../journal/declarations/tonguing.ts";
import { VERDICTS } from "../../journal/declarations/verdict.ts";
import type { Journal } from "../../journal/journal.ts";
import { instrumentById } from "../../music/instruments/instruments.ts";
import { NOTE_NAMES } from "../../music/notes/note-names.ts";
import { JUST_TONICS, TEMPERAMENTS } from "../../music/tuning/temperament.ts";
import { phraseKey } from "../../syntax/words/fold.ts";
import type { Meaning } from "../../syntax/words/meaning.ts";
import { termKey } from "../explain/term-key.ts";
import type { Candidate } from "./rank.ts";
import { keyCandidates, quotedTitles } from "./subjects.ts";
import type { Typing } from "./typing.ts";
import type { Usage } from "./usage.ts";

/** The place in a declaration that is being written, and what is typed there. */
export interface DeclarationPlace {
  readonly journal: Journal;
  readonly usage: Usage;
  readonly word: string;
  /** Where the declaration word ends. */
  readonly wordEnd: number;
  readonly typing: Typing;
  readonly start: number;
  readonly today: DayNumber;
}

const PITCHES = [415, 440, 442, 392, 430, 466];
/** A piece is offered a due date so many days ahead. */
const DUE = 56;

/** What may follow the word of a declaration; `aim` and `set` go on as entries do. */
export function declarationCandidates(place: DeclarationPlace): Candidate[] {
  const { typing, start, wordEnd, word } = place;
  const before = typing.text.slice(wordEnd, start).trim();
  switch (word) {
    case "instrument":
      return before === "" ? instruments(place) : fingerings(place, before);
    case "note value":
      return before === "" ? phrases(place, "note value", "term") : [];
    case "usual articulation":
      return before === "" ? phrases(place, "articulation", "term") : [];
    case "articulation":
      return behindName(before, TONGUINGS);
    case "outcome":
      return behindName(before, VERDICTS);
    case "names":
      return before === ""
        ? NOTE_NAMES.map(({ id, called }) => ({ label: id, aliases: called, kind: "name", fit: 0 }))
        : [];
    case "pitch":
      return pitch(before);
    case "piece":
    case "study":
      return piece(place, before);
    case "movement":
      return before === "" ? quotedTitles(place.journal, 0) : piece(place, before);
    case "concert":
      return concert(place, before);
    default:
      return [];
  }
}

/** What a name in quotes may be said to be, behind its colon. */
function behindName(before: string, words: readonly string[]): Candidate[] {
  return /["”“»]\s*:$/.test(before) ? words.map((label) => ({ label, kind: "term", fit: 0 })) : [];
}

function phrases({ journal }: DeclarationPlace, type: Meaning["type"], kind: Candidate["kind"]): Candidate[] {
  return journal.vocabulary.own.flatMap(({ words, meaning }): Candidate[] =>
    meaning.type === type
      ? [{ label: words[0]!, alternatives: words.slice(1), kind, fit: 0, resolve: { topic: "term", key: words[0]! } }]
      : [],
  );
}

/** Those that entries name come first, then recorders, as they stand first in the table. */
function instruments({ journal }: DeclarationPlace): Candidate[] {
  return journal.vocabulary.own.flatMap(({ words: [label = "", ...alternatives], meaning }): Candidate[] =>
    meaning.type === "instrument"
      ? [
          {
            label,
            alternatives,
            kind: "name",
            fit: 0,
            usage: termKey(meaning),
            resolve: { topic: "instrument", key: meaning.id },
          },
        ]
      : [],
  );
}

/** Behind the name of a recorder and a comma. */
function fingerings({ journal }: DeclarationPlace, before: string): Candidate[] {
  const name = /^([^,"]+),$/.exec(before.replace(/^:\s*/, ""))?.[1];
  const meanings = (name && journal.vocabulary.meanings(phraseKey(name))) || [];
  const isRecorder = meanings.some(
    (each) => each.type === "instrument" && instrumentById(each.id)?.family === "recorder",
  );
  return isRecorder ? [...FINGERINGS.keys()].map((label) => ({ label, kind: "term", fit: 0 })) : [];
}

function pitch(before: string): Candidate[] {
  if (before === "")
    return PITCHES.map((hertz) => ({ label: `A=${hertz}`, aliases: [String(hertz)], kind: "term", fit: 0 }));
  return /^[^,]*,$/.test(before) ? temperaments() : [];
}

function temperaments(): Candidate[] {
  const [just, ...onOthers] = JUST_TONICS.map((name) => `just on ${name}`);
  const byFifths = TEMPERAMENTS.map(({ names: [label, ...aliases] }) => ({ label, aliases }));
  return [...byFifths, { label: just!, alternatives: onOthers }].map((each) => ({
    ...each,
    kind: "name",
    fit: 0,
    resolve: { topic: "temperament", key: each.label },
  }));
}

/** After the colon its key, and after that what else is known of it. */
function piece(place: DeclarationPlace, before: string): Candidate[] {
  const { journal, usage, typing, start, today } = place;
  const colon = before.indexOf(":");
  if (colon < 0) return [];
  const said = before.slice(colon + 1);
  if (said.trim() === "")
    return keyCandidates({ journal, usage, typed: typing.text.slice(start, typing.cursor), fit: 0 });
  if (!said.endsWith(",")) return [];
  const facts: Candidate[] = [
    { label: "goal quarter=", kind: "term", fit: 0 },
    { label: `due ${isoDate(today + DUE)}`, kind: "date", fit: 0 },
    { label: `from ${isoDate(today)}`, kind: "date", fit: 1 },
  ];
  return facts.filter(({ label }) => !new RegExp(`\\b${label.split(" ")[0]}\\b`).test(said));
}

function concert({ journal, today }: DeclarationPlace, before: string): Candidate[] {
  if (/:$|,$/.test(before)) return quotedTitles(journal, 0);
  return /["”“»]$/.test(before) && !before.includes(" on ") && !before.includes(":")
    ? [{ label: `on ${isoDate(today + DUE)}`, kind: "date", fit: 0 }]
    : [];
}
