import type { Passage, Sound, Tone } from "../../shared/sound.ts";
import type { NoteValue, Tempo } from "../journal/model.ts";
import { noteStarts, rhythmLengths } from "../music/notes/rhythm.ts";
import { pureRatio } from "../music/tuning/temperament.ts";
import { countIn, exerciseHertz, type HeardBy, noteHertz, semitonesBetween } from "./heard.ts";
import type { ClickLine, CompareLine, DroneLine, PlayLine, SoundLine } from "./sound-line.ts";
import type { Metre } from "./sound-terms.ts";
import { soundTexts } from "./sound-texts.ts";

/** What a day allows of tempos: the most at a tempo that is asked for, in beats a minute; undefined without limit. */
export type MostAt = (tempo: Pick<Tempo, "bpm" | "beat">) => number | undefined;

/** Minutes: nothing sounds longer in one go. */
const MOST_MINUTES = 10;
const USUAL_MINUTES = 1;
/** Beats of a bar where a line speaks of bars and says no metre. */
const USUAL_BEATS = 4;
/** Clicks in one beat. */
const MOST_DIVISIONS = 12;
/** Seconds that each sound of a comparison is held. */
const COMPARED_FOR = 4;

/** Hertz and loudness of clicks: the first of a bar the highest, those within a beat the lowest. Our own choice. */
const CLICK = {
  first: { hertz: 1600, level: 1 },
  beat: { hertz: 1200, level: 0.8 },
  within: { hertz: 900, level: 0.4 },
} as const;
/** Seconds. */
const CLICK_LENGTH = 0.03;
/** Of its time that a note sounds where notes are tongued. */
export const DETACHED = 0.85;
const TONE_LEVEL = 0.6;

/** The passages that a line is heard as, one after the other. */
export function soundOf(line: SoundLine, by: HeardBy, mostAt: MostAt): Sound {
  switch (line.type) {
    case "click":
      return clicks(line, by, mostAt);
    case "drone":
      return drone(line, by);
    case "play":
      return exercise(line, by, mostAt);
    case "compare":
      return comparison(line, by);
  }
}

function clicks(line: ClickLine, by: HeardBy, mostAt: MostAt): Sound {
  const asked = line.metre ?? (line.turns && { beats: USUAL_BEATS });
  const passages = line.tempos.map((tempo) => {
    const { beat = by.beat } = tempo;
    const divisions = line.division ? countIn(beat, line.division) : 1;
    const beats = asked ? beatsOf(asked, beat) : 1;
    if (!divisions || divisions > MOST_DIVISIONS || !beats) return undefined;
    const bpm = limited(tempo, mostAt);
    const bars = line.turns ?? { on: 1, off: 0 };
    const round = ((bars.on + bars.off) * beats * 60) / bpm;
    const tones = Array.from({ length: bars.on * beats * divisions }, (_, i): Tone => {
      const click = i % divisions !== 0 ? "within" : asked && i % (beats * divisions) === 0 ? "first" : "beat";
      return { at: (i * 60) / (bpm * divisions), length: CLICK_LENGTH, type: "click", ...CLICK[click] };
    });
    return { label: soundTexts.at(bpm), bpm, round, rounds: roundsIn(line.minutes, round), tones };
  });
  return withLimits(passages, line.tempos, soundTexts.uneven);
}

function exercise(line: PlayLine, by: HeardBy, mostAt: MostAt): Sound {
  const hertz = exerciseHertz(by);
  if (hertz.length === 0) return refused(soundTexts.nothingToPlay);
  const value = line.noteValue ?? by.noteValue;
  const starts = noteStarts(rhythmLengths(by.rhythm), hertz.length);
  const passages = line.tempos.map((tempo) => {
    const { beat = by.beat } = tempo;
    const bpm = limited(tempo, mostAt);
    const each = (60 / bpm) * part(value, beat);
    const whole = { from: 0, to: starts.at(-1)! };
    const span = line.bars ? spanOfBars(line.bars, beat, value, line.metre) : whole;
    if (!span) return undefined;
    const tones = hertz.flatMap((of, i): Tone[] => {
      const start = starts[i]!;
      if (start < span.from - ROUNDING || start > span.to - ROUNDING) return [];
      const length = (starts[i + 1]! - start) * each * (by.slurred ? 1 : DETACHED);
      return [{ at: (start - span.from) * each, length, hertz: of, type: "tone", level: TONE_LEVEL }];
    });
    const beats = Math.ceil((Math.min(span.to, whole.to) - span.from) * part(value, beat) - ROUNDING);
    return { label: soundTexts.at(bpm), bpm, round: (beats * 60) / bpm, rounds: line.times, tones };
  });
  const isEmpty = passages.some((passage) => passage?.tones.length === 0);
  return isEmpty ? refused(soundTexts.noSuchBars) : withLimits(passages, line.tempos, soundTexts.uneven);
}

