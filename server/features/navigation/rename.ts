import { dayOfBlock } from "../../journal/day-of-block.ts";
import type { Journal } from "../../journal/journal.ts";
import { readForTitles } from "../../journal/titles/journal-titles.ts";
import { applyChanges, type Block, type Document, type Position } from "../../syntax/document/document.ts";
import { phraseKey } from "../../syntax/words/fold.ts";
import { type Refusal, refusal } from "../explain/refusal.ts";
import type { TextEdit } from "../types.ts";
import { declarationsOf, type PlacedMention } from "./declarations.ts";
import { rangeOn } from "./named.ts";
import { blocksOf, hasWords, sought, type WordsSought, wordsNaming } from "./named-blocks.ts";
import { faultOfName, nameTyped } from "./new-name.ts";
import { newSpellings, type Renaming } from "./new-spelling.ts";
import { placesOfName } from "./places-of-name.ts";
import { type Renameable, renameableAt } from "./prepare-rename.ts";
import { renameTexts } from "./rename-texts.ts";
import { saidButForName } from "./said-but-for-name.ts";

/** Edits by file, in the order of the journal's files; none where the name stays. */
export interface Renamed {
  readonly ok: true;
  readonly files: readonly { readonly uri: string; readonly edits: readonly TextEdit[] }[];
}

/**
 * Calls what stands at a position otherwise, wherever the journal names it, or says why that cannot be. Each line that
 * could be touched is read again with the new name, and must say what it said before. In steps, as the whole journal
 * may have to be read.
 *
 * @param typed the new name, with quotes or without
 */
export function* renameAt(
  journal: Journal,
  uri: string,
  position: Position,
  typed: string,
): Generator<void, Renamed | Refusal> {
  const found = yield* renameableAt(journal, uri, position);
  if (!found.ok) return found;
  const after = nameTyped(typed);
  if (after === found.called) return { ok: true, files: [] };
  const fault = faultOfName(journal, found.name, found.called, after);
  if (fault) return fault;
  const places = yield* placesOfName(journal, found.name);
  return yield* new Rename(journal, uri, found, after, places).answer();
}

/** A mention that is to be rewritten, and what may be written there. */
interface Rewriting {
  readonly place: PlacedMention;
  readonly spellings: readonly string[];
  /** Which of them is tried. */
  choice: number;
}

/** What the lines of a block said. */
interface BlockSaid {
  readonly uri: string;
  /** Of the block in its file: a rename takes no line away. */
  readonly index: number;
  readonly lines: readonly string[];
}

/** An absolute line that would say something else, and its day. */
interface LineChanged {
  readonly uri: string;
  readonly day: number;
  readonly line: number;
}

/** So often one line alone is written otherwise, where others may go by it; after that all that need it. */
const ONE_BY_ONE = 12;

/** What the new name comes to, and the ways to write it that were tried. */
class Rename {
  private readonly renaming: Renaming;
  private readonly rewritings: readonly Rewriting[];
  private readonly isDeclared: boolean;

  constructor(
    private readonly journal: Journal,
    private readonly uri: string,
    private readonly found: Renameable,
    after: string,
    places: readonly PlacedMention[],
  ) {
    this.isDeclared = declarationsOf(journal, found.name).length > 0;
    this.renaming = { before: found.called, after, form: found.form };
    this.rewritings = places
      .filter(({ mention }) => (mention.form === "short name") === (found.form === "short name"))
      .map((place) => ({ place, spellings: this.spellingsAt(place), choice: 0 }));
  }

  private spellingsAt({ block, mention }: PlacedMention): readonly string[] {
    const typed = block.lines[mention.line]!.slice(mention.start, mention.end);
    return mention.isDeclaration ? [this.renaming.after] : newSpellings(typed, mention, this.renaming);
  }

  *answer(): Generator<void, Renamed | Refusal> {
    let trial = this.tried(this.journal);
    const before = yield* this.saidBefore(trial);
    for (let round = 1; ; round++) {
      const wrong = yield* this.linesThatChange(trial, before);
      if (wrong.length === 0) return { ok: true, files: this.edits() };
      const refused = this.respell(round <= ONE_BY_ONE && !this.isDeclared ? wrong.slice(0, 1) : wrong);
      if (refused) return refused;
      trial = this.tried(trial);
    }
  }

