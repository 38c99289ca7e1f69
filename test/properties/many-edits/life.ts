import fc from "fast-check";
import { TextDocument } from "vscode-languageserver-textdocument";
import { Journal } from "../../../server/journal/journal.ts";
import { applyChanges, createDocument, type TextChange } from "../../../server/syntax/document/document.ts";
import { ROOT, replacedBy } from "../edits.ts";
import type { Hand } from "./hands.ts";
import { ALL_FILES, type Step, writingOf } from "./steps.ts";
import { answer, difference, told } from "./told.ts";

/** Texts by their addresses. */
export type Texts = readonly (readonly [string, string])[];

/** Longer texts are cut: nobody learns more from them. In UTF-16 units. */
const LONGEST = 400;

/** The mood of one round after another. */
const MOODS = ["calm", "tidy", "tidy", "tidy", "declaring", "declaring", "calm", "wild"] as const;
/** Moods in which an edit has little read anew, so that very many can be looked at after each. */
const SHOWN: readonly string[] = ["calm", "tidy"];

function moodOf(round: number): (typeof MOODS)[number] {
  return MOODS[round % MOODS.length]!;
}

/** A stretch of a text, and what comes in its place. */
interface Replaced {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** A journal that is edited. What its texts are then, an editor's own document library says. */
class EditedJournal {
  journal: Journal;
  edits = 0;
  /** An editor shows its files, and asks for diagnostics after every other edit. */
  isShown = false;
  readonly #texts: Map<string, TextDocument>;
  readonly #gone = new Map<string, string>();
  readonly #undo = new Map<string, string[]>();

  constructor(texts: Texts) {
    this.#texts = new Map(texts.map(([uri, text]) => [uri, documentOf(uri, text)]));
    this.journal = new Journal(ROOT, new Map(texts.map(([uri, text]) => [uri, createDocument(text)])));
  }

  get texts(): Texts {
    return Array.from(this.#texts, ([uri, document]) => [uri, document.getText()]);
  }

  take(step: Step): void {
    const { file } = step;
    const text = this.#texts.get(file)?.getText();
    if (step.type === "toggled" || (text === undefined && step.type === "edit")) this.#toggle(file, text);
    else if (text === undefined) return;
    else if (step.type === "edit") this.#change(file, [longest(text) ?? replacedBy(text, step.edit)]);
    else if (step.type === "typed") this.#typed(file, step.at % (text.length + 1), step.text);
    else if (step.type === "moved") this.#moved(step, text);
    else if (step.type === "undone") this.#undone(file, text);
    else if (step.type === "whole") this.#whole(file, step.text);
    else answer(this.journal, step.question, file, step.at);
  }

  #toggle(file: string, text: string | undefined): void {
    this.edits++;
    const back = this.#gone.get(file) ?? "";
    if (text !== undefined) this.#gone.set(file, text);
    if (text === undefined) this.#texts.set(file, documentOf(file, back));
    else this.#texts.delete(file);
    this.journal = this.journal.with(file, text === undefined ? createDocument(back) : undefined);
  }

  #typed(file: string, at: number, text: string): void {
    for (const [i, character] of [...text].entries())
      this.#change(file, [{ start: at + i, end: at + i, text: character }]);
  }

  #moved({ file, day, to, at }: Extract<Step, { type: "moved" }>, text: string): void {
    const days = [...text.matchAll(/(?<=^|[\r\n])\d{4}-/g)].map(({ index }) => index);
    const target = this.#texts.get(to)?.getText();
    if (days.length === 0 || target === undefined) return;
    const first = day % days.length;
    const cut = { start: days[first]!, end: days[first + 1] ?? text.length };
    const moved = text.slice(cut.start, cut.end);
    if (to !== file) {
      this.#change(file, [{ ...cut, text: "" }]);
      this.#change(to, [pasted(target, at, moved)]);
    } else {
      const rest = text.slice(0, cut.start) + text.slice(cut.end);
      this.#change(file, [{ ...cut, text: "" }, pasted(rest, at, moved)]);
    }
  }

  #undone(file: string, text: string): void {
    const before = this.#undo.get(file)?.pop();
    if (before === undefined) return;
    let [start, same] = [0, 0];
    const shorter = Math.min(text.length, before.length);
    while (start < shorter && text[start] === before[start]) start++;
    while (same < shorter - start && text.at(-1 - same) === before.at(-1 - same)) same++;
    this.#change(file, [{ start, end: text.length - same, text: before.slice(start, before.length - same) }]);
    this.#undo.get(file)?.pop();
  }

  #whole(file: string, text: string): void {
    this.#applied(file, [{ text }]);
  }

  /** One edit; each change is seen by the next. Its places are those of the text before all. */
  #change(file: string, replaced: readonly Replaced[]): void {
    const document = documentOf(file, this.#texts.get(file)!.getText());
    const changes = replaced.map(({ start, end, text }) => {
      const change = { range: { start: document.positionAt(start), end: document.positionAt(end) }, text };
      TextDocument.update(document, [change], 2);
      return change;
    });
    this.#applied(file, changes);
  }

  #applied(file: string, changes: readonly TextChange[]): void {
    this.edits++;
    const document = this.#texts.get(file)!;
    const stack = this.#undo.get(file) ?? this.#undo.set(file, []).get(file)!;
    stack.push(document.getText());
    if (stack.length > 20) stack.shift();
    TextDocument.update(document, [...changes], document.version + 1);
    this.journal = this.journal.with(file, applyChanges(this.journal.files.get(file)!, changes));
    if (this.isShown && this.edits % 2 === 0) answer(this.journal, "typing", file, 0);
  }
}

