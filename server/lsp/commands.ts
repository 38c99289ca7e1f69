import type { ExecuteCommandParams, TextDocumentPositionParams, WorkspaceEdit } from "vscode-languageserver";
import type { ServerCommand } from "../../shared/protocol.ts";
import { changeNames } from "../features/commands/change-names.ts";
import type { CommandAnswer, CommandDone } from "../features/commands/command-answer.ts";
import { declareTitle } from "../features/commands/declare-title.ts";
import { fingerChange } from "../features/commands/finger-change.ts";
import { lastTime } from "../features/commands/last-time.ts";
import { moveYear } from "../features/commands/move-year.ts";
import { newDay } from "../features/commands/new-day.ts";
import { repeatEntry } from "../features/commands/repeat-entry.ts";
import { respell } from "../features/commands/respell.ts";
import { keepBothSides } from "../features/commands/settle-conflict.ts";
import { writeNotes } from "../features/commands/write-notes.ts";
import { writePlan } from "../features/commands/write-plan.ts";
import { writeTempo } from "../features/commands/write-tempo.ts";
import { refusal } from "../features/explain/refusal.ts";
import type { Position } from "../syntax/document/document.ts";
import { textEdit } from "./convert.ts";
import { inSlices } from "./in-slices.ts";
import { planWanted } from "./plan-wanted.ts";
import type { Place, Session } from "./session.ts";
import { showMessage } from "./show-message.ts";
import { workspaceEditOf, workspaceEditWith } from "./workspace-edit.ts";

interface Command {
  /** What the edit is called, where an editor lists what can be undone. */
  readonly label: string;
  readonly run: (place: Place, position: Position, more: readonly unknown[]) => CommandAnswer | InSteps;
}

/** What may go through a whole journal. */
type InSteps = Generator<void, CommandAnswer>;

const COMMANDS: Readonly<Record<ServerCommand, Command>> = {
  "daystave.server.newDay": {
    label: "New day",
    run: ({ session, journal, uri }) => newDay(journal, uri, { today: session.dayOf(uri), phases: false }),
  },
  "daystave.server.newDayWithPhases": {
    label: "New day with phases",
    run: ({ session, journal, uri }) => newDay(journal, uri, { today: session.dayOf(uri), phases: true }),
  },
  "daystave.server.writePlan": {
    label: "Write today's plan",
    run: ({ session, journal, uri }, at, [minutes, instrument]) =>
      writePlan(journal, uri, at, {
        ...planWanted(session, uri, isMinutes(minutes) ? minutes : undefined),
        ...(typeof instrument === "string" ? { instrument } : {}),
      }),
  },
  "daystave.server.repeatFaster": {
    label: "Repeat an entry faster",
    run: ({ session, journal, uri }, at) =>
      repeatEntry(journal, uri, at, { today: session.dayOf(uri), step: "faster" }),
  },
  "daystave.server.repeatSlower": {
    label: "Repeat an entry slower",
    run: ({ session, journal, uri }, at) =>
      repeatEntry(journal, uri, at, { today: session.dayOf(uri), step: "slower" }),
  },
  "daystave.server.writeNotes": {
    label: "Write the notes out",
    run: ({ session, journal, uri }, at) => writeNotes(journal, uri, at, { today: session.dayOf(uri) }),
  },
  "daystave.server.fingerChange": {
    label: "Practise the hardest finger change",
    run: ({ session, journal, uri }, at, [rank]) =>
      fingerChange(journal, uri, at, { today: session.dayOf(uri), ...(isRank(rank) ? { rank } : {}) }),
  },
  "daystave.server.keepBothSides": {
    label: "Keep both sides of a merge",
    run: ({ journal, uri }) => keepBothSides(journal, uri),
  },
  "daystave.server.declareTitle": {
    label: "Declare a title",
    run: ({ journal, uri }, at) => declareTitle(journal, uri, at),
  },
  "daystave.server.respell": {
    label: "Respell the notes",
    run: ({ journal, uri }, at) => respell(journal, uri, at),
  },
  "daystave.server.moveYear": {
    label: "Move a year into its own file",
    run: ({ session, journal, uri }, _, [year]) =>
      moveYear(journal, uri, { today: session.dayOf(uri), year: isYear(year) ? Number(year) : undefined }),
  },
  "daystave.server.changeNames": {
    label: "Change the names of notes",
    run: ({ journal, uri }, at, [language]) =>
      changeNames(journal, uri, at, typeof language === "string" ? language : undefined),
  },
  "daystave.server.writeTempo": {
    label: "Write the tempo that was played",
    run: ({ session, journal, uri }, at, [bpm]) =>
      isTempo(bpm) ? writeTempo(journal, uri, at, { today: session.dayOf(uri), bpm }) : NO_TEMPO,
  },
  "daystave.server.goToLastTime": {
    label: "Go to last time",
    run: ({ session, journal, uri }, at) => lastTime(journal, uri, at, { today: session.dayOf(uri) }),
  },
};

