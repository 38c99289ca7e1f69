/**
 * What was made of texts, kept by the text in about so many bytes at most. Entries come into a young generation; when
 * that holds half of the bytes, it becomes the old one, and what was old and not asked for since is gone.
 */
export class BoundedMemo<T extends NonNullable<unknown> | null> {
  private young = new Map<string, T>();
  private old = new Map<string, T>();
  private youngBytes = 0;

  /** @param bytesOf about how many bytes a value takes, besides its text */
  constructor(
    private readonly mostBytes: number,
    private readonly bytesOf: (value: T) => number = () => USUAL_BYTES,
  ) {}

  /**
   * The value of a text, made where none is kept. It is made of the memo's own copy of the text: pieces of that keep
   * nothing else alive.
   */
  of(text: string, make: (text: string) => T): T {
    const known = this.get(text);
    if (known !== undefined) return known;
    const own = ownCopy(text);
    const value = make(own);
    this.add(own, value);
    return value;
  }

  get(text: string): T | undefined {
    const young = this.young.get(text);
    if (young !== undefined) return young;
    const old = this.old.get(text);
    if (old !== undefined) this.add(ownCopy(text), old);
    return old;
  }

  set(text: string, value: T): void {
    this.add(ownCopy(text), value);
  }

  private add(text: string, value: T): void {
    const bytes = ENTRY_BYTES + 2 * text.length + this.bytesOf(value);
    if (bytes > this.mostBytes / 2) return;
    if (this.youngBytes + bytes > this.mostBytes / 2) {
      this.old = this.young;
      this.young = new Map();
      this.youngBytes = 0;
    }
    this.young.set(text, value);
    this.youngBytes += bytes;
  }
}

/** Of a place in a map and the text's own object; of a small value. */
const ENTRY_BYTES = 64;
const USUAL_BYTES = 128;

/**
 * A text that is cut out of another keeps the whole of that alive: a word of a journal the whole file. Joined with
 * something and cut again it stands by itself (test/syntax/words/bounded-memo.test.ts).
 */
function ownCopy(text: string): string {
  return ` ${text}`.slice(1);
}
