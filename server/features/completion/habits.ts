import type { DayNumber } from "../../journal/calendar.ts";
import { dayOfBlock } from "../../journal/day-of-block.ts";
import { hasSeveral } from "../../journal/each-subject.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Block, Document } from "../../syntax/document/document.ts";
import type { EntryLine } from "../../syntax/line/line.ts";
import type { Item } from "../../syntax/words/meaning.ts";
import { lineEndOf } from "../explain/line-under-cursor.ts";
import { phasesIn, type SessionPhases } from "../explain/phases-before.ts";
import { completionTexts } from "./completion-texts.ts";
import { type Candidate, formOf } from "./rank.ts";
import { latestBlocks } from "./usage.ts";

/** A line to be filled in is offered once the latest days have so many like it. Our own choice. */
const USUAL = 3;
/** What is left to be filled in, in a label. */
const BLANK = "…";

/** Today with the phases of the last session, each on its line, where today may begin here and may be meant. */
export function dayWithPhases(
  journal: Journal,
  document: Document,
  { days, today, typed, fit }: { days: readonly Candidate[]; today: DayNumber; typed: string; fit: number },
): Candidate[] {
  const day = days.find(({ detail }) => detail === completionTexts.today);
  if (!day || !formOf(day, typed)) return [];
  const session = lastSession(journal, today);
  if (!session) return [];
  const { lines, indent } = session;
  const [first, ...further] = lines;
  const end = lineEndOf(document);
  const names = lines.map((line) => line.split(",")[0]!);
  return [
    {
      label: [day.label, ...names].join(", "),
      kind: "snippet",
      detail: completionTexts.todayWithPhases,
      fit,
      insert: [day.label, ...lines].join(end),
      snippet: [escaped(day.label), escaped(first!), `${indent}$0`, ...further.map(escaped)].join(end),
    },
  ];
}

function lastSession(journal: Journal, before: DayNumber): SessionPhases | undefined {
  const days = latestBlocks(journal)
    .map(({ block }) => ({ block, day: dayOfBlock(block)! }))
    .filter(({ day }) => day < before)
    .sort((a, b) => b.day - a.day);
  for (const { block } of days) {
    const found = phasesIn(block, journal.ownModel(block));
    if (found) return found;
  }
  return undefined;
}

/** Where a line to be filled in is asked for. */
export interface BlankPlace {
  readonly journal: Journal;
  readonly uri: string;
  readonly today: DayNumber;
  readonly block: Block;
  /** From 0, within the block: what stands there is being typed. */
  readonly line: number;
  readonly fit: number;
}

/** A text with stretches to be filled in: what stands between them, and what each has so far. */
type Part = { readonly fixed: string } | { readonly filled: string };

/**
 * A line as the latest days have it most, in their order, with their commas and words, to be filled in: what is played
 * and the tempo are left blank, as the days before say nothing of them.
 */
export function blankEntry({ journal, today, block, line, fit }: BlankPlace): Candidate[] {
  const shapes = new Map<string, { count: number; readonly parts: readonly Part[] }>();
  for (const { block: day } of latestBlocks(journal)) {
    if ((dayOfBlock(day) ?? today) > today) continue;
    for (const { key, parts, at } of shapesIn(journal, day)) {
      if (day === block && at === line) continue;
      const known = shapes.get(key);
      if (known) known.count++;
      else shapes.set(key, { count: 1, parts });
    }
  }
  const [usual] = [...shapes.values()].sort((a, b) => b.count - a.count);
  if (!usual || usual.count < USUAL) return [];
  return [candidateOf(usual.parts, completionTexts.usualLine, fit)];
}

interface Shape {
  readonly key: string;
  readonly parts: readonly Part[];
  /** Its line within the block. */
  readonly at: number;
}

/** The latest first. */
function shapesIn(journal: Journal, block: Block): readonly Shape[] {
  return journal.memo.from(block, "entry shapes", [journal.titlesOf(block)], () =>
    journal
      .model(block)
      .lines.flatMap((line, at) => (line.type === "entry" ? (shapeOf(line, block.lines[at]!, at) ?? []) : []))
      .toReversed(),
  );
}

const FILLED: readonly string[] = ["pattern", "variant", "articulation", "rhythm", "note value", "span", "direction"];

