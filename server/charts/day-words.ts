import { type Day, type DayBars, sum, type WeekByDay, weekByDay } from "./day-data.ts";

/** The week in a sentence: `95 minutes on 4 days; last week 80 on 3.` */
export function minutesInWords(data: DayBars): string {
  return sentence(weekByDay(data));
}

/** What the bars show: the week in a sentence, then each day. */
export function describeDays(week: WeekByDay): string {
  return `${sentence(week)} ${week.days.map((day) => dayInWords(day, week.phases)).join("; ")}.`;
}

function sentence({ days }: WeekByDay): string {
  const about = days.some((day) => day.about && day.total > 0);
  const now = `${about ? "about " : ""}${minuteCount(sum(days.map(({ total }) => total)))} on ${dayCount(days.map(({ total }) => total))}`;
  const before = days.map(({ lastWeek }) => lastWeek);
  const last = sum(before) > 0 ? `; last week ${shownMinutes(sum(before))} on ${before.filter(Boolean).length}` : "";
  return `${now[0]!.toUpperCase()}${now.slice(1)}${last}.`;
}

function dayInWords({ label, minutes, total, about, note }: Day, phases: readonly string[]): string {
  if (total === 0) return `${label} ${note || "none"}`;
  const parts = minutes.flatMap((each, phase) => (each > 0 ? [`${phases[phase]} ${shownMinutes(each)}`] : []));
  return `${label} ${about ? "about " : ""}${shownMinutes(total)} (${parts.join(", ")})`;
}

function minuteCount(minutes: number): string {
  const shown = shownMinutes(minutes);
  return `${shown} ${shown === "1" ? "minute" : "minutes"}`;
}

function dayCount(totals: readonly number[]): string {
  const days = totals.filter(Boolean).length;
  return `${days} ${days === 1 ? "day" : "days"}`;
}

/** Whole minutes; what was practised at all is at least one. */
export function shownMinutes(minutes: number): string {
  return String(minutes > 0 ? Math.max(1, Math.round(minutes)) : 0);
}
