import type { Conventions } from "../journal/conventions.ts";
import type { DeclarationContext } from "../journal/declarations/declared.ts";
import type { Entry } from "../journal/model.ts";
import { readEntry } from "../journal/read-entry.ts";
import type { EntryLine, Line } from "../syntax/line/line.ts";
import { LONGEST_LINE, parseLine } from "../syntax/line/parse-line.ts";
import type { Item, MeaningOf } from "../syntax/words/meaning.ts";
import { isQuote } from "../syntax/words/token.ts";
import { type PlayedAttempt, type PlayedEntry, playedEntry } from "./played.ts";
import { type Counting, countingOf, rateBy } from "./rate.ts";
import type { Manner } from "./record.ts";

/** What a line below a day says for the history: an entry, a phase, or nothing. */
export type PlayedLine =
  | { readonly type: "entry"; readonly entry: PlayedEntry }
  | { readonly type: "phase"; readonly phase: string; readonly minutes?: number }
  | { readonly type: "nothing" };

const NOTHING: PlayedLine = { type: "nothing" };
/** Texts of each kind that are kept; a journal with more different ones reads them again. */
const MOST = 20_000;

/** Where the first tempo of an entry stands, if it is one of two or three figures behind `at`. */
const FIRST_TEMPO = /\bat (?=[1-9]\d{1,2}(?:[ ,]|$))/;
const ANY_BPM = "60";
const BARE = `D minor, at ${ANY_BPM}`;

/** What stands before the part with the first tempo, read with a bare tempo behind it. */
interface Head {
  readonly entry: Entry;
  readonly manner: Manner;
  readonly minutes?: number;
  /** Its openings, by what stands in their last part before the tempo. */
  readonly openings: Map<string, Opening | null>;
}

/** Everything up to the first tempo, which that and those behind it share. */
interface Opening {
  readonly manner: Manner;
  readonly counting: Counting | undefined;
  readonly minutes?: number;
}

/** What `8ths at half=` says. */
type Clause = Pick<Manner, "noteValue" | "beat">;

/** What is said of one tempo. */
type Outcome = Pick<PlayedAttempt, "reached" | "count"> & { readonly counted: boolean };

/**
 * Reads lines for the history, each text once, and most entries not even that: what stands before the first tempo was
 * read before, and so was what is said of each tempo, so that only the figures are new. That this gives what reading the
 * line in full gives is held by a property (test/properties/played-lines.test.ts). It lasts as long as the words and the
 * conventions that it was made for.
 */
export class PlayedLines {
  private readonly lines = new Map<string, PlayedLine | null>();
  private readonly heads = new Map<string, Head | null>();
  private readonly clauses = new Map<string, Clause | null>();
  private readonly outcomes = new Map<string, Outcome | null>();
  private readonly endings = new Map<string, boolean>();
  /** A tempo, what was said of it, and what follows: the next tempo, or the end of them. */
  private readonly tempo = /([1-9]\d{1,2})(?: ([a-z][a-z0-9 ]*))?(?:(, )(?=[1-9]\d{1,2}(?:[ ,]|$))|(?=,| -- |$))/y;

  constructor(
    private readonly context: DeclarationContext,
    private readonly conventions: Conventions,
  ) {}

  /** A line below a day; undefined where it frames others in another way than a phase does. */
  read(text: string): PlayedLine | undefined {
    if (isRemark(text)) return NOTHING;
    const entry = this.context.vocabulary.hasNumberedNames ? undefined : this.byTempos(text);
    return entry ? { type: "entry", entry } : (kept(this.lines, text, () => this.inFull(text)) ?? undefined);
  }

  private inFull(text: string): PlayedLine | null {
    const line = this.parse(text);
    if (line.type === "entry") return { type: "entry", entry: this.played(line) };
    if (line.type === "phase") return phaseOf(line);
    const frames = line.type === "day" || line.type === "session" || line.type === "break";
    return frames || line.type === "plan" || line.type === "rest" ? null : NOTHING;
  }

  /** An entry in its usual order: what is practised and how, tempos with what is said of each, a focus, a remark. */
  private byTempos(text: string): PlayedEntry | undefined {
    if (text.length > LONGEST_LINE) return undefined;
    const found = FIRST_TEMPO.exec(text);
    const comma = found ? text.lastIndexOf(", ", found.index) : -1;
    if (!found || comma < 0) return undefined;
    const from = found.index + found[0].length;
    const opening = this.openingOf(text.slice(0, comma), text.slice(comma + 2, from));
    if (!opening) return undefined;
    const { manner, counting, minutes } = opening;
    const attempts: PlayedAttempt[] = [];
    let counted = false;
    this.tempo.lastIndex = from;
    for (let more = true; more; ) {
      const match = this.tempo.exec(text);
      const outcome = match ? this.outcome(match[2] ?? "") : undefined;
      if (!match || !outcome) return undefined;
      const { reached, count } = outcome;
      attempts.push({ manner, rate: counting ? rateBy(counting, Number(match[1])) : null, reached, count });
      counted ||= outcome.counted;
      more = match[3] !== undefined;
      if (!more && !this.endsPlainly(text.slice(match.index + match[0].length))) return undefined;
    }
    return { attempts, counted, ...(minutes === undefined ? {} : { minutes }) };
  }

