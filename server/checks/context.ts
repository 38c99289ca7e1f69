import type { Conventions } from "../journal/conventions.ts";
import type { LineReader } from "../syntax/line/line-reader.ts";
import type { Vocabulary } from "../syntax/words/vocabulary.ts";
import type { Finding } from "./finding.ts";

/** What a check may look at beside the line itself: the journal's words, and what its declarations settle. */
export interface CheckContext {
  readonly vocabulary: Vocabulary;
  readonly memo: LineReader;
  readonly conventions: Conventions;
}

/** One line and where it stands: `head` is above the first day. */
export interface LineContext extends CheckContext {
  readonly text: string;
  readonly head: boolean;
}

/** A finding and the line of the block that it stands on. */
export interface LineFinding extends Finding {
  readonly line: number;
}
