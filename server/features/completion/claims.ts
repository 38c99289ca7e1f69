import type { DayNumber } from "../../journal/calendar.ts";
import type { Conventions } from "../../journal/conventions.ts";
import { exerciseToPlay } from "../../journal/entry-exercise.ts";
import type { Entry } from "../../journal/model.ts";
import { notesHidden } from "../../journal/notes-hidden.ts";
import { areInCents } from "../../music/notes/degree.ts";
import type { NoteNames } from "../../music/notes/note-names.ts";
import { notesToPlay, type WhatToPlay } from "../../music/patterns/notes-to-play.ts";
import { isDrawn } from "../../music/patterns/pattern.ts";
import { describeFifths } from "../../music/scales/signature.ts";
import { printSteps } from "../../music/scales/steps.ts";
import { orderOf } from "../explain/explain.ts";
import { noteRow } from "../explain/note-row.ts";
import { termTexts } from "../explain/term-texts.ts";
import { completionTexts } from "./completion-texts.ts";
import type { Candidate } from "./rank.ts";

/** The longest row of notes that is shown whole in a list; in UTF-16 units. */
const LONGEST_LABEL = 72;

/**
 * What may be claimed after a colon: the notes over the stated span and pattern, the signature, the steps.
 *
 * @param day the day that the entry stands on, where there is one
 */
export function claimCandidates(
  entry: Entry,
  text: string,
  conventions: Conventions,
  day: DayNumber | undefined,
): Candidate[] {
  const input = exerciseToPlay(entry, entry.attempts[0]?.conditions, conventions, day);
  if (!input) return [];
  const { start = 0, end = 0 } = entry.source.subject ?? {};
  const typed = text.slice(start, end);
  return [
    ...noteRows(input, typed, { names: conventions.names, hidden: notesHidden(entry, conventions) }),
    ...signatureAndSteps(input),
  ];
}

/** Up, and up and down; where a direction is stated that one alone. Leaps have the day's order and no direction. */
function noteRows(
  input: WhatToPlay,
  typed: string,
  { names, hidden }: { readonly names: NoteNames; readonly hidden: boolean },
): Candidate[] {
  const { direction, pattern, day } = input;
  const ways = direction || isDrawn(pattern) ? [direction] : (["up", "up and down"] as const);
  return ways.flatMap((way, fit): Candidate[] => {
    const row = noteRow({ ...input, direction: way }, typed, names);
    if (row === "") return [];
    const said = way && termTexts.directions[way];
    const label = hidden ? hiddenLabel(said) : shortened(row);
    const detail = isDrawn(pattern) ? orderOf(day) : said;
    return [{ label, aliases: [row], insert: row, kind: "claim", detail, fit }];
  });
}

function hiddenLabel(way: string | undefined): string {
  return way === undefined ? completionTexts.theNotes : completionTexts.theNotesOf(way);
}

function shortened(row: string): string {
  return row.length > LONGEST_LABEL ? `${row.slice(0, LONGEST_LABEL - 1)}…` : row;
}

function signatureAndSteps({ subject }: WhatToPlay): Candidate[] {
  const { signature, steps } = notesToPlay({ subject });
  const claims: Candidate[] = signature
    ? [{ label: describeFifths(signature.fifths), kind: "claim", detail: completionTexts.signature, fit: 2 }]
    : [];
  if (subject.type !== "scale" || areInCents(subject.kind.degrees)) return claims;
  const words = printSteps(steps, "TS");
  return [
    ...claims,
    { label: `steps ${words}`, aliases: [words], kind: "claim", detail: completionTexts.readUpward, fit: 3 },
  ];
}
