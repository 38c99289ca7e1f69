import { nameKey } from "../../syntax/words/fold.ts";
import type { Vocabulary } from "../../syntax/words/vocabulary.ts";
import { type NameStretch, stretchesOf, withinQuotes } from "./name-stretches.ts";
import { isCalled, type Mention, type NameKind } from "./named.ts";

/** Columns of a line, the end excluded. */
export interface Stretch {
  readonly start: number;
  readonly end: number;
}

/** What one line names, as it is found. */
export class MentionList {
  private readonly found: Mention[] = [];

  constructor(
    readonly text: string,
    private readonly line: number,
    readonly vocabulary: Vocabulary,
  ) {}

  /** From left to right. */
  get inOrder(): readonly Mention[] {
    return this.found.sort((a, b) => a.start - b.start);
  }

  /** Wherever a name stands within a stretch. */
  addNamed(kind: NameKind, { start, end }: Stretch, name: string): void {
    for (const at of stretchesOf(this.text, start, end, name)) this.add(kind, at, { name });
  }

  /** The place at which something is declared: the first within the stretch. */
  addDeclared(kind: NameKind, { start, end }: Stretch, name: string): void {
    const [at] = stretchesOf(this.text, start, end, name);
    if (at) this.add(kind, at, { name, isDeclaration: true });
  }

  /** A title, by its own words, its short name or some of its words. */
  addTitle(at: Stretch | NameStretch, title: string, isDeclaration = false): void {
    const stretch = "isQuoted" in at ? at : withinQuotes(this.text, at);
    const words = this.text.slice(stretch.start, stretch.end);
    const { short } = this.vocabulary.declared.titles.find((each) => each.title === title) ?? {};
    const form = isCalled(words, title) ? "whole" : short && isCalled(words, short) ? "short name" : "short form";
    this.add("title", stretch, { name: title, isDeclaration, form });
  }

  /** A stretch that is the name, or is it in quotes. */
  add(kind: NameKind, at: Stretch | NameStretch, more: Partial<Mention> & { readonly name: string }): void {
    const stretch = "isQuoted" in at ? at : withinQuotes(this.text, at);
    if (stretch.start >= stretch.end) return;
    const { start, end, isQuoted } = stretch;
    const own = { kind, key: nameKey(more.name), line: this.line, start, end, isQuoted };
    this.found.push({ isDeclaration: false, form: "whole", ...own, ...more });
  }
}
