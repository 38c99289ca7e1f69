import type { Block } from "../syntax/document/document.ts";
import { type BodySays, bodySays } from "../syntax/line/body-words.ts";
import type { EntryLine, Line, LineOf } from "../syntax/line/line.ts";
import { LineWords } from "../syntax/line/line-words.ts";
import type { Vocabulary } from "../syntax/words/vocabulary.ts";
import type { Journal } from "./journal.ts";
import { isPlanRemark } from "./plan-remark.ts";

/** What a line of a day says of the body, in the player's words. */
export interface BodySaid {
  readonly says: BodySays;
  /** `sore left thumb`; of a remark all of it. */
  readonly words: string;
  /** Said in a remark, or in a sentence between the lines. */
  readonly remark: boolean;
  /** Within the block. */
  readonly line: number;
}

/** What a text says of the body; undefined where it says nothing of it. */
export function bodyOf(text: string, vocabulary: Vocabulary): BodySays | undefined {
  return bodySays(new LineWords(text, 0, text.length, [], vocabulary));
}

/**
 * Whether a remark is a reason to stay with the tempo that practice begins with: it speaks of being tired, or of a part
 * of the body. Undefined where it is none.
 */
export function easeAskedBy(remark: string, { vocabulary }: Journal): "tired" | "body" | undefined {
  const says = bodyOf(remark, vocabulary);
  if (says === "tired") return "tired";
  const words = new LineWords(remark, 0, remark.length, [], vocabulary);
  const names = says !== "eased" && words.first(0, words.count, "body-part", "body-trouble") >= 0;
  return names ? "body" : undefined;
}

/** Whether words name an arm, a hand, a leg, or parts of them, and no other part of the body. */
export function namesLimbsAlone(text: string, journal: Journal): boolean {
  return namesAlone("arm or leg", text, journal);
}

/** Whether words name the ears, or what rings in them, and no other part of the body. */
export function namesEarsAlone(text: string, journal: Journal): boolean {
  return namesAlone("ear", text, journal);
}

function namesAlone(part: string, text: string, { vocabulary }: Journal): boolean {
  const words = new LineWords(text, 0, text.length, [], vocabulary);
  const parts = Array.from({ length: words.count }, (_, i) => words.meaningOf(i, "body-part"));
  const named = parts.filter((each) => each !== undefined);
  return named.length > 0 && named.every((each) => each === part);
}

/** All that a day says of the body, in the order of its lines. What is set, asked or said by others is none of it. */
export function bodySaidIn(journal: Journal, block: Block): readonly BodySaid[] {
  return journal.memo.of(block, "body said", () => {
    const { lines } = journal.model(block);
    return lines.flatMap((line, at) => saidIn(line, block.lines[at]!, at, journal.vocabulary));
  });
}

function saidIn(line: Line, text: string, at: number, vocabulary: Vocabulary): readonly BodySaid[] {
  const said = (words: string, remark: boolean): readonly BodySaid[] => {
    const says = bodyOf(words, vocabulary);
    return says === undefined ? [] : [{ says, words: words.trim(), remark, line: at }];
  };
  const inRemark = line.remark && !isPlanRemark(line.remark.text) ? said(line.remark.text, true) : [];
  switch (line.type) {
    case "body": {
      const words = text.slice(line.start, line.end);
      const says = bodyOf(words, vocabulary) ?? (line.sore ? "hurts" : "tired");
      return [{ says, words, remark: false, line: at }, ...inRemark];
    }
    case "prose":
      return [...said(text.slice(line.start, line.end), true), ...inRemark];
    case "total":
      return [...said(behindTotal(line, text), false), ...inRemark];
    case "rest":
    case "day": {
      const parts = text.slice(line.type === "day" ? line.dateEnd : line.start, line.end).split(",");
      return [...parts.flatMap((part) => said(part, false)), ...inRemark];
    }
    case "entry":
      return [...soreIn(line, text, at), ...wordsLeft(line, text).flatMap((words) => said(words, false)), ...inRemark];
    case "set":
    case "said":
    case "asked":
    case "declaration":
      return [];
    default:
      return inRemark;
  }
}

/** What is said behind the amount of a total, or before it: `20 min and lips swolen`. */
function behindTotal({ start, end, items }: LineOf<"total">, text: string): string {
  const amount = items[0]!;
  const behind = text.slice(amount.end, end).replace(/^[\s,.;!?()–-]+/, "");
  return behind === "" ? text.slice(start, amount.start).trim() : behind;
}

/** `sore left thumb`, as the format has it. */
function soreIn({ items }: EntryLine, text: string, line: number): readonly BodySaid[] {
  return items.flatMap(({ start, end, meaning }) =>
    meaning.type === "sore" ? [{ says: "hurts" as const, words: text.slice(start, end), remark: false, line }] : [],
  );
}

/** What was kept of an entry as typed, in stretches. */
function wordsLeft({ items }: EntryLine, text: string): readonly string[] {
  return items.flatMap(({ start, end, meaning }) => (meaning.type === "unknown" ? [text.slice(start, end)] : []));
}
