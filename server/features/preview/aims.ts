import type { PreviewLine } from "../../../shared/preview.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import { shortDate, weekdayDate } from "../../journal/date-words.ts";
import { type DeclaredAim, withoutDay } from "../../journal/declared-lines.ts";
import type { Journal } from "../../journal/journal.ts";
import { progressInWords } from "../../plan/aim-words.ts";
import { aimedAt, aimProgress, nearestAimFirst, shownAims } from "../../plan/aims.ts";
import { daysAhead, forDay } from "../../plan/day-words.ts";
import { line } from "./lines.ts";
import type { Aimed } from "./opened.ts";
import { sectionTexts } from "./section-texts.ts";
import { placeOf, sentence, shownText } from "./text.ts";

/** The aims that lie ahead by their day, those without a day, and those whose day has just passed. */
export function aimsSection(journal: Journal, aims: readonly DeclaredAim[], asked: AimsAsked): readonly PreviewLine[] {
  const { today, reading } = asked;
  return shownAims(aims, today).map((aim) => {
    const { by } = aim.declared;
    const place = placeOf(journal, aim.uri, aim.block, aim.line);
    const ahead = by !== undefined && by >= today;
    const below = [
      ...(by === undefined ? [] : [sentence(ahead ? daysAhead(by - today) : forDay(by, today))]),
      ...progressInWords(journal, aimProgress(journal, aim, { today }), { today, forecast: !reading }),
    ];
    return line(shownText(withoutDay(aim.text)), place, dayOf(by, today), { below: shownText(below.join(" "), 1000) });
  });
}

export interface AimsAsked {
  readonly today: DayNumber;
  /** Whether what there is may be a part of the journal: then nothing is forecast. */
  readonly reading: boolean;
}

function dayOf(by: DayNumber | undefined, today: DayNumber): string {
  if (by === undefined) return sectionTexts.noDate;
  return by < today ? shortDate(by, today) : sectionTexts.by(weekdayDate(by, today));
}

/** By the key of its strand, the next aim at a tempo; else one without a day, else the one that passed last. */
export function aimsByStrand(
  journal: Journal,
  aims: readonly DeclaredAim[],
  today: DayNumber,
): ReadonlyMap<string, Aimed> {
  const found = new Map<string, Aimed>();
  for (const aim of nearestAimFirst(aims, today)) {
    const { by } = aim.declared;
    for (const { tempo, strand } of aimedAt(journal, aim)) {
      if (!strand || !tempo || found.has(strand.key)) continue;
      found.set(strand.key, { rate: tempo.rate, ...(by === undefined ? {} : { by }) });
    }
  }
  return found;
}
