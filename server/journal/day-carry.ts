import type { EntryLine, Line } from "../syntax/line/line.ts";
import type { PartContext } from "../syntax/line/parts.ts";
import { sameAs } from "./same-as-above.ts";

type Spoken = "set" | "said" | "asked";

/** What of a day holds for the lines below it. Lines are told one after another, each as it is read by itself. */
export class DayCarry {
  /** What the lines are, up to a blank line, a heading or a day. */
  private spoken: Spoken | undefined;
  /** The entry above, as it reads in its day. */
  private above: EntryLine | undefined;
  // The same, where it was not read as a whole yet.
  private text = "";
  private from = 0;
  private to = -1;

  /** @param readLine reads a line of a day by itself */
  constructor(
    private readonly context: PartContext,
    private readonly readLine: (text: string) => Line,
  ) {}

  begin(): void {
    this.spoken = undefined;
    this.above = undefined;
    this.to = -1;
  }

  /** Lines below a bare `homework:` are set work, whatever they would be by themselves. */
  get isOpen(): boolean {
    return this.spoken !== undefined;
  }

  /** A blank line, a heading or a day. */
  end(): void {
    this.spoken = undefined;
  }

  /** An entry that goes on with nothing above it; it need not be read where no line asks for it. */
  pass(text: string, from: number, to: number): void {
    this.text = text;
    this.from = from;
    this.to = to;
  }

  /** The line as it reads where it stands. */
  read(line: Line, text: string): Line {
    switch (line.type) {
      case "blank":
      case "day":
      case "session":
      case "phase":
        this.end();
        return line;
      case "set":
      case "said":
      case "asked":
        if (line.opens) this.spoken = line.type;
        return line;
      case "remark":
      case "body":
      case "plan":
      case "declaration":
      case "near declaration":
      case "conflict marker":
      case "too long":
        return line;
    }
    if (this.spoken) {
      const { start, end, remark } = line;
      return { type: this.spoken, start, end, from: start, remark, follows: true };
    }
    if (line.type !== "entry") return line;
    const read = line.same ? this.going(line, text) : this.ofPieceAbove(line, text);
    if (read.type !== "entry") return read;
    this.above = read;
    this.to = -1;
    return read;
  }

  private going(line: EntryLine, text: string): Line {
    const above = this.entryAbove();
    if (above?.subject) return { ...sameAs(line, text, above, this.context), follows: true };
    const { start, end, subject, remark } = line;
    return subject ? { ...line, follows: true } : { type: "prose", start, end, remark, follows: true };
  }

  /** `bars 9-12, 50 then 56` below a piece is of that piece. */
  private ofPieceAbove(line: EntryLine, text: string): Line {
    if (line.subject || line.items[0]?.meaning.type !== "place") return line;
    const above = this.entryAbove();
    const { start } = line;
    if (above?.subject?.meaning.type !== "title") return { ...line, follows: true };
    return {
      ...sameAs({ ...line, same: { start, end: start, terms: true } }, text, above, this.context),
      follows: true,
    };
  }

  private entryAbove(): EntryLine | undefined {
    if (this.to >= 0) {
      const line = this.readLine(this.text.slice(this.from, this.to));
      this.above = line.type === "entry" ? line : undefined;
      this.to = -1;
    }
    return this.above;
  }
}
