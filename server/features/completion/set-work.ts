import { entryIn } from "../../history/entry-of-record.ts";
import { playedEntry } from "../../history/played.ts";
import { type DayNumber, isoDate } from "../../journal/calendar.ts";
import type { Conventions } from "../../journal/conventions.ts";
import { dayOfBlock } from "../../journal/day-of-block.ts";
import { declaredIn } from "../../journal/declared-lines.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Subject } from "../../journal/model.ts";
import { phraseOf } from "../../plan/practised-line.ts";
import type { Block } from "../../syntax/document/document.ts";
import { completionTexts } from "./completion-texts.ts";
import { latestBlocks } from "./usage.ts";

/** Work that was set and still stands, as an entry would have it. */
export interface SetEntry {
  /** Without the tempo that it is to reach. */
  readonly phrase: string;
  readonly subject: Subject;
  /** `set on 2026-03-02`. */
  readonly detail: string;
  /** Undefined where the history follows no such thing. */
  readonly exerciseKey: string | undefined;
}

/** Work is for a week unless a day is named (format.md, Declarations); a lesson may fall out once. Our own choice. */
const DAYS_FOR_WORK = 14;

/** What the days of the last two weeks have set, the latest first, then what stands above the days of each file. */
export function setEntries(journal: Journal, conventions: Conventions, today: DayNumber): readonly SetEntry[] {
  const entries: SetEntry[] = [];
  const add = (text: string, detail: string): void => {
    const entry = entryIn(journal, text);
    const phrase = entry && phraseOf(entry, text);
    if (!entry?.subject || phrase === undefined || entries.some((each) => each.phrase === phrase)) return;
    const { exerciseKey } = playedEntry(entry, conventions).attempts[0]?.manner ?? {};
    entries.push({ phrase, subject: entry.subject, detail, exerciseKey });
  };
  for (const { uri, block } of latestBlocks(journal)) {
    const day = dayOfBlock(block);
    if (day === undefined || day > today || today - day > DAYS_FOR_WORK) continue;
    for (const text of [...spokenOn(journal, block), ...declaredOn(journal, uri, block, today)])
      add(text, completionTexts.setOn(isoDate(day)));
  }
  for (const uri of journal.addresses) {
    const head = journal.files.get(uri)!.blocks[0]!;
    if (!head.day) for (const text of declaredOn(journal, uri, head, today)) add(text, completionTexts.set);
  }
  return entries;
}

/** `set: D minor, thirds`, and the lines below `homework`. */
function spokenOn(journal: Journal, block: Block): readonly string[] {
  return journal
    .model(block)
    .lines.flatMap((line, i) =>
      line.type === "set" && !line.opens ? [block.lines[i]!.slice(line.from, line.end).trim()] : [],
    );
}

/** Work whose own last day has passed is over. */
function declaredOn(journal: Journal, uri: string, block: Block, today: DayNumber): readonly string[] {
  return declaredIn(journal, uri, block).flatMap(({ declared, text }) =>
    declared.type === "set" && declared.entry && (declared.by ?? today) >= today ? [text] : [],
  );
}
