/** A sample journal as it would stand on a day, ISO 8601. */
export function bringUpTo(texts: Readonly<Record<string, string>>, today: string): Record<string, string>;

/** Whether a path is that of a file with the days of a month. */
export function isMonth(path: string): boolean;

/** The day that a clock on the wall shows, ISO 8601. */
export function localDay(now: Date): string;

/** A text with every date so many weeks later, so that weekdays stay right. */
export function later(text: string, weeks: number): string;
