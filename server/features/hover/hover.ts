import type { Palette } from "../../../shared/protocol.ts";
import { bodyOf } from "../../journal/body-said.ts";
import { weekday, weekLabel } from "../../journal/calendar.ts";
import { instrumentOf } from "../../journal/conventions.ts";
import { dateTexts } from "../../journal/date-texts.ts";
import type { Declared } from "../../journal/declarations/declared.ts";
import { entryOfSubjectAt } from "../../journal/each-subject.ts";
import type { Journal } from "../../journal/journal.ts";
import type { BlockModel, Entry } from "../../journal/model.ts";
import { readEntry } from "../../journal/read-entry.ts";
import type { StaffDrawer } from "../../notation/staff-look.ts";
import { blockIndexAt, type Position } from "../../syntax/document/document.ts";
import type { EntryLine, Line, LineOf } from "../../syntax/line/line.ts";
import type { Item } from "../../syntax/words/meaning.ts";
import { explainDeclaration, explainTerm } from "../explain/explain.ts";
import { instrumentInWords } from "../explain/instrument-words.ts";
import { paragraphs } from "../explain/markdown.ts";
import { explainTuning } from "../explain/tuning.ts";
import type { Hover, Settings } from "../types.ts";
import { claimHover } from "./claim.ts";
import { type EntryAt, subjectHover } from "./entry.ts";
import { hoverTexts } from "./hover-texts.ts";
import { keptHover } from "./kept.ts";
import { pieceParagraphs } from "./piece.ts";
import { termHover } from "./term.ts";

/** A stretch of a line, and what is to be said of it. */
interface Said {
  readonly start: number;
  readonly end: number;
  readonly markdown: string | undefined;
}

/**
 * What stands at a position: for the subject of an entry its history and its theory, for a term what it means. Nothing
 * for remarks and prose. `today` is a day number.
 */
export function hoverAt(
  journal: Journal,
  uri: string,
  position: Position,
  options: Settings & { readonly today: number; readonly palette?: Palette; readonly staves?: StaffDrawer },
): Hover | undefined {
  const document = journal.files.get(uri);
  if (!document || position.line < 0 || position.line >= document.lineCount) return undefined;
  const index = blockIndexAt(document, position.line);
  const block = document.blocks[index]!;
  const at = position.line - document.starts[index]!;
  const model = journal.model(block);
  const line = model.lines[at];
  if (!line || (line.remark && position.character >= line.remark.start)) return undefined;
  const place = {
    journal,
    uri,
    line: position.line,
    text: block.lines[at]!,
    today: options.today,
    day: model.day ? model.day.date : options.today,
    explain: options.explain ?? "both",
    palette: options.palette,
    staves: options.staves,
  };
  const said = saidOf(line, model, at, place, position.character);
  if (!said?.markdown) return undefined;
  const range = {
    start: { line: position.line, character: said.start },
    end: { line: position.line, character: said.end },
  };
  return { range, markdown: said.markdown };
}

type Where = Omit<EntryAt, "entry">;

function saidOf(line: Line, model: BlockModel, at: number, where: Where, character: number): Said | undefined {
  switch (line.type) {
    case "day":
      return touches(line.start, line.dateEnd, character)
        ? dayHover(line, model)
        : itemHover(line.items, where, character);
    case "session":
    case "phase":
    case "break":
    case "plan":
    case "rest":
      return itemHover(line.items, where, character);
    case "body":
      return touches(line.start, line.end, character) ? bodyHover(line, line.sore, where) : undefined;
    case "prose": {
      const sore = bodyOf(where.text.slice(line.start, line.end), where.journal.vocabulary) === "hurts";
      return touches(line.start, line.end, character) ? bodyHover(line, sore, where) : undefined;
    }
    case "entry": {
      const entry = model.entries.find((each) => each.place.line === at);
      return entry && entryHover({ ...where, entry }, line, character);
    }
    case "declaration":
      return declarationHover(line, model, at, where, character);
    default:
      return undefined;
  }
}

function touches(start: number, end: number, character: number): boolean {
  return start <= character && character <= end;
}

/** The item at a column; where two touch it, the one that begins there. */
function itemAt<I extends { readonly start: number; readonly end: number }>(
  items: readonly I[],
  character: number,
): I | undefined {
  return items.findLast(({ start, end }) => touches(start, end, character));
}

function itemHover(items: readonly Item[], { journal }: Where, character: number): Said | undefined {
  const item = itemAt(items, character);
  return item && { ...stretch(item), markdown: explainTerm(item.meaning, journal.vocabulary) };
}

