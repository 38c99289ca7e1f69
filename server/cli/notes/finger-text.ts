import { easierInWords, stepInWords } from "../../features/explain/finger-words.ts";
import { hardestSteps } from "../../music/fingering/finger-change.ts";
import type { Instrument } from "../../music/instruments/instrument.ts";
import type { NoteNames } from "../../music/notes/note-names.ts";
import type { NotesToPlay } from "../../music/patterns/notes-to-play.ts";
import type { FingeringReport, FingerReport } from "./finger-report.ts";

type Row = readonly [name: string, text: string];

/** The hardest finger change with both fingerings, half holes, the bell, where charts differ; or a sentence why not. */
export function fingerRows(
  played: Pick<NotesToPlay, "notes">,
  { halfHoles, needsBell, fingerings, fingersUnknown }: FingerReport,
  { instrument, names }: { readonly instrument?: Instrument; readonly names: NoteNames },
): readonly Row[] {
  if (!instrument || instrument.family === "voice") return [];
  const declared: readonly Row[] = halfHoles.length ? [["half holes", halfHoles.join(" ")]] : [];
  if (fingersUnknown) return [["hardest change", fingersUnknown], ...declared];
  const hardest = hardestSteps(played, instrument, 1).map(
    (step): Row => ["hardest change", [stepInWords(step, names), ...easierInWords(step, names)].join("; ")],
  );
  const doubtful = fingerings.filter(({ confidence }) => confidence !== "high").map(doubtText);
  return [
    ...hardest,
    ["half holes", halfHoles.join(" ") || "none"],
    ...(needsBell.length ? [["bell closed", needsBell.join(" ")] as const] : []),
    ...(doubtful.length ? [["charts vary", doubtful.join("; ")] as const] : []),
  ];
}

/** `D#6 Ø 12- -56- or Ø 12- -567`; the note that only one chart gives is uncertain. */
function doubtText({ note, fingering, confidence, alternatives }: FingeringReport): string {
  const each = [fingering, ...alternatives].join(" or ");
  return `${note} ${each}${confidence === "uncertain" ? " (uncertain)" : ""}`;
}