/**
 * Runs a command at a position; undefined where the parameters name none, or no position. What it comes to is done by
 * the client.
 */
export async function runCommand(session: Session, params: ExecuteCommandParams): Promise<null | undefined> {
  const command = Object.hasOwn(COMMANDS, params.command) ? COMMANDS[params.command as ServerCommand] : undefined;
  const [first, ...more] = params.arguments ?? [];
  const at = readPosition(first);
  if (!command || !at) return undefined;
  await session.workspace.walk(); // what is asked about may stand in any file of the journal
  const place = await session.placeOf(at.textDocument.uri);
  const answer = place ? await answered(place, command.run(place, at.position, more)) : UNKNOWN;
  if (answer.ok) await carryOut(session, answer, command.label);
  else showMessage(session.connection, "info", answer.reason);
  return null;
}

/** A command runs to its end. The library's own is not loaded for it: the core is without the library. */
const NEVER_CANCELLED = { isCancellationRequested: false } as const;

/** An edit that comes in between makes the answer one about another text. */
async function answered({ session, journal, uri }: Place, answer: CommandAnswer | InSteps): Promise<CommandAnswer> {
  if ("ok" in answer) return answer;
  const isOver = (): boolean => session.workspace.journalOf(uri) !== journal;
  return (await inSlices(answer, NEVER_CANCELLED, isOver)) ?? refusal(CHANGED);
}

const UNKNOWN = refusal("Open this file as a practice journal, or open its folder: Daystave does not know it.");
const NO_FILES = "This editor cannot make a new file for Daystave, so nothing was moved.";
const CHANGED = "The text has changed in the meantime and was left as it is. Please try again.";

async function carryOut(session: Session, answer: CommandDone, label: string): Promise<void> {
  const { client, connection, workspace } = session;
  const { edits, created, cursor, note, also = [] } = answer;
  const uri = workspace.openDocument(answer.uri)?.uri ?? answer.uri;
  if (created !== undefined && !(client.createsFiles && client.takesVersionedEdits))
    return showMessage(connection, "info", NO_FILES);
  const isEdit = [answer, ...also].some((each) => each.edits.length > 0) || created !== undefined;
  if (isEdit) {
    const { applied } = await connection.workspace.applyEdit({ label, edit: editOf(session, answer) });
    if (!applied) return showMessage(connection, "info", CHANGED);
  }
  if (note !== undefined) showMessage(connection, "info", note);
  if (client.showsDocuments)
    await connection.window.showDocument({ uri, takeFocus: true, selection: { start: cursor, end: cursor } });
  else if (edits.length === 0) showMessage(connection, "info", `Line ${cursor.line + 1} of ${uri}`);
}

function editOf(session: Session, { uri, edits, created, also = [] }: CommandDone): WorkspaceEdit {
  const files = [{ uri, edits }, ...also]
    .filter((each) => each.edits.length > 0)
    .map((each) => ({
      key: each.uri,
      uri: session.workspace.openDocument(each.uri)?.uri ?? each.uri,
      edits: each.edits.map(textEdit),
    }));
  return created === undefined
    ? workspaceEditOf(session, files)
    : workspaceEditWith(session, { uri, text: created }, files);
}

function isRank(value: unknown): value is number {
  return Number.isInteger(value) && (value as number) >= 0;
}

/** Those that one may be asked to plan for. */
function isMinutes(value: unknown): value is number {
  return Number.isInteger(value) && (value as number) >= 1 && (value as number) <= 600;
}

function isYear(value: unknown): value is string {
  return typeof value === "string" && /^\d{4}$/.test(value);
}

/** Beats a minute. */
function isTempo(value: unknown): value is number {
  return typeof value === "number" && value >= 1 && value <= 1000;
}

const NO_TEMPO = refusal("No tempo was played that could be written.");

/** Whatever an editor sends may be there. */
function readPosition(argument: unknown): TextDocumentPositionParams | undefined {
  const { textDocument, position } = (argument ?? {}) as Partial<TextDocumentPositionParams>;
  const isPlace = Number.isInteger(position?.line) && Number.isInteger(position?.character);
  return textDocument && position && isPlace && typeof textDocument.uri === "string"
    ? { textDocument, position }
    : undefined;
}
