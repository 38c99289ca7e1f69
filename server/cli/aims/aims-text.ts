import { dateInWords } from "../../journal/date-words.ts";
import { type DeclaredAim, withoutDay } from "../../journal/declared-lines.ts";
import type { Journal } from "../../journal/journal.ts";
import { progressInWords } from "../../plan/aim-words.ts";
import { aimProgress, shownAims } from "../../plan/aims.ts";
import { daysAhead } from "../../plan/day-words.ts";
import { painter } from "../colour.ts";
import type { Io } from "../io.ts";
import { paragraph, roomOf } from "../paragraph.ts";
import { printable } from "../printable.ts";
import type { Around } from "../whole-journals.ts";
import { type AimsTold, aimsOf } from "./aims-report.ts";

/** Each aim with what is said of it below; of several journals each under its name. */
export function aimsText(journals: readonly Around[], io: Io): string {
  const paint = painter(io);
  const lists = journals.map(({ journal, name }) => {
    const all = aimsOf(journal, io.today);
    const shown = shownAims(all, io.today);
    const heading = journals.length > 1 ? [paint(printable(name), "bold")] : [];
    const lines = shown.map((aim) => [
      printable(withoutDay(aim.text)),
      ...paragraph(saidOf(journal, aim, { today: io.today }), roomOf(io), "  "),
    ]);
    return [...heading, ...lines.map((each) => each.join("\n")), ...leftOut(all.length - shown.length)];
  });
  return lists
    .filter((list) => list.length > 0)
    .map((list) => `${list.join("\n")}\n`)
    .join("\n");
}

/** An aim's date, where it is, and its forecast, in sentences. */
export function saidOf(journal: Journal, aim: DeclaredAim, told: AimsTold): string {
  const progress = aimProgress(journal, aim, told);
  return [dayOf(aim, told), ...progressInWords(journal, progress, { ...told, forecast: true })].join(" ");
}

function dayOf({ declared: { by } }: DeclaredAim, { today, dated }: AimsTold): string {
  if (by === undefined) return "No date set.";
  const date = dateInWords(by, today);
  return by < today ? `Was for ${date}.` : `For ${date}${dated ? "" : `, ${daysAhead(by - today)}`}.`;
}

function leftOut(count: number): string[] {
  if (count === 0) return [];
  const aims =
    count === 1
      ? "An aim whose date passed over four weeks ago is"
      : `${count} aims whose dates passed over four weeks ago are`;
  return [`${aims} left out; --json has ${count === 1 ? "it" : "them"}.`];
}
