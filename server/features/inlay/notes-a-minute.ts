import { playedEntry } from "../../history/played.ts";
import type { Conventions } from "../../journal/conventions.ts";
import type { Entry } from "../../journal/model.ts";
import { figure } from "../../plan/figure.ts";
import type { HintOnLine } from "./hint-on-line.ts";
import { inlayTexts } from "./inlay-texts.ts";

/**
 * Behind each tempo of an entry how many notes a minute it comes to: `= 144 notes a minute`, behind further ones
 * `= 152`. Nothing where the line's note value is not known, or one note is played to a beat, and nothing for a title,
 * whose tempos are beats.
 */
export function notesAMinute(entry: Entry, conventions: Conventions): readonly HintOnLine[] {
  const { attempts } = playedEntry(entry, conventions);
  const tempos = entry.source.items.filter(({ meaning }) => meaning.type === "tempo");
  return tempos
    .flatMap(({ start, end }): { readonly at: number; readonly rates: string }[] => {
      const index = entry.attempts.findIndex(({ place, tempo }) => tempo && place.start === start);
      const played = attempts.find(({ attempt }) => attempt === index);
      const tempo = entry.attempts[index]?.tempo;
      if (!tempo || played?.rate == null || played.manner.unit !== "notes" || !played.manner.noteValue) return [];
      if (played.rate === tempo.bpm) return [];
      const low = tempo.low === undefined ? "" : figure((tempo.low * played.rate) / tempo.bpm);
      return [{ at: end, rates: low === "" ? figure(played.rate) : inlayTexts.range(low, figure(played.rate)) }];
    })
    .map(({ at, rates }, i) => ({ at, label: i === 0 ? inlayTexts.notesAMinute(rates) : `= ${rates}` }));
}
