import type { Instrument } from "../../music/instruments/instrument.ts";
import { instrumentById } from "../../music/instruments/instruments.ts";
import { midi } from "../../music/notes/note.ts";
import { NOTE_NAMES, namesById } from "../../music/notes/note-names.ts";
import { declaredTemperament } from "../../music/tuning/declared-temperament.ts";
import { readTemperament, TEMPERAMENT_SPELLINGS } from "../../music/tuning/read-temperament.ts";
import { EQUAL } from "../../music/tuning/temperament.ts";
import type { Part } from "../../syntax/line/cut.ts";
import { fold, phraseKey } from "../../syntax/words/fold.ts";
import type { Meaning, MeaningOf } from "../../syntax/words/meaning.ts";
import { noteAt } from "../../syntax/words/note-word.ts";
import { isQuote, tokenise } from "../../syntax/words/token.ts";
import { instrumentAbroad, instrumentsMeant } from "../instrument-names.ts";
import { afterColon, bodyItems, bodyParts, quotedName, trimmed, wordAt } from "./body.ts";
import { declarationTexts } from "./declaration-texts.ts";
import { type Body, type Declared, type Fault, fault, type Reading } from "./declared.ts";
import { readFingering, readHalfHoles } from "./fingering.ts";
import { withoutLimit } from "./playing-limit.ts";

const LOWEST_PITCH = 380;
const HIGHEST_PITCH = 480;

export function readPlayer(body: Body): Reading {
  const rest = trimmed(body, afterColon(body, body.start));
  if (!rest.text) return { faults: [fault(wordOf(body), declarationTexts.player)] };
  return { declared: { type: "player", words: rest.text }, faults: [] };
}

interface InstrumentReading {
  readonly declared?: Extract<Declared, { readonly type: "instrument" }>;
  readonly faults: readonly Fault[];
}

/** `instrument alto recorder, german fingering`, `instrument "my flute": D4 to B5, half holes D#4`. */
export function readInstrument(whole: Body): Reading {
  const { body, limit, faults } = withoutLimit(whole, whole.start);
  const reading = instrumentOf(body);
  const declared = reading.declared && limit ? { ...reading.declared, limit } : reading.declared;
  return { ...(declared ? { declared } : {}), faults: [...reading.faults, ...faults] };
}