/** Thirds of a beat do not add up to whole ones in a double. */
const ROUNDING = 1e-9;

function part(value: NoteValue, beat: NoteValue): number {
  return (value.numerator * beat.denominator) / (value.denominator * beat.numerator);
}

/** From where to where bars reach, in notes; undefined where a bar holds no whole number of them. */
function spanOfBars(
  { from, to }: { readonly from: number; readonly to: number },
  beat: NoteValue,
  value: NoteValue,
  metre: Metre | undefined,
): { readonly from: number; readonly to: number } | undefined {
  const { numerator, denominator } = beat;
  const bar = metre
    ? { numerator: metre.beats, denominator: metre.value }
    : { numerator: USUAL_BEATS * numerator, denominator };
  const count = countIn(bar, value);
  return count === undefined ? undefined : { from: (from - 1) * count, to: to * count };
}

function beatsOf(metre: { readonly beats: number; readonly value?: number }, beat: NoteValue): number | undefined {
  if (metre.value === undefined) return metre.beats;
  return countIn({ numerator: metre.beats, denominator: metre.value }, beat);
}

function drone({ notes, minutes }: DroneLine, by: HeardBy): Sound {
  const hertz = notes.map((note) => noteHertz(note, by));
  if (hertz.some((each) => each === undefined)) return refused(soundTexts.noDegrees);
  const round = 60 * Math.min(minutes || USUAL_MINUTES, MOST_MINUTES);
  const tones = hertz.map((each): Tone => held(each!, round));
  return { ok: true, passages: [{ label: soundTexts.drone, round, rounds: 1, tones }], notes: [] };
}

/** As it is tuned, then pure: the upper note moves, the lower one stays. */
function comparison({ upper, lower }: CompareLine, by: HeardBy): Sound {
  const low = noteHertz(lower, by);
  const semitones = semitonesBetween(lower, upper, by);
  const anywhere = noteHertz(upper, by);
  if (low === undefined || semitones === undefined || anywhere === undefined) return refused(soundTexts.noDegrees);
  const pure = low * pureRatio(semitones);
  const tuned = anywhere * 2 ** Math.round(Math.log2(pure / anywhere)); // in the octave above the lower note
  const passage = (label: string, hertz: number): Passage => ({
    label,
    round: COMPARED_FOR,
    rounds: 1,
    tones: [held(low, COMPARED_FOR), held(hertz, COMPARED_FOR)],
  });
  return { ok: true, passages: [passage(soundTexts.asTuned, tuned), passage(soundTexts.pure, pure)], notes: [] };
}

function held(hertz: number, length: number): Tone {
  return { at: 0, length, hertz, type: "tone", level: TONE_LEVEL };
}

function roundsIn(minutes: number | undefined, round: number): number {
  const seconds = 60 * Math.min(minutes || USUAL_MINUTES, MOST_MINUTES);
  return Math.max(1, Math.floor(seconds / round + ROUNDING));
}

function limited(tempo: Tempo, mostAt: MostAt): number {
  return Math.min(tempo.bpm, mostAt(tempo) ?? tempo.bpm);
}

/** What was asked for faster than the day allows is said. */
function withLimits(
  passages: readonly (Passage | undefined)[],
  asked: readonly { readonly bpm: number }[],
  reason: string,
): Sound {
  const all = passages.filter((passage) => passage !== undefined);
  if (all.length < passages.length) return refused(reason);
  const lower = all.filter(({ bpm }, i) => bpm! < asked[i]!.bpm).map(({ bpm }) => bpm!);
  if (lower.length === 0) return { ok: true, passages: all, notes: [] };
  return { ok: true, passages: all, notes: [soundTexts.notFaster(Math.max(...lower))] };
}

function refused(reason: string): Sound {
  return { ok: false, reason };
}
