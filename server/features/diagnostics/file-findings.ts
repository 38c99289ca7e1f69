import type { LineFinding } from "../../checks/context.ts";
import { type DayFindings, dayFindings } from "../../checks/day/day-findings.ts";
import { pastAim } from "../../checks/file/aims.ts";
import {
  checkDayOrder,
  type DayInFile,
  type DaysElsewhere,
  duplicateDeclaration,
} from "../../checks/file/journal-order.ts";
import { readAlongside } from "../../history/attempts.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import type { Conventions } from "../../journal/conventions.ts";
import type { DayVisitor } from "../../journal/day-walk.ts";
import { declarationKey } from "../../journal/declarations/declaration-key.ts";
import type { Declaration } from "../../journal/declarations/declared.ts";
import { inOrderOfAddress, type Journal } from "../../journal/journal.ts";
import { type Block, changedBlocks, type Document } from "../../syntax/document/document.ts";
import { type BlockFacts, FindingsKept, isUnderlined, type KeyedDeclaration, tells } from "./block-facts.ts";
import { daysElsewhere } from "./days-elsewhere.ts";

/** Everything found in one state of a file. Lines count from each block's first. */
export interface FileFindings {
  readonly document: Document;
  readonly blocks: readonly BlockFacts[];
  /** The blocks with something to tell, by their index. */
  readonly told: readonly number[];
  /** Those of them that tell more than hints. */
  readonly underlined: readonly number[];
  readonly crossing: ReadonlyMap<Block, readonly LineFinding[]>;
  /** The aims that it declares. */
  readonly aims: readonly AimAt[];
  /** The days follow each other one way, none twice and none ahead. */
  readonly regular: boolean;
  /** What else bore on the findings. */
  readonly bearing: Bearing;
}

export interface AimAt {
  readonly block: Block;
  readonly line: number;
  readonly declaration: Declaration;
}

interface Bearing {
  readonly uri: string;
  readonly checks: DayFindings;
  readonly today: DayNumber;
  /** See `Journal.declaredIn`. */
  readonly declaredIn: ReadonlyMap<string, string>;
  readonly elsewhere: DaysElsewhere;
}

const NO_DECLARATIONS: readonly KeyedDeclaration[] = [];

export interface FindingsAsked {
  readonly earlier?: FileFindings;
  readonly history?: boolean;
  /** Where a file is looked at afresh, those that will not be told are only counted. */
  readonly counted?: boolean;
  /** Told of each day before it is looked at, where a file is looked at afresh: for who says how far that is. */
  readonly onDay?: () => void;
}

/**
 * The findings of a file; with `history`, its days are read for the history as well. With those of an earlier state
 * only the blocks that differ are looked at, and what crosses blocks is looked at again only where they bear on it: the
 * result is that of a fresh look (test/properties/diagnostics.test.ts).
 */
export function fileFindings(
  journal: Journal,
  uri: string,
  today: DayNumber,
  { earlier, history = false, counted = false, onDay }: FindingsAsked = {},
): FileFindings {
  const document = journal.files.get(uri)!;
  const conventions: Conventions = journal.conventions(uri);
  const checks = dayFindings(journal, conventions);
  const bearing: Bearing = {
    uri,
    checks,
    today,
    declaredIn: journal.declaredIn,
    elsewhere: daysElsewhere(journal, uri),
  };
  if (earlier && sameBearing(earlier, bearing))
    return earlier.document === document ? earlier : updated(journal, document, earlier, bearing);
  const blocks =
    earlier?.bearing.checks === checks
      ? blocksAfter(journal, document, earlier).blocks
      : freshFacts(journal, uri, checks, { history, counted, onDay });
  return { document, blocks, ...crossed(document, blocks, bearing), bearing };
}

function freshFacts(
  journal: Journal,
  uri: string,
  checks: DayFindings,
  { history, counted, onDay }: FindingsAsked,
): readonly BlockFacts[] {
  const kept = counted ? new FindingsKept(checks) : undefined;
  return journal.files.get(uri)!.blocks.map((block) => {
    onDay?.();
    const facts = history ? factsAndAttempts(journal, uri, block, checks) : blockFacts(journal, block, checks);
    return kept?.of(block, facts) ?? facts;
  });
}

function sameBearing({ bearing: a, blocks }: FileFindings, b: Bearing): boolean {
  return a.checks === b.checks && a.today === b.today && a.elsewhere === b.elsewhere && sameDeclared(blocks, a, b);
}

/** Whether the same of a file's declarations stand in files before it. */
function sameDeclared(blocks: readonly BlockFacts[], a: Bearing, b: Bearing): boolean {
  if (a.declaredIn === b.declaredIn) return true;
  return blocks.every(({ declarations }) =>
    declarations.every(({ key }) => key === undefined || isDeclaredBefore(key, a) === isDeclaredBefore(key, b)),
  );
}

function isDeclaredBefore(key: string, { declaredIn, uri }: Bearing): boolean {
  const first = declaredIn.get(key);
  return first !== undefined && inOrderOfAddress(first, uri) < 0;
}

/** The facts of every block, of which only those that changed are found out anew. */
function blocksAfter(journal: Journal, document: Document, { document: past, blocks: facts, bearing }: FileFindings) {
  const changed = changedBlocks(past, document);
  const { from, before, after } = changed;
  const old = facts.slice(from, before);
  // Between two edits that lie far apart all else is as it was.
  const known = new Map(old.map((each, i) => [past.blocks[from + i]!, each]));
  const now = document.blocks
    .slice(from, after)
    .map((block) => known.get(block) ?? blockFacts(journal, block, bearing.checks));
  return { ...changed, old, now, blocks: facts.slice(0, from).concat(now, facts.slice(before)) };
}

