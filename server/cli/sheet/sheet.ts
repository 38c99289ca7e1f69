import { daysSheet } from "../../features/sheet/days-sheet.ts";
import { planSheet } from "../../features/sheet/plan-sheet.ts";
import type { Sheet } from "../../features/sheet/sheet.ts";
import { sheetHtml } from "../../features/sheet/sheet-html.ts";
import { todaySheet } from "../../features/sheet/today-sheet.ts";
import { Journal } from "../../journal/journal.ts";
import { USUAL_PLAN } from "../../plan/plan.ts";
import { dayAsked } from "../arguments.ts";
import type { Arguments } from "../command.ts";
import { instrumentAsked } from "../instrument-asked.ts";
import { fail, type Io, STATUS, type Status } from "../io.ts";
import { readJournals } from "../journals.ts";
import { minutesAsked } from "../minutes-asked.ts";
import { daysAsked } from "../report/days-asked.ts";
import { nameOnPage } from "../report/journal-report.ts";
import { wholeJournals } from "../whole-journals.ts";

/** `daystave sheet`: a plan or some days of one journal, to be printed. */
export async function sheet({ positionals, flags, values }: Arguments, io: Io): Promise<Status> {
  const ofDays = DAYS.filter((option) => values.has(option));
  const ofPlan = PLAN.filter((option) => values.has(option));
  if (ofDays.length > 0 && ofPlan.length > 0)
    return fail(io, `“--${ofPlan[0]}” is for a plan, and “--${ofDays[0]}” for days that were played: choose one.`);
  const read = await readJournals(positionals, io);
  if (!read.ok) return fail(io, read.reason);
  const journals = wholeJournals(read, io);
  if (journals.length > 1) return fail(io, "Name one journal: a sheet is for one player.");
  const journal = journals[0]?.journal ?? new Journal("file:///", new Map());
  const name = journals.length > 0 ? nameOnPage(journal) : "";
  const shown = { fingerings: flags.has("fingerings"), hiddenNotes: flags.has("show-notes"), name };
  const made = ofDays.length > 0 ? ofDaysAsked(journal, values, shown, io) : ofPlanAsked(journal, values, shown, io);
  if (!made.ok) return fail(io, made.reason);
  if (read.files.length === 0) io.stderr.write("daystave: There is no .practice file here.\n");
  io.stdout.write(sheetHtml(made.sheet, io.staves?.()));
  return read.unread ? STATUS.failed : STATUS.done;
}

const DAYS = ["week", "since", "until"] as const;
const PLAN = ["date", "minutes", "instrument"] as const;

type Made = { readonly ok: true; readonly sheet: Sheet } | { readonly ok: false; readonly reason: string };
type Shown = Parameters<typeof planSheet>[2];

function ofDaysAsked(journal: Journal, values: Arguments["values"], shown: Shown, { today }: Io): Made {
  const wanted = daysAsked(values, today);
  return wanted.ok ? { ok: true, sheet: daysSheet(journal, wanted.days, shown) } : wanted;
}

function ofPlanAsked(journal: Journal, values: Arguments["values"], shown: Shown, { today }: Io): Made {
  const minutes = minutesAsked(values);
  if (!minutes.ok) return minutes;
  const date = dayAsked(values, "date");
  if (!date.ok) return date;
  const named = values.get("instrument");
  const instrument = named === undefined ? undefined : instrumentAsked(named, journal.vocabulary);
  if (instrument?.ok === false) return instrument;
  const asked = {
    day: date.day ?? today,
    settings: USUAL_PLAN,
    minutes: minutes.minutes,
    ...(instrument ? { instrument: instrument.id } : {}),
  };
  const isOwn = minutes.minutes !== undefined || instrument !== undefined;
  return { ok: true, sheet: (isOwn ? planSheet : todaySheet)(journal, asked, shown) };
}
