const DATE = /\b\d{4}-\d{2}-\d{2}\b/g;
const DAY_LINE = /^(?=\d{4}-\d{2}-\d{2})/m;
const MONTH = /\d{4}-\d{2}\.practice$/;
const DAY = 86_400_000;
const WEEK = 7 * DAY;
/** The Monday of an ISO week, in milliseconds since 1970, whose first Monday was 5 January. */
const mondayOf = (time) => time - ((time - 4 * DAY) % WEEK);

/**
 * A sample journal as it would stand today: all its dates moved on by whole weeks, so that its last week is the present
 * one, without the days that lie ahead; one that ends later than that stays as it is. Days stand in a file for each
 * month again.
 *
 * @param {Readonly<Record<string, string>>} texts the texts of files by path; those with days are called
 * `2026-11.practice`
 * @param {string} today ISO 8601
 * @returns {Record<string, string>}
 */
export function bringUpTo(texts, today) {
  const months = Object.entries(texts).filter(([path]) => isMonth(path));
  const days = months.flatMap(([, text]) => text.split(DAY_LINE).slice(1));
  const last = days.map(dateOf).sort().at(-1);
  const weeks = last ? (mondayOf(Date.parse(today)) - mondayOf(Date.parse(last))) / WEEK : 0;
  if (weeks <= 0) return { ...texts };
  const [[path, first]] = months;
  const head = first.split(DAY_LINE)[0];
  const moved = Object.fromEntries(
    Object.entries(texts)
      .filter(([path]) => !isMonth(path))
      .map(([path, text]) => [path, later(text, weeks)]),
  );
  for (const day of days.map((text) => later(text, weeks))) {
    if (dateOf(day) > today) continue;
    const month = path.replace(MONTH, `${dateOf(day).slice(0, 7)}.practice`);
    moved[month] = `${moved[month] ?? head.trimEnd()}\n\n${day.trim()}`;
  }
  return Object.fromEntries(Object.entries(moved).map(([path, text]) => [path, `${text.trimEnd()}\n`]));
}

/** Whether a path is that of a file with the days of a month. */
export function isMonth(path) {
  return MONTH.test(path);
}

/** The day that a clock on the wall shows, ISO 8601. */
export function localDay(now) {
  return new Date(now.getTime() - now.getTimezoneOffset() * 60_000).toISOString().slice(0, 10);
}

function dateOf(day) {
  return day.slice(0, 10);
}

/**
 * A text with every date so many weeks later, so that weekdays stay right.
 *
 * @param {string} text
 * @param {number} weeks
 */
export function later(text, weeks) {
  return text.replace(DATE, (date) => new Date(Date.parse(date) + weeks * WEEK).toISOString().slice(0, 10));
}