function updated(journal: Journal, document: Document, earlier: FileFindings, bearing: Bearing): FileFindings {
  const { from, before, after, old, now, blocks } = blocksAfter(journal, document, earlier);
  const way = wayOf(blocks);
  const isSameWay = [0, way].includes(wayOf(earlier.blocks));
  const bears = bearsOnOthers(old) || bearsOnOthers(now);
  const stays = earlier.regular && !bears && isSameWay && staysRegular(blocks, { from, after, way }, bearing);
  if (!stays) return { document, blocks, ...crossed(document, blocks, bearing), bearing };
  const indicesNow = (past: readonly number[], isOne: (facts: BlockFacts) => boolean): readonly number[] => [
    ...past.filter((index) => index < from),
    ...now.flatMap((facts, i) => (isOne(facts) ? [from + i] : [])),
    ...past.filter((index) => index >= before).map((index) => index + after - before),
  ];
  const { crossing, aims } = earlier;
  const told = indicesNow(earlier.told, tells);
  const underlined = indicesNow(earlier.underlined, isUnderlined);
  return { document, blocks, told, underlined, crossing, aims, regular: true, bearing };
}

function bearsOnOthers(blocks: readonly BlockFacts[]): boolean {
  return blocks.some(({ declarations }) => declarations.length > 0);
}

/** Whether the days around a change still go the way of all others, none twice and none ahead. */
function staysRegular(
  blocks: readonly BlockFacts[],
  { from, after, way }: { readonly from: number; readonly after: number; readonly way: number },
  { today, elsewhere }: Bearing,
): boolean {
  const dates: number[] = [];
  let first = from;
  while (first > 0 && blocks[first - 1]!.day === undefined) first--;
  let last = after;
  while (last < blocks.length && blocks[last]!.day === undefined) last++;
  for (let i = Math.max(0, first - 1); i <= Math.min(last, blocks.length - 1); i++) {
    const date = blocks[i]!.day?.date;
    if (date !== undefined) dates.push(date);
  }
  if (dates.some((date) => date > today || isElsewhere(elsewhere, date))) return false;
  return dates.every((date, i) => i === 0 || (way !== 0 && Math.sign(date - dates[i - 1]!) === way));
}

function isElsewhere({ earlier, stray, siblings }: DaysElsewhere, date: DayNumber): boolean {
  return earlier.has(date) || stray.has(date) || siblings.has(date);
}

/** Whether the last day of a file is later than the first, 1, or earlier, -1; 0 where it has no two. */
function wayOf(blocks: readonly BlockFacts[]): number {
  const [first, last] = [blocks.find(({ day }) => day), blocks.findLast(({ day }) => day)];
  return Math.sign((last?.day?.date ?? 0) - (first?.day?.date ?? 0));
}

/** What comes of the blocks together. */
function crossed(
  document: Document,
  blocks: readonly BlockFacts[],
  bearing: Bearing,
): Pick<FileFindings, "told" | "underlined" | "crossing" | "aims" | "regular"> {
  const crossing = new Map<Block, LineFinding[]>();
  const add = (index: number, finding: LineFinding): void => {
    const block = document.blocks[index]!;
    crossing.set(block, [...(crossing.get(block) ?? []), finding]);
  };
  const dated: DayInFile[] = [];
  const places: number[] = [];
  for (let index = 0; index < blocks.length; index++) {
    const { day } = blocks[index]!;
    if (!day) continue;
    dated.push({ ...day, line: document.starts[index]! });
    places.push(index);
  }
  const days = checkDayOrder(dated, bearing.today, bearing.elsewhere);
  for (const { day, finding } of days) add(places[day]!, { ...finding, line: 0 });
  const seen = new Set<string>();
  const aims: AimAt[] = [];
  for (let index = 0; index < blocks.length; index++) {
    for (const { key, line, declaration, text } of blocks[index]!.declarations) {
      if (key !== undefined && (seen.has(key) || isDeclaredBefore(key, bearing)))
        add(index, { ...duplicateDeclaration(declaration, text), line });
      if (key !== undefined) seen.add(key);
      if (declaration.declared?.type === "aim") aims.push({ block: document.blocks[index]!, line, declaration });
      const past = pastAim(declaration, bearing.today);
      if (past) add(index, { ...past, line });
    }
  }
  const told: number[] = [];
  const underlined: number[] = [];
  for (let index = 0; index < blocks.length; index++) {
    const crosses = crossing.has(document.blocks[index]!);
    if (crosses || tells(blocks[index]!)) told.push(index);
    if (crosses || isUnderlined(blocks[index]!)) underlined.push(index);
  }
  return { told, underlined, crossing, aims, regular: days.length === 0 };
}

function blockFacts(journal: Journal, block: Block, checks: DayFindings, also: readonly DayVisitor[] = []): BlockFacts {
  const { findings, day, declares } = checks.of(block, also);
  return { findings, day, declarations: declares ? keyed(journal, block) : NO_DECLARATIONS };
}

/** The same, and while the block is gone over what the history will ask of it. */
function factsAndAttempts(journal: Journal, uri: string, block: Block, checks: DayFindings): BlockFacts {
  let facts: BlockFacts | undefined;
  readAlongside(journal, uri, block, (also) => {
    facts = blockFacts(journal, block, checks, also);
  });
  return facts!;
}

function keyed(journal: Journal, block: Block): readonly KeyedDeclaration[] {
  return journal.ownModel(block).declarations.map(({ line, declaration }) => ({
    line,
    declaration,
    key: declarationKey(declaration),
    text: block.lines[line]!,
  }));
}
