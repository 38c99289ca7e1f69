import { parseIsoDate, weekday } from "../journal/calendar.ts";
import type { Conventions } from "../journal/conventions.ts";
import { usualDay } from "../journal/day-of-block.ts";
import { DaySkeleton, type EntryCount } from "../journal/day-skeleton.ts";
import { takeFrame } from "../journal/read-block.ts";
import { entryCount } from "../journal/read-entry.ts";
import type { Block } from "../syntax/document/document.ts";
import { CutCursor } from "../syntax/line/cut.ts";
import { dateWord } from "../syntax/line/day-line.ts";
import { declarationWordAt } from "../syntax/line/declaration-word.ts";
import type { Line } from "../syntax/line/line.ts";
import { LONGEST_LINE, parseLine } from "../syntax/line/parse-line.ts";
import { type PartContext, readPartOnce } from "../syntax/line/parts.ts";
import type { Item } from "../syntax/words/meaning.ts";
import type { LineFinding } from "./context.ts";
import { checkDayMinutes, LONGEST_STRETCH } from "./day/day-minutes.ts";
import type { DatedDay } from "./file/journal-order.ts";
import type { Finding, Stretch } from "./finding.ts";
import { checkLine } from "./line/line.ts";
import { LOOK, ONLY_ONCE, partSays, SAYS } from "./plain-part.ts";
import { type QuickDay, quickDay } from "./quick-day.ts";

/** Lines kept with what was found on them; a journal that has more different ones is read again. */
const MOST_LINES = 20_000;
const MOST_PARTS = 60_000;
const NONE: readonly LineFinding[] = [];
const AMOUNT = SAYS["amount"]!;
const COUNTED = SAYS["counted"]!;
const INSTRUMENT = SAYS["instrument"]!;
const INVERSION = SAYS["inversion"]!;
const LEADING_OUTCOME = SAYS["leading outcome"]!;
const NUMBER = SAYS["number"]!;
const PHASE = SAYS["phase"]!;
const PLACE = SAYS["place"]!;
const SPAN = SAYS["span"]!;
const SUBJECT = SAYS["subject"]!;
const TEMPO = SAYS["tempo"]!;

export interface BlockSurvey {
  readonly findings: readonly LineFinding[];
  readonly day?: DatedDay;
  /** A declaration stands in it. */
  readonly declares: boolean;
}

/** What a line is, as far as its day is concerned, where nothing on it can be at fault. */
type Plain =
  | { readonly type: "nothing" }
  | { readonly type: "phase"; readonly phase: string; readonly minutes?: number }
  | ({ readonly type: "entry" } & EntryCount);

/** One part: its bits (see `plain-part.ts`), its phase and its minutes. */
interface PartSays {
  readonly items: readonly Item[];
  /** An entry may begin with it. */
  readonly opens: boolean;
  readonly bits: number;
  readonly phase?: string;
  readonly minutes?: number;
}

interface FullLine {
  readonly line: Line;
  readonly findings: readonly Finding[];
}

const NOTHING: Plain = { type: "nothing" };
const DATE_FIRST: Stretch = { start: 0, end: "2026-03-02".length };
const MINUTES = " min\n";

/**
 * Runs the checks of single lines and days over whole blocks, fast: nearly every line of a journal is made of parts that
 * were seen before and cannot be at fault together; only the others are read in full, once for each text. That this
 * finds what reading every line in full finds is held by a property (test/properties/survey.test.ts). It lasts as long
 * as the words and the conventions it was made for.
 */
export class Survey {
  private readonly parts = new Map<string, PartSays>();
  private readonly plain = new Map<string, Plain | null>();
  private readonly lines = new Map<string, FullLine>();
  private readonly cursor = new CutCursor();

  private readonly quick: QuickDay | undefined;
  private ready = false;

  constructor(
    private readonly context: PartContext,
    private readonly conventions: Conventions,
  ) {
    this.quick = quickDay(context.vocabulary, conventions.names);
  }

  /** Everything that a block shows by itself: a day's own findings do not depend on other days. */
  block(block: Block): BlockSurvey {
    return (block.day && this.quickly(block.text)) || this.byLine(block);
  }