  private openingOf(before: string, last: string): Opening | null {
    const head = kept(this.heads, before, () => this.headOf(before));
    return head && kept(head.openings, last, () => this.opened(head, last));
  }

  private opened({ entry, manner, minutes }: Head, last: string): Opening | null {
    const clause = kept(this.clauses, last, () => this.clauseOf(last));
    if (!clause) return null;
    const { conditions } = entry.attempts[0]!;
    const noteValue = clause.noteValue ?? conditions.noteValue;
    const counting = countingOf(entry, { ...conditions, noteValue }, clause, this.conventions);
    const written =
      manner.unit === "beats" ? {} : { noteValue: clause.noteValue ?? manner.noteValue, beat: clause.beat };
    return { manner: { ...manner, ...written }, counting, ...(minutes === undefined ? {} : { minutes }) };
  }

  private headOf(text: string): Head | null {
    if (leavesQuoteOpen(text)) return null; // where it closes is told by what follows
    const whole = `${text}, at ${ANY_BPM}`;
    const line = this.parse(whole);
    if (line.type !== "entry" || line.end !== whole.length) return null;
    const entry = readEntry(line, 0, this.context.vocabulary);
    const [attempt, ...others] = entry.attempts;
    const { attempts, minutes } = playedEntry(entry, this.conventions);
    const { tempo, outcomes, tries } = attempt ?? {};
    const isTempo = tempo?.bpm === Number(ANY_BPM) && tempo.low === undefined && tempo.beat === undefined;
    const isAlone = others.length === 0 && outcomes?.length === 0 && tries?.count === 1 && !entry.done;
    if (!isTempo || !isAlone || attempts.length !== 1 || hasNumber(line)) return null;
    return { entry, manner: attempts[0]!.manner, openings: new Map(), ...(minutes === undefined ? {} : { minutes }) };
  }

  /** What stands in the same part before a tempo: a note value, a beat, or nothing. */
  private clauseOf(text: string): Clause | null {
    const whole = `D minor, ${text}${ANY_BPM}`;
    const line = this.parse(whole);
    if (line.type !== "entry" || line.end !== whole.length) return null;
    const types = line.items.map(({ meaning }) => meaning.type);
    if (types.pop() !== "tempo" || types.some((type) => type !== "note value") || types.length > 1) return null;
    const { conditions, tempo } = readEntry(line, 0, this.context.vocabulary).attempts[0]!;
    return tempo?.bpm === Number(ANY_BPM) && tempo.low === undefined
      ? { noteValue: conditions.noteValue, beat: tempo.beat }
      : null;
  }

  private outcome(text: string): Outcome | null {
    return kept(this.outcomes, text, () => {
      const line = this.parse(text === "" ? BARE : `${BARE} ${text}`);
      if (line.type !== "entry") return null;
      const [tempo, ...said] = line.items.map(({ meaning }) => meaning.type);
      if (tempo !== "tempo" || !said.every((type) => type === "outcome" || type === "tries")) return null;
      const { attempts, counted } = this.played(line);
      const { reached, count } = attempts[0]!;
      return attempts.length === 1 ? { reached, count, counted } : null;
    });
  }

  /** What stands behind the tempos changes nothing of them: a focus, a remark, or nothing. */
  private endsPlainly(text: string): boolean {
    const remark = text.indexOf(" -- ");
    const ending = remark < 0 ? text : text.slice(0, remark);
    if (ending === "") return true;
    return kept(this.endings, ending, () => {
      const line = this.parse(BARE + ending);
      const said = line.type === "entry" && !line.remark ? line.items.map(({ meaning }) => meaning.type) : [];
      return said.length === 2 && said[0] === "tempo" && said[1] === "focus";
    });
  }

  private played(line: EntryLine): PlayedEntry {
    return playedEntry(readEntry(line, 0, this.context.vocabulary), this.conventions);
  }

  private parse(text: string): Line {
    return parseLine(text, { ...this.context, head: false });
  }
}

function leavesQuoteOpen(text: string): boolean {
  return [...text].filter(isQuote).length % 2 === 1;
}

/** Blank, or a remark by itself as it is usually marked. */
function isRemark(text: string): boolean {
  let i = 0;
  while (text.charCodeAt(i) === 32) i++;
  return i === text.length || (text.startsWith("--", i) && text.length <= LONGEST_LINE);
}

function phaseOf({ items }: Extract<Line, { readonly type: "phase" }>): PlayedLine | null {
  if (items.some(({ meaning }) => meaning.type === "line word")) return null; // `plan`
  const amount = items.find(({ meaning }) => meaning.type === "amount")?.meaning as MeaningOf<"amount"> | undefined;
  const { id } = items[0]!.meaning as MeaningOf<"phase">;
  return { type: "phase", phase: id, ...(amount?.possible ? { minutes: amount.minutes } : {}) };
}

/** A bare number before the tempo may go on with it or with something else. */
function hasNumber({ items }: { readonly items: readonly Item[] }): boolean {
  return items.some(({ meaning }) => meaning.type === "number");
}

function kept<T>(known: Map<string, T>, text: string, make: () => T): T {
  const before = known.get(text);
  if (before !== undefined) return before;
  if (known.size >= MOST) known.clear();
  const made = make();
  known.set(text, made);
  return made;
}
