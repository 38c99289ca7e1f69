import { articulationWords } from "../../history/articulation-words.ts";
import { entryMadeOnce } from "../../history/entry-of-record.ts";
import { movementInWords, placeInWords } from "../../history/place-words.ts";
import type { AttemptRecord } from "../../history/record.ts";
import type { Strand } from "../../history/strands.ts";
import { noteValueInWords } from "../../history/value-names.ts";
import { wayTexts } from "../../history/way-texts.ts";
import type { Journal } from "../../journal/journal.ts";
import type { EntryLine } from "../../syntax/line/line.ts";
import { shownText } from "./text.ts";

/**
 * How a strand is played, in plain words: `slurred, one octave, 8ths`; of a title its movement and place. Articulation,
 * note value, and a span of two octaves or more are called as the latest line calls them.
 */
export function wayInWords(journal: Journal, strand: Strand): string {
  const last = strand.records.at(-1)!;
  if (strand.title) return shownText(placeOfTitle(strand).join(", "));
  const own = writtenIn(journal, last);
  const parts = [
    own.articulation ?? (strand.tonguing && articulationWords(journal, last).alone(strand.tonguing)),
    strand.evenness === "uneven" ? (own.rhythm ?? wayTexts.inRhythms) : null,
    reachInWords(strand.reach, own.span),
    own.value ?? null,
  ];
  return shownText(parts.filter((part) => part !== null).join(", "));
}

/** A span of two octaves or more as it was written, where it was. */
function reachInWords(reach: Strand["reach"], written: string | undefined): string | null {
  switch (reach) {
    case "octave":
      return wayTexts.oneOctave;
    case "twelfth":
      return wayTexts.twelfth;
    case "wide":
      return written ?? wayTexts.twoOctaves;
    case "short":
      return written ?? null;
    default:
      return null;
  }
}

function placeOfTitle({ movement, where }: Strand): readonly string[] {
  return [...(movement === null ? [] : [movementInWords(movement)]), ...(where === null ? [] : [placeInWords(where)])];
}

/** What the player calls the note value of a record: `quavers`; undefined where none is known. */
export function noteValueAsWritten(journal: Journal, record: AttemptRecord): string | undefined {
  return writtenIn(journal, record).value;
}

type MeaningType = EntryLine["items"][number]["meaning"]["type"];

/** What the line of a record says of the way of playing, in its own words. */
function writtenIn(journal: Journal, record: AttemptRecord) {
  const entry = entryMadeOnce(journal, record);
  const conditions = entry?.attempts[record.attempt]?.conditions;
  const text = record.block.lines[record.line] ?? "";
  const written = (type: MeaningType): string | undefined => {
    const item = entry?.source.items.find(({ meaning }) => meaning.type === type);
    return item && text.slice(item.start, item.end);
  };
  return {
    articulation: conditions?.articulation && written("articulation"),
    rhythm: conditions?.rhythm?.even === false ? conditions.rhythm.text : undefined,
    span: written("span"),
    value: (conditions?.noteValue && written("note value")) ?? (record.noteValue && noteValueInWords(record.noteValue)),
  };
}