function instrumentOf(body: Body): InstrumentReading {
  const rest = trimmed(body, afterColon(body, body.start));
  if (/^["“”„«»]/.test(rest.text)) return ownInstrument(body);
  const parts = bodyParts(body, rest.start);
  const [first, ...others] = parts;
  const named = first && instrumentIn(body, first);
  if (!named) return { faults: [noInstrument(body, first)] };
  const { id } = named;
  const items = named.isWhole ? [] : first.items;
  const { instrument, faults } = readFingering(body, id, [{ ...first, items }, ...others]);
  return { declared: { type: "instrument", id, ...(instrument && { instrument }) }, faults };
}

/**
 * Here `piano` can only be the instrument, which as a term it is behind `on` alone; and it may be called as in any
 * language. Its name is the whole part, or opens it.
 */
function instrumentIn({ text, vocabulary }: Body, part: Part): { id: string; isWhole: boolean } | undefined {
  const words = text.slice(part.start, part.end);
  const whole = vocabulary.meanings(phraseKey(words))?.find(isInstrument)?.id ?? instrumentAbroad(words);
  if (whole !== undefined) return { id: whole, isWhole: true };
  const first = part.items[0]?.meaning;
  return first && isInstrument(first) ? { id: first.id, isWhole: false } : undefined;
}

function isInstrument(meaning: Meaning): meaning is MeaningOf<"instrument"> {
  return meaning.type === "instrument";
}

function noInstrument(body: Body, part: Part | undefined): Fault {
  const meant = part ? instrumentsMeant(body.text.slice(part.start, part.end), body.vocabulary) : [];
  if (meant.length > 1) return fault(part!, declarationTexts.whichInstrument, meant);
  return fault(part ?? wordOf(body), declarationTexts.unknownInstrument, meant);
}

function ownInstrument(body: Body): InstrumentReading {
  const { name, end, faults } = quotedName(body);
  if (name === undefined) return { faults };
  const rest = trimmed(body, afterColon(body, end));
  const like = knownInstrument(body, end);
  if (like)
    return { declared: { type: "instrument", id: name, instrument: { ...like, id: name, names: [name] } }, faults: [] };
  const match = /^(\S+)\s+to\s+(\S+)(.*)$/is.exec(rest.text);
  const [low, high] = [match?.[1], match?.[2]?.replace(/,$/, "")].map(
    (word) => noteAt(tokenise(word ?? ""), 0, body.vocabulary.notes)?.note,
  );
  if (low?.octave === undefined || high?.octave === undefined) {
    return {
      declared: { type: "instrument", id: name },
      faults: [fault(rest.text ? rest : wordOf(body), declarationTexts.range)],
    };
  }
  const range = { low: { ...low, octave: low.octave }, high: { ...high, octave: high.octave } };
  if (midi(range.low) >= midi(range.high))
    return {
      declared: { type: "instrument", id: name },
      faults: [fault(rest, declarationTexts.lowestFirst)],
    };
  const { halfHoles, faults: beyond } = readHalfHoles(body, rest.end - match![3]!.length);
  const instrument: Instrument = {
    id: name,
    names: [name],
    family: "declared",
    ...range,
    sounding: { steps: 0, semitones: 0 },
    ...(halfHoles && { halfHoles }),
  };
  return { declared: { type: "instrument", id: name, instrument }, faults: beyond };
}

/** `"new alto": alto recorder`: one of a known kind by a name of its own. */
function knownInstrument(body: Body, end: number): Instrument | undefined {
  const from = afterColon(body, end);
  const parts = bodyParts(body, from);
  const named = parts[0] && parts.length === 1 ? instrumentIn(body, parts[0]) : undefined;
  return named?.isWhole ? instrumentById(named.id) : undefined;
}

/** `pitch A=415`, `pitch A=415, Vallotti`, `pitch A=415, "Chapel organ": 0 76.0 193.2 …`. */
export function readPitch(body: Body): Reading {
  const [first, second, third] = bodyParts(body, afterColon(body, body.start));
  const match = first && PITCH.exec(body.text.slice(first.start, first.end));
  if (!match) return { faults: [pitchFault(body, first)] };
  const a = Number(match[1]);
  if (a < LOWEST_PITCH || a > HIGHEST_PITCH)
    return { faults: [fault(first!, declarationTexts.pitchBetween(LOWEST_PITCH, HIGHEST_PITCH))] };
  if (!second) return { declared: { type: "pitch", a, temperament: EQUAL }, faults: [] };
  if (isQuote(body.text[second.start] ?? "")) return ownTemperament(body, a, second.start);
  const more = third ? [fault(third, declarationTexts.nothingAfterTemperament)] : [];
  const read = readTemperament(body.text.slice(second.start, second.end));
  if (read.ok) return { declared: { type: "pitch", a, temperament: read.temperament }, faults: more };
  const start = second.end - read.word.length;
  const near = read.near.length > 0 ? read.near : nearestTemperament(body, read.word);
  return {
    declared: { type: "pitch", a, temperament: EQUAL },
    faults: [fault({ start, end: second.end }, read.reason, near), ...more],
  };
}

function ownTemperament(body: Body, a: number, from: number): Reading {
  const { name, end, faults } = quotedName({ ...body, start: from });
  const equal = { type: "pitch", a, temperament: EQUAL } as const;
  if (name === undefined) return { declared: equal, faults };
  const rest = trimmed(body, afterColon(body, end));
  const reading = declaredTemperament(name, rest.text);
  if (reading.ok) return { declared: { type: "pitch", a, temperament: reading.temperament }, faults: [] };
  const at = rest.text ? wordAt(rest.text, reading.at, rest.start) : { start: from, end };
  return { declared: equal, faults: [fault(at, reading.reason)] };
}

const PITCH = /^(?:A4?\s*=?\s*)?(\d{1,4}(?:\.\d+)?)(?:\s*hz)?$/i;

/** The comma before the temperament is easily left out. */
function pitchFault(body: Body, part: Part | undefined): Fault {
  const typed = part ? body.text.slice(part.start, part.end) : "";
  const [, pitch = "", temperament = ""] = /^((?:A4?\s*=?\s*)?[\d.]+(?:\s*hz)?)\s+(\S.*)$/is.exec(typed) ?? [];
  if (PITCH.test(pitch) && readTemperament(temperament).ok)
    return fault(part!, declarationTexts.commaBeforeTemperament, [`${pitch}, ${temperament}`]);
  return fault(part ?? wordOf(body), declarationTexts.pitch);
}

function nearestTemperament({ vocabulary }: Body, word: string): readonly string[] {
  const near = vocabulary.nearest(word, [...TEMPERAMENT_SPELLINGS.keys()]);
  return near === undefined ? [] : [TEMPERAMENT_SPELLINGS.get(near)!];
}

/** `names german`. */
export function readNames(body: Body): Reading {
  const rest = trimmed(body, afterColon(body, body.start));
  const names = namesById(fold(rest.text));
  if (names) return { declared: { type: "names", id: names.id }, faults: [] };
  const known = NOTE_NAMES.map(({ id }) => id);
  const near = body.vocabulary.nearest(fold(rest.text), known);
  const at = rest.text ? rest : wordOf(body);
  return { faults: [fault(at, declarationTexts.names(known), near ? [near] : [])] };
}

/** `hide notes`. */
export function readHideNotes(body: Body): Reading {
  const rest = trimmed(body, body.start);
  const faults = rest.text ? [fault(rest, declarationTexts.nothingMoreAfter("hide notes"))] : [];
  return { declared: { type: "hide notes" }, faults };
}

export function readNoteValue(body: Body): Reading {
  const items = bodyItems(body, afterColon(body, body.start));
  const value = items[0]?.meaning;
  if (value?.type !== "note value" || items.length > 1)
    return {
      faults: [fault(restOf(body), declarationTexts.noteValue, nearestOf(body, "note value"))],
    };
  return { declared: { type: "note value", value: value.value }, faults: [] };
}

export function readUsualArticulation(body: Body): Reading {
  const items = bodyItems(body, afterColon(body, body.start));
  const articulation = items[0]?.meaning;
  if (articulation?.type !== "articulation" || items.length > 1)
    return {
      faults: [fault(restOf(body), declarationTexts.articulation, nearestOf(body, "articulation"))],
    };
  return { declared: { type: "usual articulation", articulation }, faults: [] };
}

function wordOf(body: Body): { readonly start: number; readonly end: number } {
  return { start: body.start - body.word.length, end: body.start };
}

function restOf(body: Body): { readonly start: number; readonly end: number } {
  const rest = trimmed(body, body.start);
  return rest.text ? rest : wordOf(body);
}

/** The phrase of a type that is nearest to the body; none where the body is a term of another type, and no slip. */
function nearestOf(body: Body, type: "articulation" | "note value"): readonly string[] {
  if (body.vocabulary.meanings(phraseKey(trimmed(body, body.start).text))) return [];
  const among = body.vocabulary.own.filter(({ meaning }) => meaning.type === type).flatMap(({ words }) => words);
  const near = body.vocabulary.nearest(trimmed(body, body.start).text, among);
  return near === undefined ? [] : [near];
}
