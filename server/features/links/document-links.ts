import type { Journal } from "../../journal/journal.ts";
import type { Block } from "../../syntax/document/document.ts";
import type { Line } from "../../syntax/line/line.ts";
import { LONGEST_LINE } from "../../syntax/line/line-reader.ts";
import type { Range } from "../types.ts";
import { addressesIn, filePathsIn, type LinkInText, type LinkTarget, mayHoldLink } from "./links-in-text.ts";

export interface DocumentLink {
  readonly range: Range;
  readonly target: LinkTarget;
}

/**
 * The links of a file, in its order: addresses on any line, and paths of files beside the journal in what is free
 * words: remarks, prose, what is set, said or asked. A path does not lead out of the journal's folder. Whether anything
 * is there is not looked for.
 */
export function documentLinks(journal: Journal, uri: string): readonly DocumentLink[] {
  const document = journal.files.get(uri);
  if (!document) return [];
  const depth = depthBelow(journal.root, uri);
  return document.blocks.flatMap((block, i) =>
    linksOf(journal, block)
      .filter(({ target }) => target.type === "address" || staysBelow(target.path, depth))
      .map(({ line, start, end, target }) => {
        const at = document.starts[i]! + line;
        return { range: { start: { line: at, character: start }, end: { line: at, character: end } }, target };
      }),
  );
}

interface LinkOfBlock extends LinkInText {
  /** From 0, within the block. */
  readonly line: number;
}

/** Found once: a day that no edit touched is not looked at again, and most days are not read for it. */
function linksOf(journal: Journal, block: Block): readonly LinkOfBlock[] {
  return journal.memo.of(block, "links", () => {
    if (!mayHoldLink(block.text)) return NONE;
    const { lines } = journal.ownModel(block);
    return block.lines.flatMap((text, line) => linksOn(text, lines[line]!).map((link) => ({ ...link, line })));
  });
}

const NONE: readonly LinkOfBlock[] = [];

function linksOn(text: string, line: Line): readonly LinkInText[] {
  if (text.length > LONGEST_LINE || !mayHoldLink(text)) return [];
  const addresses = addressesIn(text);
  const from = freeFrom(line);
  const paths = from === undefined ? [] : filePathsIn(text.slice(from)).map((link) => moved(link, from));
  const own = paths.filter(({ start, end }) => addresses.every((each) => end <= each.start || each.end <= start));
  return [...addresses, ...own].sort((a, b) => a.start - b.start);
}

/** Where the free words of a line begin; undefined where it has none. */
function freeFrom(line: Line): number | undefined {
  switch (line.type) {
    case "remark":
    case "prose":
    case "body":
    case "rest":
    case "set":
    case "said":
    case "asked":
      return "start" in line ? line.start : undefined;
    default:
      return line.remark?.start;
  }
}

function moved({ start, end, target }: LinkInText, by: number): LinkInText {
  return { start: start + by, end: end + by, target };
}

/** How many folders a file lies below the journal's; undefined where it lies in no folder, as a text without a name. */
function depthBelow(root: string, uri: string): number | undefined {
  const path = /^[a-z][a-z0-9+.-]*:\/\/[^/]*(\/.*)$/is.exec(uri)?.[1];
  if (path === undefined) return undefined;
  return uri.startsWith(`${root}/`) ? uri.slice(root.length + 1).split("/").length - 1 : 0;
}

function staysBelow(path: readonly string[], depth: number | undefined): boolean {
  return depth !== undefined && path.filter((step) => step === "..").length <= depth;
}
