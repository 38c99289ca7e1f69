import type { NoteName } from "../../music/notes/note.ts";
import type { EntryLine } from "../../syntax/line/line.ts";
import type { Item, MeaningOf } from "../../syntax/words/meaning.ts";

/** What takes the place of a stretch of a line. */
export interface Replaced {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** Notes on a line that a scale or a chord may name, and the stretch from which names are asked for. */
export interface NamelessNotes {
  readonly start: number;
  readonly end: number;
  /** Notes that are the subject, or stand where one belongs; or a claim beside a subject. */
  readonly form: "notes" | "claim";
  readonly notes: readonly NoteName[];
  /** The ways to write the line with this name, the plainest first. */
  readonly namedAs: (name: string) => readonly Replaced[];
}

/** The first list of notes on a line that could bear another name; undefined where there is none. */
export function namelessNotes(line: EntryLine, text: string): NamelessNotes | undefined {
  return claimedNotes(line) ?? figureNotes(line, text) ?? bareNotes(line, text);
}

/** `F major: D E F G A Bb C#`. Titles and activities are what they are, whatever notes stand beside them. */
function claimedNotes({ subject, claims }: EntryLine): NamelessNotes | undefined {
  const claim = claims.find((each) => each.type === "notes");
  const type = subject?.meaning.type;
  if (claim?.type !== "notes" || !subject || (type !== "scale" && type !== "chord" && type !== "faulty subject"))
    return undefined;
  const notes = claim.notes.flatMap(({ note }) => note ?? []);
  if (notes.length < claim.notes.length) return undefined;
  const { start, end } = subject;
  return { start, end: claim.end, form: "claim", notes, namedAs: (name) => [{ start, end, text: name }] };
}

/** `notes D E F G A Bb C#`. */
function figureNotes({ subject, claims }: EntryLine, text: string): NamelessNotes | undefined {
  if (subject?.meaning.type !== "figure" || subject.meaning.figure !== "notes" || claims.length > 0) return undefined;
  const { start, end } = subject;
  const written = text.slice(start, end).replace(/^notes\s+/i, "");
  return listed({ start, end, written, notes: subject.meaning.notes });
}

/** Notes at the beginning of a line that names no subject. */
function bareNotes({ subject, items, claims }: EntryLine, text: string): NamelessNotes | undefined {
  if (subject || claims.length > 0) return undefined;
  const first = items.findIndex(({ meaning }) => meaning.type !== "note");
  const list = items.slice(0, first < 0 ? undefined : first) as readonly Item<MeaningOf<"note">>[];
  if (list.length === 0) return undefined;
  const [start, end] = [list[0]!.start, list.at(-1)!.end];
  return listed({ start, end, written: text.slice(start, end), notes: list.map(({ meaning }) => meaning.note) });
}

interface Listed {
  readonly start: number;
  readonly end: number;
  readonly written: string;
  readonly notes: readonly NoteName[];
}

/** The notes stay as they are written, as a claim; where they are only the first of the scale, so many are named. */
function listed({ start, end, written, notes }: Listed): NamelessNotes {
  return {
    start,
    end,
    form: "notes",
    notes,
    namedAs: (name) =>
      [name, `${name}, ${notes.length} notes`].map((named) => ({ start, end, text: `${named}: ${written}` })),
  };
}