/** Up to its first tempo; undefined for a line that has other things before it, or none. */
function shapeOf({ subject, items, claims, same }: EntryLine, text: string, at: number): Shape | undefined {
  const tempo = items.findIndex(({ meaning }) => meaning.type === "tempo");
  if (!subject || tempo < 1 || claims.length > 0 || same) return undefined;
  const { meaning } = subject;
  if ((meaning.type !== "scale" && meaning.type !== "chord") || hasSeveral(meaning)) return undefined;
  const before = items.slice(0, tempo);
  if (before.some((item) => item.start < subject.end || !FILLED.includes(item.meaning.type))) return undefined;
  const parts: Part[] = [{ filled: "" }];
  let from = subject.end;
  for (const item of before) {
    parts.push({ fixed: spaced(text.slice(from, item.start)) }, { filled: text.slice(item.start, item.end) });
    from = item.end;
  }
  const beforeNumber = /^\D*/.exec(tempoText(text, items[tempo]!))![0];
  parts.push({ fixed: spaced(text.slice(from, items[tempo]!.start)) + beforeNumber }, { filled: "" });
  const kinds = before.map((item) => item.meaning.type);
  const fixed = parts.flatMap((part) => ("fixed" in part ? part.fixed : []));
  return { key: JSON.stringify([kinds, fixed]), parts, at };
}

function tempoText(text: string, { start, end }: Item): string {
  return text.slice(start, end);
}

function spaced(text: string): string {
  return text.replace(/\s+/g, " ");
}

/** Declarations as the one before is written, to be filled in: `piece "…" as …: …, … bars`. */
export function blankDeclarations(place: BlankPlace): Candidate[] {
  return ["piece", "study"].flatMap((word): Candidate[] => {
    const text = latestDeclared(place, word);
    const parts = text && declarationParts(text);
    return parts ? [candidateOf(parts, completionTexts.asLastDeclared, place.fit)] : [];
  });
}

/** In the file itself, else in the first that has one. */
function latestDeclared({ journal, uri, block, line }: BlankPlace, word: string): string | undefined {
  for (const file of [uri, ...journal.addresses.filter((each) => each !== uri)]) {
    const head = journal.files.get(file)?.blocks[0];
    if (!head || head.day) continue;
    const own = journal
      .ownModel(head)
      .declarations.filter(({ declaration }) => declaration.declared && declaration.line.word === word)
      .findLast((each) => head !== block || each.line !== line);
    if (own) return head.lines[own.line]!.slice(own.declaration.line.start, own.declaration.line.end);
  }
  return undefined;
}

/** Its name, its short name and what is said of it; undefined for a name without quotes, which is a fault. */
function declarationParts(text: string): readonly Part[] | undefined {
  const found = /^(\w+\s+["“„«])[^"“”„«»‟]*(["“”»‟])(?:(\s+as\s+)([^:]+?))?(?:(\s*:\s*)(.*))?$/is.exec(text);
  if (!found) return undefined;
  const [, opening, closing, as, , colon, facts] = found;
  const parts: Part[] = [{ fixed: opening! }, { filled: "" }, { fixed: closing! }];
  if (as) parts.push({ fixed: as }, { filled: "" });
  if (colon && facts) parts.push({ fixed: colon }, ...facts.split(/\s*,\s*/).flatMap(factParts));
  return parts;
}

/** `64 bars`, `goal quarter=92` and `due 2026-09-12` keep their words; of anything else, as a key, nothing stays. */
function factParts(fact: string, i: number): readonly Part[] {
  const comma: readonly Part[] = i === 0 ? [] : [{ fixed: ", " }];
  const figures = /^(\D*)(\d[\d.-]*)(.*)$/s.exec(fact);
  if (!figures) return [...comma, { filled: "" }];
  const [, before, , after] = figures;
  return [...comma, { fixed: before! }, { filled: "" }, { fixed: after! }];
}

function candidateOf(parts: readonly Part[], detail: string, fit: number): Candidate {
  let stop = 0;
  const fill = (filled: string): string => {
    stop++;
    return filled === "" ? `$${stop}` : `\${${stop}:${escaped(filled)}}`;
  };
  const label = parts.map((part) => ("fixed" in part ? part.fixed : part.filled || BLANK)).join("");
  const snippet = parts.map((part) => ("fixed" in part ? escaped(part.fixed) : fill(part.filled))).join("");
  return { label, kind: "snippet", detail, fit, insert: label.replaceAll(BLANK, ""), snippet };
}

/** As the protocol has it (3.17, "Snippet Syntax"): `$`, `}` and `\` stand for themselves behind a `\`. */
function escaped(text: string): string {
  return text.replace(/[$}\\]/g, "\\$&");
}
