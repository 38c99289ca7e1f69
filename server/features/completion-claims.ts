import { type NoteStyle, styleOf, writtenNote } from "../checks/note-style.ts";
import type { Conventions } from "../journal/conventions.ts";
import type { Entry } from "../journal/model.ts";
import { exerciseToPlay } from "../journal/to-play.ts";
import { type ExerciseInput, exercise } from "../music/exercise.ts";
import type { NoteNames } from "../music/note-names.ts";
import { describeFifths } from "../music/signature.ts";
import { printSteps } from "../music/steps.ts";
import type { Candidate } from "./completion-rank.ts";

/** The longest row of notes that is shown whole in a list; in UTF-16 units. */
const LONGEST_LABEL = 72;

/** What may be claimed after a colon: the notes over the stated span and pattern, the signature, the steps. */
export function claimCandidates(entry: Entry, text: string, conventions: Conventions): Candidate[] {
  const input = exerciseToPlay(entry, entry.attempts[0]?.conditions, conventions);
  if (!input) return [];
  const { start = 0, end = 0 } = entry.source.subject ?? {};
  const typed = text.slice(start, end);
  return [...noteRows(input, typed, conventions.names), ...signatureAndSteps(input)];
}

/** Up, and up and down; where a direction is stated that one alone. */
function noteRows(input: ExerciseInput, typed: string, names: NoteNames): Candidate[] {
  const { subject, direction } = input;
  const note = subject.type === "scale" ? subject.tonic : subject.root;
  const written = styleOf([{ start: 0, end: typed.length, text: typed, note }], names);
  const style: NoteStyle = { ...written, lower: false, octaves: "none" };
  const ways = direction ? [direction] : (["up", "up and down"] as const);
  return ways.flatMap((way, fit): Candidate[] => {
    const row = exercise({ ...input, direction: way })
      .notes.map((each) => writtenNote(each, style))
      .join(" ");
    if (row === "") return [];
    const label = row.length > LONGEST_LABEL ? `${row.slice(0, LONGEST_LABEL - 1)}…` : row;
    return [{ label, aliases: [row], insert: row, kind: "claim", detail: way, fit }];
  });
}

function signatureAndSteps({ subject }: ExerciseInput): Candidate[] {
  const { signature, steps } = exercise({ subject });
  const claims: Candidate[] = signature
    ? [{ label: describeFifths(signature.fifths), kind: "claim", detail: "signature", fit: 2 }]
    : [];
  if (subject.type !== "scale" || subject.kind.degrees.some(({ cents }) => cents !== undefined)) return claims;
  const words = printSteps(steps, "TS");
  return [...claims, { label: `steps ${words}`, aliases: [words], kind: "claim", detail: "read upward", fit: 3 }];
}
