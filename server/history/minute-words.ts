import { minuteTexts } from "./minute-texts.ts";

/** From so many minutes on, what was shared out is told to the nearest five: more would be false precision. */
const ROUNDED_FROM = 10;
const ROUNDED_TO = 5;

/** `20`; where minutes were shared out, `about 8`, and from ten on to the nearest five, `about 165`. */
export function minutesInWords(minutes: number, about: boolean): string {
  const whole = Math.round(minutes);
  if (!about || whole === 0) return String(whole);
  return minuteTexts.about(whole < ROUNDED_FROM ? whole : Math.round(minutes / ROUNDED_TO) * ROUNDED_TO);
}

interface Timed {
  readonly minutes: number;
  /** Whether they were shared out. */
  readonly about: boolean;
}

/** All of some minutes: `1 minute`, `about 165 minutes`; undefined where they are none. */
export function countOfMinutes(timed: readonly Timed[]): string | undefined {
  const minutes = timed.reduce((sum, each) => sum + each.minutes, 0);
  const whole = Math.round(minutes);
  if (whole === 0) return undefined;
  const about = timed.some((each) => each.about);
  return minuteTexts.count(minutesInWords(minutes, about), whole === 1);
}
