// Reads the diary's shorthand. What was played, how it went where a remark speaks of it, and every word are the
// diary's; tempos, tries and the shares of time are left to entries.mjs and write.mjs.
//
//   week 2025-11-24          the Monday of the days that follow
//   Mon 30                   a day, and its minutes in all
//   Tue rest, late           a rest day, or any other words behind the weekday
//   session 17:00 20         another sitting, and its minutes in all
//   w tones; five            entries of a phase, here the warm-up; `t90 with the consort` gives its minutes and company
//   . dm3 uneven; cross      entries of the phase that goes on, or of none
//   = F major, slow          an entry as it stands; `p = F major` likewise
//   -- words                 a remark on the entry above
//   ! words, ? words         a word from the teacher, a question for the lesson
//   break 5, set …, | line   a break, set work, a line as it stands
//
// An entry is a short name of player.mjs and perhaps: how it went above the day's best (`nearly`, `uneven`, `rushed`,
// `slips`), `well` (nothing failed), `row` (five in a row), `once`, `slow`, `heart` (by heart), `-2` (two metronome
// steps below what she could).

const DAY = 86_400_000;
const WEEK = 7 * DAY;
const WEEKDAYS = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"];

export const PHASES = {
  w: "warm-up",
  g: "groundwork",
  f: "fluency",
  s: "studies",
  p: "pieces",
  c: "tenor corner",
  t: "together",
  l: "lesson",
  a: "away",
};

const SHORTHAND = [
  [/^week (\S+)$/, (diary, [monday]) => diary.week(monday)],
  [/^(Mon|Tue|Wed|Thu|Fri|Sat|Sun)(?: (\d+))?(?: (.+))?$/, (diary, found) => diary.day(...found)],
  [/^session (\S+)(?: (\d+))?$/, (diary, [clock, minutes]) => diary.sitting(clock, minutes)],
  [/^break (\d+)$/, (diary, [minutes]) => diary.line("break", `break, ${minutes} min`)],
  [/^-- (.+)$/, (diary, [words]) => diary.line("remark", `-- ${words}`)],
  [/^\? (.+)$/, (diary, [words]) => diary.line("plain", `ask: ${words}`)],
  [/^! (.+)$/, (diary, [words]) => diary.line("plain", `said: ${words}`)],
  [/^(set .+)$/, (diary, [text]) => diary.line("plain", text)],
  [/^\| (.+)$/, (diary, [text]) => diary.line("plain", text)],
  [/^(= .+)$/, (diary, [entry]) => diary.entries(entry)],
  [/^\. (.+)$/, (diary, [entries]) => diary.entries(entries)],
  [/^([wgfspctla])(\d+)?(?: (with .+))?(?: (.+))?$/, (diary, found) => diary.phase(...found)],
];

/**
 * The days of the diary, oldest first: `{ date, weekday, week, words, sittings }`. A sitting has its minutes, if they
 * are said, and its lines: of the type `phase`, `entry`, `remark`, `break` or `plain`.
 */
export function readDiary(shorthand, firstMonday) {
  const diary = new Diary(firstMonday);
  for (const line of shorthand.split("\n").filter((each) => each !== "")) {
    const kind = SHORTHAND.find(([form]) => form.test(line));
    if (!kind) throw new Error(`no shorthand: ${line}`);
    kind[1](diary, kind[0].exec(line).slice(1));
  }
  return diary.days;
}

class Diary {
  days = [];
  #first;
  #monday;
  #lines;
  #phase;

  constructor(firstMonday) {
    this.#first = Date.parse(firstMonday);
  }

  week(monday) {
    this.#monday = Date.parse(monday);
    if (!Number.isInteger((this.#monday - this.#first) / WEEK)) throw new Error(`no Monday: ${monday}`);
  }

  day(weekday, minutes, words) {
    const time = this.#monday + WEEKDAYS.indexOf(weekday) * DAY;
    const date = new Date(time).toISOString().slice(0, 10);
    const week = (this.#monday - this.#first) / WEEK + 1;
    this.days.push({ date, weekday, week, words, sittings: [] });
    this.sitting(undefined, minutes);
  }

  sitting(clock, minutes) {
    this.#lines = [];
    this.#phase = undefined;
    this.days.at(-1).sittings.push({ clock, minutes: minutes && Number(minutes), lines: this.#lines });
  }

  phase(letter, minutes, company, entries) {
    if (letter !== this.#phase) {
      this.line("phase", PHASES[letter], { letter, minutes: minutes && Number(minutes), company });
      this.#phase = letter;
    }
    if (entries) this.entries(entries);
  }

  entries(text) {
    for (const entry of text.split("; ")) this.line("entry", entry);
  }

  line(type, text, more = {}) {
    this.#lines.push({ type, text, phase: this.#phase, ...more });
  }
}
