import type { SheetParams, SheetResult } from "../../shared/export.ts";
import { fileNameFor } from "../features/scores/file-name.ts";
import { weekSheet } from "../features/sheet/days-sheet.ts";
import { sheetHtml } from "../features/sheet/sheet-html.ts";
import { todaySheet } from "../features/sheet/today-sheet.ts";
import { nameOfJournal } from "../journal/journal-name.ts";
import { planWanted } from "./plan-wanted.ts";
import type { Place } from "./session.ts";

/** A page to print, of the journal of a document. */
export async function sheet({ session, uri }: Place, { textDocument, of }: SheetParams): Promise<SheetResult> {
  await session.workspace.walk(); // what was played may stand in any file of the journal
  const place = await session.placeOf(textDocument.uri);
  if (!place) return null;
  const { journal } = place;
  const shown = { name: nameOfJournal(journal), fingerings: false, hiddenNotes: false };
  const { today, minutes, settings } = planWanted(session, uri, undefined);
  const made =
    of === "week" ? weekSheet(journal, today, shown) : todaySheet(journal, { day: today, minutes, settings }, shown);
  return { name: fileNameFor(made.title), html: sheetHtml(made, await session.staffDrawer()) };
}
