import type { Finding, FindingFix } from "../../../server/checks/finding.ts";
import type { ClaimedExercise } from "../../../server/checks/notes/note-list.ts";
import { CHORDS } from "../../../server/music/chords/chord-kinds.ts";
import { parseNote } from "../../../server/music/notes/note.ts";
import { ENGLISH_NAMES } from "../../../server/music/notes/note-names.ts";
import type { ChordToPlay, ScaleToPlay } from "../../../server/music/patterns/notes-to-play.ts";
import { declaredKind } from "../../../server/music/scales/declared-kind.ts";
import { KINDS } from "../../../server/music/scales/kinds.ts";
import { claimAfterColon } from "../../../server/syntax/line/claim.ts";
import type { ClaimedNote } from "../../../server/syntax/line/line.ts";

function chordNamed(words: string): Pick<ChordToPlay, "chord" | "broken"> | undefined {
  const broken = words.endsWith("broken chord");
  const name = words.replace(/ ?(arpeggio|broken chord)$/u, "") || "major";
  const chord = CHORDS.find(({ names }) => names.includes(name));
  const isChord = broken || words.endsWith("arpeggio") || words.includes("seventh");
  return chord && isChord ? { chord: chord.id, broken } : undefined;
}

/** `F# major`, `D minor arpeggio`, `A dominant seventh`, `D minor broken chord`; `D (1 b2 3)` is a declared scale. */
export function subject(text: string): ScaleToPlay | ChordToPlay {
  const [on, ...rest] = text.split(" ");
  const words = rest.join(" ");
  const { octave, ...tonic } = parseNote(on!)!;
  const chord = chordNamed(words);
  if (chord) return { type: "chord", root: tonic, octave, inversion: 0, ...chord };
  const declared = /^\((.*)\)$/u.exec(words);
  const reading = declared && declaredKind("own", declared[1]!);
  const kind = reading?.ok ? reading.kind : KINDS.find(({ names }) => names.includes(words));
  if (!kind) throw new Error(`no scale is called ${words}`);
  return { type: "scale", tonic, octave, kind };
}

export type Beside = Partial<Omit<ClaimedExercise, "subject" | "subjectText">>;

/** The exercise that a list stands beside, as text and what else the line states. */
export function beside(text: string, terms: Beside = {}): ClaimedExercise {
  return { subject: subject(text), subjectText: text, names: ENGLISH_NAMES, ...terms };
}

/** The notes of a list, read as a line of a journal is. */
export function listed(text: string, names = ENGLISH_NAMES): readonly ClaimedNote[] {
  const claim = claimAfterColon(text, 0, text.length, names);
  if (claim?.type !== "notes" || claim.end !== text.length) throw new Error(`no note list: ${text}`);
  return claim.notes;
}

/** Each finding under its text: carets, the code, the message, and the titles of its fixes. */
export function underlined(text: string, findings: readonly Finding[]): string {
  const lines = findings.flatMap(({ code, start, end, message, fixes }) => [
    `${" ".repeat(start)}${"^".repeat(Math.max(1, end - start))} ${code}: ${message}`,
    ...fixes.map(({ title, safe }) => `${" ".repeat(start)}${safe ? "=>" : "->"} ${title}`),
  ]);
  return [text, ...lines].join("\n");
}

/** The text after a fix. */
export function mended(text: string, { edits }: FindingFix): string {
  const fromLast = [...edits].sort((a, b) => b.start - a.start);
  return fromLast.reduce((now, edit) => now.slice(0, edit.start) + edit.text + now.slice(edit.end), text);
}
