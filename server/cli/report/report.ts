import { isoDate } from "../../journal/calendar.ts";
import type { Arguments } from "../command.ts";
import { fail, type Io, STATUS, type Status } from "../io.ts";
import { readJournals } from "../journals.ts";
import { jsonText } from "../printable.ts";
import { ofEach, wholeJournals } from "../whole-journals.ts";
import { type DaysAsked, daysAsked } from "./days-asked.ts";
import { journalReport } from "./journal-report.ts";
import { reportHtml } from "./report-html.ts";
import { type ReportJson, reportJson } from "./report-json.ts";
import { reportMarkdown } from "./report-markdown.ts";
import { reportPage } from "./report-page.ts";

/** `daystave report`: some days of a journal, to be handed on. Several journals follow one another. */
export async function report({ positionals, flags, values }: Arguments, io: Io): Promise<Status> {
  const [html, json, withBody] = [flags.has("html"), flags.has("json"), flags.has("body")];
  const kinds = ["md", "html", "json"].filter((kind) => flags.has(kind)).map((kind) => `“--${kind}”`);
  if (kinds.length > 1) return fail(io, `Choose one of ${kinds.join(" and ")}: each is a form of the whole report.`);
  const wanted = daysAsked(values, io.today);
  if (!wanted.ok) return fail(io, wanted.reason);
  const { days } = wanted;
  const read = await readJournals(positionals, io);
  if (!read.ok) return fail(io, read.reason);
  const journals = wholeJournals(read, io);
  if (html && journals.length > 1) return fail(io, "Name one journal: a report may be handed on.");
  if (json) {
    const reports = ofEach(journals, (around) => reportJson(journalReport(around, { days, withBody })), {
      ...nothingIn(days),
      ...(withBody ? { body: [] } : {}),
    });
    io.stdout.write(jsonText({ ...reports, skipped: read.skipped }));
  } else {
    if (read.files.length === 0) io.stderr.write("daystave: There is no .practice file here.\n");
    const pages = journals.map((around) => reportPage(journalReport(around, { days, withBody }), { charts: html }));
    io.stdout.write(pages.map(html ? reportHtml : reportMarkdown).join("\n"));
  }
  return read.unread ? STATUS.failed : STATUS.done;
}

/** Where there is no journal. */
function nothingIn({ since, until }: DaysAsked): ReportJson {
  const none = { time: [], days: [], moved: [], settled: [], unchanged: [], early: [], aims: [], pieces: [], set: [] };
  return { name: "", since: isoDate(since), until: isoDate(until), ...none, questions: [], words: [] };
}