  private byLine({ lines: texts, day: isDay }: Block): BlockSurvey {
    const head = !isDay;
    const skeleton = new DaySkeleton();
    const findings: LineFinding[] = [];
    let day: DatedDay | undefined;
    let declares = false;
    for (let i = 0; i < texts.length; i++) {
      const text = texts[i]!;
      const plain = head || i === 0 ? undefined : this.plainOnce(text);
      const plainDay = !head && i === 0 ? this.plainDay(text) : undefined;
      if (plain) takePlain(skeleton, plain, i);
      else if (plainDay) {
        skeleton.openDay(0, plainDay.minutes, false, false);
        day = { date: plainDay.date, place: plainDay.place, planned: false };
      } else {
        const { line, findings: found } = head || i === 0 ? this.read(text, head) : this.full(text);
        for (const finding of found) findings.push({ ...finding, line: i });
        takeFrame(skeleton, line, i);
        if (line.type === "entry") skeleton.addEntry(i, entryCount(line));
        else if (line.type === "declaration") declares = true;
        else if (line.type === "day") day = dated(line);
      }
    }
    if (!head) {
      const minutes = checkDayMinutes(skeleton);
      for (const { line, at } of minutes) findings.push({ ...at(this.amountOn(texts[line]!, head)), line });
      if (minutes.length) findings.sort((a, b) => a.line - b.line || a.start - b.start || a.end - b.end);
    }
    return {
      findings: findings.length ? findings : NONE,
      day: day && { ...day, planned: skeleton.allPlanned },
      declares,
    };
  }

  /**
   * Most days are in their usual order and spacing, and gone over by expressions; a line between that these do not know is
   * read by itself. Undefined where that does not tell all, or minutes may exceed what they should.
   */
  private quickly(text: string): BlockSurvey | undefined {
    const { quick } = this;
    if (!quick || text.length > LONGEST_LINE || text.includes("\r")) return undefined;
    if (!this.ready) this.ready = compiled(quick, text);
    quick.opening.lastIndex = 0;
    const day = quick.opening.test(text) ? usualDay(text) : undefined;
    if (!day) return undefined;
    const below = quick.opening.lastIndex;
    const findings = this.goneOver(quick, text, below);
    if (!findings) return undefined;
    const stated = statedMinutes(text, below);
    const whole = day.minutes ?? stated;
    if (stated > whole || whole > LONGEST_STRETCH) return undefined;
    return { findings, day: { date: day.date, place: DATE_FIRST, planned: false }, declares: false };
  }

  /** What is found below a day line; undefined where some line is neither plain nor an entry without an amount. */
  private goneOver({ plain }: QuickDay, text: string, below: number): readonly LineFinding[] | undefined {
    const found: LineFinding[] = [];
    for (let at = below; at < text.length; ) {
      plain.lastIndex = at;
      plain.test(text);
      at = plain.lastIndex;
      if (at === text.length) break;
      const newline = text.indexOf("\n", at);
      const end = newline < 0 ? text.length : newline;
      const findings = this.onEntry(text.slice(at, end));
      if (!findings) return undefined;
      for (const each of findings) found.push({ ...each, line: newlinesBefore(text, at) });
      at = end + 1;
    }
    return found.length ? found : NONE;
  }

  /** What is found on an entry that states no minutes, or on a line that says nothing; undefined for any other. */
  private onEntry(text: string): readonly Finding[] | undefined {
    const plain = this.plainOnce(text);
    if (plain)
      return plain.type === "phase" || (plain.type === "entry" && plain.minutes !== undefined) ? undefined : NONE;
    const { line, findings } = this.full(text);
    return line.type === "entry" && entryCount(line).minutes === undefined ? findings : undefined;
  }

  /** A day line with a date that exists, its own weekday and its minutes, and nothing else. */
  private plainDay(
    text: string,
  ): { readonly date: number; readonly place: Stretch; readonly minutes?: number } | undefined {
    const word = dateWord(text);
    const date = word && parseIsoDate(word.text);
    if (!word || date === undefined) return undefined;
    const { cursor } = this;
    cursor.open(text, word.end);
    if (cursor.remark < text.length || text.length > LONGEST_LINE) return undefined;
    let minutes: number | undefined;
    let first = true;
    while (cursor.next()) {
      const { items } = this.says(text.slice(cursor.start, cursor.end));
      const meaning = items[0]?.meaning;
      if (items.length > 1 || cursor.after === ">" || cursor.after === ":") return undefined;
      if (meaning?.type === "amount" && meaning.possible && minutes === undefined) minutes = meaning.minutes;
      else if (meaning && (!first || meaning.type !== "weekday" || meaning.day !== weekday(date))) return undefined;
      first = false;
    }
    return { date, place: { start: word.start, end: word.end }, minutes };
  }

