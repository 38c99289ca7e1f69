/** Where a link leads to. */
export type LinkTarget =
  /** As it was written. */
  | { readonly type: "address"; readonly address: string }
  /** From the folder of the journal's file: names of folders, `..` for the one above, and the file's at the end. */
  | { readonly type: "file"; readonly path: readonly string[] };

/** UTF-16 columns, the end excluded. */
export interface LinkInText {
  readonly start: number;
  readonly end: number;
  readonly target: LinkTarget;
}

/** What a player keeps beside a journal: scores, pictures, sound, film and texts, by the endings of their files. */
const ENDINGS = [
  ...["pdf", "musicxml", "mxl", "ly", "midi"],
  ...["png", "jpg", "jpeg", "gif", "webp", "svg", "heic", "tif", "tiff"],
  ...["mp3", "m4a", "wav", "flac", "ogg", "opus", "aac", "aif", "aiff"],
  ...["mp4", "m4v", "mov", "webm", "mkv"],
  ...["txt", "md", "html", "htm", "csv", "odt", "docx", "practice"],
].join("|");

const SCHEMES = "https?://|mailto:";
const MAY_LINK = new RegExp(`${SCHEMES}|\\.(?:${ENDINGS})(?![\\p{L}\\p{N}])`, "iu");

/** Told at once for a text of any length: whether there may be a link in it. */
export function mayHoldLink(text: string): boolean {
  return MAY_LINK.test(text);
}

const QUOTES = '"“”„«»‟';
const ADDRESS = new RegExp(`(?<![\\p{L}\\p{N}])(?:${SCHEMES})[^\\s<>${QUOTES}]+`, "giu");
/** A host, or a mailbox, of at least one letter or figure (RFC 3986, 3; RFC 6068, 2). */
const COMPLETE = /^(?:https?:\/\/(?:[^/?#@]*@)?[\p{L}\p{N}[][^/?#]*|mailto:[^@\s]+@[^@\s]*[\p{L}\p{N}])/iu;

/** `https://`, `http://` and `mailto:` addresses, without the signs of the sentence around them. */
export function addressesIn(text: string): readonly LinkInText[] {
  return [...text.matchAll(ADDRESS)].flatMap(({ 0: found, index }): LinkInText[] => {
    const address = withoutSentence(found);
    return COMPLETE.test(address)
      ? [{ start: index, end: index + address.length, target: { type: "address", address } }]
      : [];
  });
}

const PAIRS: Readonly<Record<string, string>> = { ")": "(", "]": "[", "}": "{" };

/** A full stop at the end is the sentence's, and so is a bracket that opens before the address. */
function withoutSentence(found: string): string {
  let end = found.length;
  for (;;) {
    const last = found[end - 1]!;
    const opening = PAIRS[last];
    const own = found.slice(0, end);
    const isOutside = opening !== undefined && own.split(last).length > own.split(opening).length;
    if (end > 1 && (isOutside || ".,;:!?'’…".includes(last))) end--;
    else return own;
  }
}

const QUOTED_OR_WORD = new RegExp(`[${QUOTES}]([^${QUOTES}]+)[${QUOTES}]|[^\\s${QUOTES}()<>[\\]]+`, "gu");
/** No drive, no scheme, no home folder, and nothing that a file system keeps for itself. */
const PATH = new RegExp(
  `^(?!~)(?:[^\\s/\\\\:*?|][^/\\\\:*?|]*/)*[^\\s./\\\\:*?|][^/\\\\:*?|]*\\.(?:${ENDINGS})$`,
  "iu",
);

/** Paths of files beside the journal: `score.pdf`, `scores/Ground.pdf`; with spaces in quotes. */
export function filePathsIn(text: string): readonly LinkInText[] {
  return [...text.matchAll(QUOTED_OR_WORD)].flatMap(({ 0: found, 1: quoted, index }): LinkInText[] => {
    const start = quoted === undefined ? index : index + 1;
    const path = quoted ?? found.replace(/[.,;:!?'’…]+$/, "");
    if (!PATH.test(path)) return [];
    return [{ start, end: start + path.length, target: { type: "file", path: steps(path) } }];
  });
}

/** `scores/../Ground.pdf` is `Ground.pdf`. */
function steps(path: string): readonly string[] {
  const found: string[] = [];
  for (const step of path.split("/")) {
    if (step === ".") continue;
    if (step === ".." && found.length > 0 && found.at(-1) !== "..") found.pop();
    else found.push(step);
  }
  return found;
}