/** What hurts is told as the `sore` of an entry is. */
function bodyHover({ start, end }: Stretch, sore: boolean, { journal, text }: Where): Said | undefined {
  const markdown = sore ? explainTerm({ type: "sore", words: text.slice(start, end) }, journal.vocabulary) : undefined;
  return { start, end, markdown };
}

interface Stretch {
  readonly start: number;
  readonly end: number;
}

function stretch({ start, end }: Stretch): Stretch {
  return { start, end };
}

function entryHover(at: EntryAt, line: EntryLine, character: number): Said | undefined {
  const claim = line.claims.find(({ start, end }) => touches(start, end, character));
  if (claim) return claimHover(at, claim, character);
  if (
    line.subject &&
    touches(line.subject.start, line.subject.end, character) &&
    itemAt([line.subject, ...line.items], character) === line.subject
  ) {
    const { entry, columns = line.subject } = entryOfSubjectAt(at.entry, character);
    return { ...stretch(columns), markdown: subjectHover({ ...at, entry }) ?? keptHover(at, line.subject) };
  }
  const item = itemAt(line.items, character);
  return item && { ...stretch(item), markdown: termHover(at, item) };
}

/**
 * Aims and set work are hovered as the entries that they speak of; for a piece and an instrument their facts are told.
 */
function declarationHover(
  line: LineOf<"declaration">,
  model: BlockModel,
  at: number,
  where: Where,
  character: number,
): Said | undefined {
  const declared = model.declarations.find((each) => each.line === at)?.declaration.declared;
  if (declared?.type === "pitch" && touches(line.start, line.end, character))
    return { ...stretch(line), markdown: explainTuning(declared, where.journal.names) };
  if (character <= line.wordEnd)
    return character < line.start
      ? undefined
      : { start: line.start, end: line.wordEnd, markdown: explainDeclaration(line.word) };
  if (declared?.type === "aim" || declared?.type === "set") {
    const entry = declared.entry && workEntry(declared.entry, at, where.journal);
    return entry && entryHover({ ...where, entry }, declared.entry!, character);
  }
  const start = where.text.length - where.text.slice(line.wordEnd).trimStart().length;
  if (!declared || !touches(start, line.end, character)) return undefined;
  return { start, end: line.end, markdown: factsOf(declared, where) };
}

function factsOf(declared: Declared, { journal, uri, today }: Where): string | undefined {
  switch (declared.type) {
    case "piece":
    case "movement":
      return paragraphs(pieceParagraphs(declared, journal.names, today));
    case "instrument": {
      const { id, instrument = instrumentOf(id, journal.conventions(uri)) } = declared;
      return instrumentInWords(id, instrument, journal.names);
    }
    default:
      return undefined;
  }
}

function workEntry(source: EntryLine, line: number, { vocabulary }: Journal): Entry {
  return readEntry(source, line, vocabulary);
}

function dayHover(line: LineOf<"day">, model: BlockModel): Said {
  const { day } = model;
  const date = day?.date;
  const minutes = minutesOfDay(line, model);
  const opening =
    date === undefined
      ? hoverTexts.noSuchDate
      : hoverTexts.day(weekLabel(date), dateTexts.weekdays[weekday(date) - 1]!);
  return {
    start: line.start,
    end: line.dateEnd,
    markdown: `${opening} ${day?.rest !== undefined && !minutes.any ? hoverTexts.rest : minutes.words}`,
  };
}

/** What the day line states, else the sum of what its sittings, phases and entries state. */
function minutesOfDay(
  line: LineOf<"day">,
  { sittings, phases }: BlockModel,
): { readonly any: boolean; readonly words: string } {
  const stated = line.items.find(({ meaning }) => meaning.type === "amount" && meaning.possible)?.meaning;
  if (stated?.type === "amount") return { any: true, words: hoverTexts.minutesStated(stated.minutes) };
  const inPhases = sittings.map((_, i) =>
    phases
      .filter(({ sitting }) => sitting === i)
      .reduce((sum, { minutes, entryMinutes }) => sum + (minutes ?? entryMinutes), 0),
  );
  const sum = sittings.reduce(
    (before, { minutes, total = 0 }, i) => before + (minutes ?? Math.max(total, inPhases[i]!)),
    0,
  );
  return sum > 0 ? { any: true, words: hoverTexts.minutesSummed(sum) } : { any: false, words: hoverTexts.noMinutes };
}