  /** Once for each text: lines that are not quickly told are few, and come again. */
  private plainOnce(text: string): Plain | undefined {
    const known = this.plain.get(text);
    if (known !== undefined) return known ?? undefined; // null is known to need a full look
    if (this.plain.size >= MOST_LINES) this.plain.clear();
    const plain = this.plainLine(text);
    this.plain.set(text, plain ?? null);
    return plain;
  }

  /** A line below a day that cannot be at fault; undefined for any that may be. */
  private plainLine(text: string): Plain | undefined {
    const first = firstCharacter(text);
    if (first === text.length) return text.length > LONGEST_LINE ? undefined : NOTHING;
    const code = text.charCodeAt(first);
    if (text.length > LONGEST_LINE || OPENS_OTHERS.includes(code))
      return code === HYPHEN && text.charCodeAt(first + 1) === HYPHEN && text.length <= LONGEST_LINE
        ? NOTHING
        : undefined;
    this.cursor.open(text, first);
    this.cursor.next();
    const subject = text.slice(this.cursor.start, this.cursor.end);
    const said = this.says(subject);
    if (said.phase !== undefined) return this.plainPhase(text, said);
    if ((said.bits & SUBJECT) === 0 || said.bits === LOOK) return undefined;
    return this.plainEntry(text, subject, said);
  }

  /** A phase with its minutes and nothing else. */
  private plainPhase(text: string, { bits, phase, minutes }: PartSays): Plain | undefined {
    const { cursor } = this;
    if (bits === LOOK || (bits & ~(PHASE | AMOUNT)) !== 0) return undefined;
    if (!cursor.next()) return { type: "phase", phase: phase!, minutes };
    const said = this.says(text.slice(cursor.start, cursor.end));
    if (said.bits !== AMOUNT || minutes !== undefined || cursor.next()) return undefined;
    return { type: "phase", phase: phase!, minutes: said.minutes };
  }

  /** A subject, and terms that do not repeat or reorder anything. */
  private plainEntry(text: string, subject: string, opening: PartSays): Plain | undefined {
    const { cursor } = this;
    if (!opening.opens) return undefined;
    let { bits: said, minutes } = opening;
    let chained = false;
    let terms = false;
    while (cursor.next()) {
      const { after } = cursor;
      const part = text.slice(cursor.start, cursor.end);
      const { bits, items, minutes: own } = this.says(part);
      if (after === ">") {
        if (terms || bits !== SUBJECT || said !== SUBJECT || !isScale(items) || !isScale(opening.items))
          return undefined;
        chained = true;
        continue;
      }
      terms = true;
      if (bits === LOOK || after !== "," || !fitsBehind(bits, said)) return undefined;
      if ((bits & SPAN) !== 0 && (chained || this.full(`${subject}, ${part}`).findings.length > 0)) return undefined;
      said |= bits;
      minutes ??= own;
    }
    if ((said & INSTRUMENT) !== 0) return undefined; // the range of another instrument
    if ((said & SPAN) !== 0 && (said & INVERSION) !== 0) return undefined; // begins higher
    return { type: "entry", minutes, counted: (said & COUNTED) !== 0 };
  }

  /** The subject, and what stands in one part with it, are sound together; a short name may be a declaration word. */
  private opensPlainly(part: string, items: readonly Item[]): boolean {
    if (items.length > 1 && this.full(part).findings.length > 0) return false;
    const named = items[0]!.meaning.type === "title" || items[0]!.meaning.type === "activity";
    return !named || declarationWordAt(part, 0, part.length) === undefined;
  }

