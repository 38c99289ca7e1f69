import type { Conventions } from "../journal/conventions.ts";
import type { BlockModel } from "../journal/model.ts";
import type { Vocabulary } from "../syntax/vocabulary.ts";
import type { Finding } from "./finding.ts";

/** What a check of one block may look at: the block's text and model, and what the journal's declarations settle. */
export interface BlockContext {
  readonly texts: readonly string[];
  readonly model: BlockModel;
  readonly vocabulary: Vocabulary;
  readonly conventions: Conventions;
}

/** A finding and the line of the block that it stands on. */
export interface LineFinding extends Finding {
  readonly line: number;
}

export type BlockCheck = (context: BlockContext) => readonly LineFinding[];

/** The same findings on a line. */
export function onLine(line: number, findings: readonly Finding[]): readonly LineFinding[] {
  return findings.map((finding) => ({ ...finding, line }));
}
