import { Journal } from "../../journal/journal.ts";
import { dayPlan } from "../../plan/day-plan.ts";
import { type PlanAsked, USUAL_PLAN } from "../../plan/plan.ts";
import { dayAsked } from "../arguments.ts";
import { painter } from "../colour.ts";
import type { Arguments } from "../command.ts";
import { instrumentAsked } from "../instrument-asked.ts";
import { fail, type Io, STATUS, type Status } from "../io.ts";
import { readJournals } from "../journals.ts";
import { minutesAsked } from "../minutes-asked.ts";
import { jsonText, printable } from "../printable.ts";
import { type Around, ofEach, wholeJournals } from "../whole-journals.ts";
import { planDocument, planText } from "./plan-report.ts";

/** `daystave plan`: a session for a day of each journal named. That a day needs none is said, and no failure. */
export async function plan({ positionals, flags, values }: Arguments, io: Io): Promise<Status> {
  const asked = minutesAsked(values);
  if (!asked.ok) return fail(io, asked.reason);
  const date = dayAsked(values, "date");
  if (!date.ok) return fail(io, date.reason);
  const day = date.day ?? io.today;
  const read = await readJournals(positionals, io);
  if (!read.ok) return fail(io, read.reason);
  const none: Around = { journal: new Journal("file:///", new Map()), path: ".", name: ".", pathOf: (uri) => uri };
  const named = wholeJournals(read, io);
  const journals = named.length > 0 ? named : [none];
  const name = values.get("instrument");
  const instruments = journals.map(({ journal }) =>
    name === undefined ? undefined : instrumentAsked(name, journal.vocabulary),
  );
  const unknown = instruments.find((each) => each?.ok === false);
  if (unknown?.ok === false) return fail(io, unknown.reason);
  const askedOf = (i: number): PlanAsked => {
    const instrument = instruments[i];
    return {
      day,
      settings: USUAL_PLAN,
      ...(asked.minutes === undefined ? {} : { minutes: asked.minutes }),
      ...(instrument?.ok ? { instrument: instrument.id } : {}),
    };
  };
  const planOf = ({ journal }: Around) =>
    dayPlan(journal, askedOf(journals.findIndex((each) => each.journal === journal)));
  const reasons = !flags.has("no-reasons");
  if (flags.has("json")) {
    const documentOf = (around: Around) => planDocument(around.journal, planOf(around), reasons);
    const report = ofEach(journals, documentOf, documentOf(journals[0]!));
    io.stdout.write(jsonText({ ...report, skipped: read.skipped }));
  } else {
    if (read.files.length === 0) io.stderr.write(`daystave: ${NO_FILE}\n`);
    const paint = painter(io);
    const texts = journals.map((around) => {
      const heading = journals.length > 1 ? `${paint(printable(around.name), "bold")}\n` : "";
      return heading + planText(around.journal, planOf(around), reasons);
    });
    io.stdout.write(texts.join("\n"));
  }
  return read.unread ? STATUS.failed : STATUS.done;
}

const NO_FILE = "There is no .practice file here, so this is a first plan for anybody.";
