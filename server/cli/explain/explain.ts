import { CODES, type Code, MEANINGS } from "../../checks/codes.ts";
import { diagnosticsOf } from "../../features/diagnostics/diagnostics.ts";
import { parseIsoDate } from "../../journal/calendar.ts";
import { Journal } from "../../journal/journal.ts";
import { createDocument } from "../../syntax/document/document.ts";
import { fold } from "../../syntax/words/fold.ts";
import type { Arguments } from "../command.ts";
import { fail, type Io, STATUS, type Status } from "../io.ts";
import { nearest, offer } from "../nearest.ts";
import { jsonText, printable } from "../printable.ts";
import { explainText } from "./explain-text.ts";
import type { Explained, Explanation } from "./explanation.ts";
import explanations from "./explanations.json";

/** `daystave explain`: what a code means. */
export async function explain({ positionals, flags }: Arguments, io: Io): Promise<Status> {
  const [said] = positionals;
  if (said === undefined) return fail(io, `Name a code: daystave explain scale-note\n${ALL_CODES}`);
  const code = codeCalled(said);
  if (code === undefined) {
    const near = offer(nearest(said, Object.keys(CODES)));
    return fail(io, `There is no code “${printable(said)}”.${near}\n${ALL_CODES}`);
  }
  const explained = explainedCode(code);
  io.stdout.write(flags.has("json") ? jsonText(explained) : explainText(explained, io));
  return STATUS.done;
}

const ALL_CODES = "All codes: daystave list codes";

/** In whatever case, with spaces for its hyphens. */
function codeCalled(said: string): Code | undefined {
  const key = fold(said.trim()).replace(/[\s_]+/g, "-");
  return Object.hasOwn(CODES, key) ? (key as Code) : undefined;
}

/** On this day the examples are read as the format reference says. */
const EXAMPLE_DAY = parseIsoDate("2026-06-01")!;
const EXAMPLE_URI = "argument:/example.practice";

function explainedCode(code: Code): Explained {
  const { example, why, whatToDo, further = null } = (explanations as Readonly<Record<Code, Explanation>>)[code];
  const journal = new Journal("argument:/", new Map([[EXAMPLE_URI, createDocument(example)]]));
  const found = diagnosticsOf(journal, EXAMPLE_URI, EXAMPLE_DAY)
    .filter((diagnostic) => diagnostic.code === code)
    .map(({ range: { start }, message, fixes }) => ({
      line: start.line + 1,
      column: start.character + 1,
      message,
      fixes: fixes.map(({ title, safe }) => ({ title, safe })),
    }));
  return { code, severity: CODES[code], meaning: MEANINGS[code], example, found, why, whatToDo, further };
}
