import type { Palette } from "../../../shared/protocol.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Entry } from "../../journal/model.ts";
import { notesHidden } from "../../journal/notes-hidden.ts";
import type { Staff } from "../../notation/staff.ts";
import type { StaffDrawer, StaffLook } from "../../notation/staff-look.ts";
import { entryStaves } from "../explain/entry-staff.ts";
import { extract, pictureInMarkdown } from "../explain/markdown.ts";
import type { Explain } from "../explain/theory.ts";

/** An entry, and what bears on how its staff is shown. */
export interface StaffAt {
  readonly journal: Journal;
  readonly uri: string;
  readonly entry: Entry;
  readonly text: string;
  readonly day: DayNumber | undefined;
  readonly explain: Explain;
  readonly palette?: Palette;
  readonly staves?: StaffDrawer;
}

/** A staff in a hover is as wide as the hover's other picture or wider, and one line high. */
const WIDTH = 440;
const HIGHEST = 90;
const SCALE = 0.75;

/**
 * An entry's exercise on a staff of one line, as Markdown, with its notes in words for whoever does not see it;
 * undefined where nobody draws here, where notes are hidden, and for what takes more than a line.
 */
export function staffInMarkdown(at: StaffAt, title: string): string | undefined {
  const { entry, journal, uri, text, day, staves, palette, explain } = at;
  const conventions = journal.conventions(uri);
  if (!staves || !palette || explain === "none" || notesHidden(entry, conventions)) return undefined;
  const found = entryStaves({ entry, text, title, conventions, day }).find((staff) => fitsHover(staff, staves));
  return found && drawnStaves([found], staves, { palette, highest: HIGHEST });
}

/** Whether a staff takes a single line in a hover. */
export function fitsHover(staff: Staff, drawer: StaffDrawer): boolean {
  return drawer.fitsOneLine(staff, { width: WIDTH, scale: SCALE });
}

/** Staves as a picture, smaller where it would be too high. */
export function drawnStaves(
  shown: readonly Staff[],
  drawer: StaffDrawer,
  { palette, highest }: { readonly palette: Palette; readonly highest: number },
): string {
  const look: StaffLook = { width: WIDTH, scale: SCALE, id: "staff", colour: palette.foreground };
  const first = drawer.drawStaves(shown, look);
  const scale = Math.min(SCALE, (SCALE * highest) / first.height);
  const { svg } = scale < SCALE ? drawer.drawStaves(shown, { ...look, scale }) : first;
  return pictureInMarkdown(extract(shown.map(({ title, text }) => `${title}. ${text}`).join(" "), LONGEST), svg);
}

/** In characters, of what a picture shows in words. */
const LONGEST = 600;
