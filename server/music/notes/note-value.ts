/** A duration as a fraction of a whole note: a quarter is 1/4, a dotted quarter 3/8, a triplet eighth 1/12. */
export interface NoteValue {
  readonly numerator: number;
  readonly denominator: number;
}

export const QUARTER: NoteValue = { numerator: 1, denominator: 4 };

/**
 * Notes a minute: beats a minute, times how many of `note` fill one `beat`.
 * An eighth beat at 120 in eighths is 120, as a quarter beat at 60 in eighths is.
 */
export function notesPerMinute(bpm: number, beat: NoteValue, note: NoteValue): number {
  return (bpm * beat.numerator * note.denominator) / (beat.denominator * note.numerator);
}

/**
 * The steps of a mechanical metronome, in beats a minute: 40-60 by 2, 60-72 by 3, 72-120 by 4, 120-144 by 6, 144-208
 * by 8. Common practice; the range 40-208 stands in the Oxford Dictionary of Music under "metronome".
 */
export const METRONOME_STEPS: readonly number[] = [
  40, 42, 44, 46, 48, 50, 52, 54, 56, 58, 60, 63, 66, 69, 72, 76, 80, 84, 88, 92, 96, 100, 104, 108, 112, 116, 120, 126,
  132, 138, 144, 152, 160, 168, 176, 184, 192, 200, 208,
];

export interface NearestSteps {
  /** The next step strictly below; none at 40 or slower. */
  readonly below?: number;
  /** The tempo itself where it is a step. */
  readonly at?: number;
  /** The next step strictly above; none at 208 or faster. */
  readonly above?: number;
}

/** The notches of the metronome around a tempo in beats a minute, which need not be whole. */
export function nearestSteps(bpm: number): NearestSteps {
  return {
    below: METRONOME_STEPS.findLast((step) => step < bpm),
    at: METRONOME_STEPS.find((step) => step === bpm),
    above: METRONOME_STEPS.find((step) => step > bpm),
  };
}

/**
 * How many notches of the metronome it is from one tempo to another, parts of one counted: one from 72 to 76, a half
 * from 72 to 74, less than nought downwards. Beyond the scale its last notch goes on.
 */
export function notchesBetween(from: number, to: number): number {
  return placeOf(to) - placeOf(from);
}

/** Where a tempo lies on the scale, in notches from its lowest setting. */
function placeOf(bpm: number): number {
  const above = METRONOME_STEPS.findIndex((step) => step > bpm);
  const upper = above === -1 ? METRONOME_STEPS.length - 1 : Math.max(1, above);
  const [low, high] = [METRONOME_STEPS[upper - 1]!, METRONOME_STEPS[upper]!];
  return upper - 1 + (bpm - low) / (high - low);
}