  /** Takes the next spelling of what is rewritten on some lines. Where a line has none left, no name will do. */
  private respell(lines: readonly LineChanged[]): Refusal | undefined {
    for (const line of lines) if (!this.tryOther(line)) return this.refused(line);
    return undefined;
  }

  private tryOther({ uri, line }: LineChanged): boolean {
    const there = this.rewritings.filter(({ place }) => place.uri === uri && place.first + place.mention.line === line);
    const left = there.filter(({ spellings, choice }) => choice + 1 < spellings.length);
    for (const rewriting of left) rewriting.choice++;
    return left.length > 0;
  }

  private refused({ uri, line }: LineChanged): Refusal {
    return refusal(uri === this.uri ? renameTexts.otherMeaningOn(line + 1) : renameTexts.otherMeaningElsewhere);
  }

  private edits(): Renamed["files"] {
    return this.journal.addresses.flatMap((uri) => {
      const edits = this.editsOf(uri);
      return edits.length > 0 ? [{ uri, edits }] : [];
    });
  }

  private editsOf(uri: string): readonly TextEdit[] {
    return this.rewritings.flatMap(({ place, spellings, choice }) => {
      const { mention, first, block } = place;
      const newText = spellings[choice]!;
      const isSame = block.lines[mention.line]!.slice(mention.start, mention.end) === newText;
      return place.uri === uri && !isSame ? [{ range: rangeOn(first + mention.line, mention), newText }] : [];
    });
  }

  /** What the lines of the blocks say now that a name may bear on. */
  private *saidBefore(trial: Journal): Generator<void, readonly BlockSaid[]> {
    const words = this.wordsThatBear(trial);
    const said: BlockSaid[] = [];
    for (const { uri, index, block } of blocksOf(this.journal)) {
      yield;
      if (!block.day || hasWords(block, words))
        said.push({ uri, index, lines: this.saidIn(this.journal, block, this.renaming.before) });
    }
    return said;
  }

  private saidIn(journal: Journal, block: Block, called: string): readonly string[] {
    return saidButForName(journal.readOnce(block), this.found.name.kind, called);
  }

  /** The words of both names. What is declared bears on lines with some of its words, too: see `Vocabulary`. */
  private wordsThatBear(trial: Journal): readonly WordsSought[] {
    const { before, after } = this.renaming;
    const { name } = this.found;
    const states = [this.journal, trial].map(({ vocabulary }) => vocabulary);
    const naming = [name, { ...name, name: after }].flatMap((each) =>
      states.flatMap((vocabulary) => wordsNaming(each, vocabulary)),
    );
    const called = [...naming, sought(before), sought(after)];
    if (!this.isDeclared) return called;
    const words = [before, after].flatMap((each) => each.split(/[\s-]+/)).map(phraseKey);
    const slips = words.filter((word) => states.some((vocabulary) => vocabulary.standard(word) !== undefined));
    const [old, now] = states.map((vocabulary) => vocabulary.numbersInNames);
    const numbers = [...old!, ...now!].filter((number) => old!.has(number) !== now!.has(number));
    return [...called, ...[...slips, ...numbers].map(sought)];
  }

  /** The lines that would say something else, the earliest first: a title is learnt from the first that has it. */
  private *linesThatChange(trial: Journal, before: readonly BlockSaid[]): Generator<void, readonly LineChanged[]> {
    yield* readForTitles(trial);
    const changed: LineChanged[] = [];
    for (const { uri, index, lines } of before) {
      yield;
      const { blocks, starts } = trial.files.get(uri)!;
      const block = blocks[index]!;
      const day = dayOfBlock(block) ?? Number.NEGATIVE_INFINITY;
      const now = this.saidIn(trial, block, this.renaming.after);
      for (const [i, said] of lines.entries())
        if (now[i] !== said) changed.push({ uri, day, line: starts[index]! + i });
    }
    return changed.sort((a, b) => a.day - b.day || a.line - b.line);
  }

  /** The journal with the edits made. Where words are declared it is read apart, so that nothing is forgotten here. */
  private tried(from: Journal): Journal {
    const changes = this.edits().map(({ uri, edits }) => [uri, applied(this.journal.files.get(uri)!, edits)] as const);
    return this.isDeclared && from === this.journal ? from.apart(changes) : from.withAll(changes);
  }
}

function applied(document: Document, edits: readonly TextEdit[]): Document {
  return applyChanges(
    document,
    [...edits].reverse().map(({ range, newText }) => ({ range, text: newText })),
  );
}