  private says(part: string): PartSays {
    const known = this.parts.get(part);
    if (known) return known;
    const items = readPartOnce(part, this.context);
    const bits = partSays(items, ({ start, end }) => this.full(part.slice(start, end)).findings.length === 0);
    const opening = items[0]?.meaning;
    const amount = items.find((item) => item.meaning.type === "amount")?.meaning;
    const says: PartSays = {
      items,
      bits,
      opens: bits !== LOOK && (bits & SUBJECT) !== 0 && this.opensPlainly(part, items),
      ...(opening?.type === "phase" ? { phase: opening.id } : {}),
      ...(amount?.type === "amount" ? { minutes: amount.minutes } : {}),
    };
    if (this.parts.size >= MOST_PARTS) this.parts.clear();
    this.parts.set(part, says);
    return says;
  }

  /** A line below a day, read and checked in full; once for each text. */
  private full(text: string): FullLine {
    const known = this.lines.get(text);
    if (known) return known;
    if (this.lines.size >= MOST_LINES) this.lines.clear();
    const full = this.read(text, false);
    this.lines.set(text, full);
    return full;
  }

  private read(text: string, head: boolean): FullLine {
    const context = { ...this.context, conventions: this.conventions, text, head };
    const line = parseLine(text, context);
    return { line, findings: checkLine(line, context) };
  }

  private amountOn(text: string, head: boolean): Stretch {
    const { line } = this.read(text, head);
    const amount =
      "items" in line ? (line.items as readonly Item[]).find(({ meaning }) => meaning.type === "amount") : undefined;
    return amount ?? { start: 0, end: text.length };
  }
}

const HYPHEN = 45;
/** First characters of lines that are no plain entries or phases: bullets, remarks, marks of a merge, quotes. */
const OPENS_OTHERS = [..."-*•<=>|–—"].map((character) => character.charCodeAt(0));

/**
 * V8 interprets an expression first and makes machine code of it when it is used again, which for long ones costs more than
 * all their use; on a text of a thousand characters it makes machine code at once. That depends on how the characters are
 * stored, so the text is one of the journal's own.
 */
function compiled({ plain }: QuickDay, text: string): true {
  plain.lastIndex = text.indexOf("\n") + 1;
  plain.test(text.padEnd(1000, "x"));
  return true;
}

/** At least the minutes that a plain day's lines state: those of its phases, and perhaps a remark's. */
function statedMinutes(text: string, below: number): number {
  const whole = text.endsWith("\n") ? text : `${text}\n`;
  let sum = 0;
  for (let at = whole.indexOf(MINUTES, below); at >= 0; at = whole.indexOf(MINUTES, at + MINUTES.length))
    sum += Math.max(0, Number(whole.slice(whole.lastIndexOf(" ", at - 1) + 1, at)) || 0);
  return sum;
}

function newlinesBefore(text: string, at: number): number {
  return text.slice(0, at).split("\n").length - 1;
}

function firstCharacter(text: string): number {
  let i = 0;
  while (i < text.length && (text.charCodeAt(i) === 32 || text.charCodeAt(i) === 9)) i++;
  return i;
}

function isScale(items: readonly Item[]): boolean {
  return items.length === 1 && items[0]!.meaning.type === "scale";
}

/** Whether a part may follow what the line said so far, so that nothing is said twice or out of order. */
function fitsBehind(bits: number, said: number): boolean {
  if ((bits & said & ONLY_ONCE) !== 0 || (bits & (SUBJECT | PHASE)) !== 0) return false;
  const tempo = TEMPO | NUMBER;
  if ((bits & NUMBER) !== 0 && ((said & TEMPO) === 0 || (bits & PLACE) !== 0)) return false;
  if ((bits & PLACE) !== 0 && (said & tempo) !== 0) return false;
  if ((bits & LEADING_OUTCOME) !== 0 && (bits & tempo) !== 0) return false;
  return !((bits & tempo) !== 0 && (said & LEADING_OUTCOME) !== 0);
}

function takePlain(skeleton: DaySkeleton, plain: Plain, line: number): void {
  if (plain.type === "phase") skeleton.openPhase(line, plain.phase, plain.minutes, false);
  else if (plain.type === "entry") skeleton.addEntry(line, plain);
}

function dated(line: Extract<Line, { readonly type: "day" }>): DatedDay | undefined {
  const date = parseIsoDate(line.date);
  return date === undefined ? undefined : { date, place: { start: line.start, end: line.dateEnd }, planned: false };
}
