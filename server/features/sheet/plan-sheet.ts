import { civil, isoDate } from "../../journal/calendar.ts";
import { dateInWords } from "../../journal/date-words.ts";
import type { Journal } from "../../journal/journal.ts";
import { phaseTexts } from "../../journal/phase-texts.ts";
import { dayPlan } from "../../plan/day-plan.ts";
import type { PlanAsked, PlanLine } from "../../plan/plan.ts";
import { planBasis } from "../../plan/plan-basis.ts";
import { type PlanStretch, planStretches } from "../../plan/plan-text.ts";
import { createDocument } from "../../syntax/document/document.ts";
import { exerciseItem, type Sheet, type SheetEntry, type SheetItem, type SheetPart, type SheetShown } from "./sheet.ts";
import { sheetTexts } from "./sheet-texts.ts";

/** The plan of a day. What it says of the body comes first, and is left out by nothing. */
export function planSheet(journal: Journal, asked: PlanAsked, shown: SheetShown & { readonly name: string }): Sheet {
  const plan = dayPlan(journal, asked);
  const { conventions, instrument } = planBasis(journal, asked);
  const entryOf = entryReader(journal, {
    conventions: { ...conventions, instrument: instrument ?? undefined },
    day: asked.day,
  });
  const parts = planStretches(plan).map((stretch) =>
    partOf(stretch, (line) => itemOf(line, entryOf(line.text), shown)),
  );
  const set = plan.setInWords.map((words) => sheetTexts.set(words));
  return {
    title: sheetTexts.planFor(dateInWords(asked.day, asked.day), civil(asked.day).year),
    name: shown.name,
    sentences: [...plan.care, ...plan.notes, ...set],
    parts,
  };
}

type LineEntry = (text: string) => SheetEntry | undefined;

/** Reads a line of a plan as the journal would. */
function entryReader(journal: Journal, { conventions, day }: Pick<SheetEntry, "conventions" | "day">): LineEntry {
  return (text) => {
    const block = createDocument(`${isoDate(day)}, plan\n${text}\n`).blocks.at(-1)!;
    const [entry] = journal.ownModelOnce(block).entries;
    return entry && { entry, text, conventions, day };
  };
}

function partOf({ phase, minutes, lines }: PlanStretch, itemOfLine: (line: PlanLine) => SheetItem): SheetPart {
  const name = phaseTexts.name(phase);
  const heading = phase === "break" ? sheetTexts.pause : name[0]!.toUpperCase() + name.slice(1);
  return { heading: sheetTexts.part(heading, minutes), items: lines.map(itemOfLine) };
}

function itemOf({ text, minutes }: PlanLine, read: SheetEntry | undefined, shown: SheetShown): SheetItem {
  const time = sheetTexts.minutes(minutes);
  const item = read && exerciseItem(read, shown);
  if (!item) return { name: text.replace(new RegExp(`, ${minutes} min$`), ""), way: time, instead: "" };
  return { ...item, way: [item.way, time].filter((each) => each !== "").join(", ") };
}
