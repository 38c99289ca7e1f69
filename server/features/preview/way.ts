import { articulationWords } from "../../history/articulation-words.ts";
import { entryMadeOnce } from "../../history/entry-of-record.ts";
import type { AttemptRecord } from "../../history/record.ts";
import type { Strand } from "../../history/strands.ts";
import { noteValueName } from "../../history/value-names.ts";
import type { Journal } from "../../journal/journal.ts";
import type { EntryLine } from "../../syntax/line/line.ts";
import { shownText } from "./text.ts";

const REACHES = { short: null, octave: "one octave", twelfth: "a twelfth", wide: null } as const;

/**
 * How a strand is played, in plain words: `slurred, one octave, 8ths`; of a title its movement and place. Articulation,
 * note value, and a span of two octaves or more are called as the latest line calls them.
 */
export function wayInWords(journal: Journal, strand: Strand): string {
  const last = strand.records.at(-1)!;
  if (strand.title) return shownText([strand.movement, strand.where].filter((part) => part !== null).join(", "));
  const own = writtenIn(journal, last);
  const parts = [
    own.articulation ?? (strand.tonguing && articulationWords(journal, last).alone(strand.tonguing)),
    strand.evenness === "uneven" ? (own.rhythm ?? "in rhythms") : null,
    strand.reach && (REACHES[strand.reach] ?? own.span ?? (strand.reach === "wide" ? "two octaves" : null)),
    own.value ?? null,
  ];
  return shownText(parts.filter((part) => part !== null).join(", "));
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
    value: (conditions?.noteValue && written("note value")) ?? (record.noteValue && noteValueName(record.noteValue)),
  };
}