function documentOf(uri: string, text: string): TextDocument {
  return TextDocument.create(uri, "practice-journal", 1, text);
}

function longest(text: string): Replaced | undefined {
  return text.length > LONGEST ? { start: 0, end: LONGEST / 2, text: "" } : undefined;
}

/** At the beginning of a line. */
function pasted(text: string, at: number, moved: string): Replaced {
  const starts = [0, ...[...text.matchAll(/\n/g)].map(({ index }) => index + 1)];
  const start = starts[at % starts.length]!;
  return { start, end: start, text: moved };
}

/** Reads texts that nobody read before. */
export type Fresh = (texts: Texts) => Journal;

const asWritten: Fresh = (texts) => new Journal(ROOT, new Map(texts.map(([uri, text]) => [uri, createDocument(text)])));

export interface Lived {
  readonly seed: number;
  /** At least so many. */
  readonly edits: number;
  /** After so many steps, most of them edits, the journal is held against a fresh one. */
  readonly every: number;
  readonly hands: readonly Hand[];
  readonly fresh?: Fresh;
}

export interface Report {
  readonly edits: number;
  readonly compared: number;
  /** What went wrong, with as few steps as show it. */
  readonly failure?: string;
}

/** A journal's life, in which three of the hands write; it ends at the first difference. */
export function life({ seed, edits, every, hands, fresh = asWritten }: Lived): Report {
  const writing = writingOf(fc.sample(fc.constantFrom(...hands), { seed, numRuns: 3 }), seed);
  const [texts] = fc.sample(writing.beginning, { seed, numRuns: 1 });
  const journal = new EditedJournal(ALL_FILES.map((uri, i) => [uri, texts![i]!]));
  for (let round = 1; ; round++) {
    const before = journal.texts;
    const steps = fc.sample(writing[moodOf(round)], { seed: seed * 1_000_003 + round, numRuns: every });
    const found = lived(journal, steps, round, fresh);
    const report = { edits: journal.edits, compared: round };
    if (found)
      return { ...report, failure: failureText({ seed, round, fresh, before, steps, found, at: journal.edits }) };
    if (journal.edits >= edits) return report;
  }
}

/** Takes the steps; what differs then from a fresh journal, or what was thrown on the way. */
function lived(journal: EditedJournal, steps: readonly Step[], round: number, fresh: Fresh): string | undefined {
  try {
    journal.isShown = SHOWN.includes(moodOf(round));
    for (const each of steps) journal.take(each);
    return difference(told(journal.journal, round), told(fresh(journal.texts), round));
  } catch (error) {
    return error instanceof Error ? error.stack : String(error);
  }
}

interface Failed {
  readonly seed: number;
  readonly round: number;
  readonly fresh: Fresh;
  readonly before: Texts;
  readonly steps: readonly Step[];
  readonly found: string;
  readonly at: number;
}

/** The failure from the last state that was equal, with as few of the steps since as show it; with all where more is needed. */
function failureText({ seed, round, fresh, before, steps, found, at }: Failed): string {
  const after = (some: readonly Step[]) => {
    const journal = new EditedJournal(before);
    told(journal.journal, round - 1); // it had been read
    return lived(journal, some, round, fresh);
  };
  let fewest = steps;
  let shown = after(steps);
  for (let i = steps.length - 1; shown && i >= 0; i--) {
    const fewer = fewest.filter((_, k) => k !== i);
    const still = after(fewer);
    if (still) [fewest, shown] = [fewer, still];
  }
  const lead = shown
    ? `The fewest steps show: ${shown}`
    : "It takes more than the steps since the two were last equal:";
  const head = [`Seed ${seed}, within ${at} edits, round ${round}: ${found}`, lead, JSON.stringify(before)];
  return [...head, ...fewest.map((each) => JSON.stringify(each))].join("\n");
}
