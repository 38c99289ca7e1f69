import type { Position } from "../../syntax/document/document.ts";
import { type Refusal, refusal } from "../explain/refusal.ts";
import type { TextEdit } from "../types.ts";
import { commandTexts } from "./command-texts.ts";

/**
 * What a command on the text comes to: edits of one file, and where the cursor goes; or a sentence that says why not.
 */
export type CommandAnswer = CommandDone | Refusal;

export interface CommandDone {
  readonly ok: true;
  /** The file that is edited and shown: most often, not always, the one that was asked about. */
  readonly uri: string;
  /** None where the cursor only goes somewhere, or the file is a new one. */
  readonly edits: readonly TextEdit[];
  /** The text of the file, where that is made by the command. */
  readonly created?: string;
  /** Edits of further files, which are not shown. */
  readonly also?: readonly { readonly uri: string; readonly edits: readonly TextEdit[] }[];
  /** In the text after the edits. */
  readonly cursor: Position;
  /** What to tell beside: it holds no words of the journal's but plain ones. */
  readonly note?: string;
}

/** For commands that play what a declaration says. */
export const UNREADABLE_DECLARATION = refusal(commandTexts.unreadableDeclaration);
