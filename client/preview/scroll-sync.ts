import { Range, type TextEditor, TextEditorRevealType, Uri, window, workspace } from "vscode";
import type { PreviewPlace } from "../../shared/preview.ts";
import { SCROLL_SETTINGS } from "./scroll-settings.ts";

/** How long a text must not have been scrolled, in milliseconds, before the page goes after it. */
const REST = 120;
/** So long, in milliseconds, what a text does may still come of having been scrolled by the page. */
const LED = 1000;
/** At so many lines of a text one looks for something that the page shows. */
const TRIES = 3;
/** A day, a remark, nothing: the page shows nothing for these. */
const BARE = /^\s*(?:$|--|\d{4}-\d{2}-\d{2})/;

/** What the page shows for a line: the key of its exercise, and the line by which it is found. */
export interface ShownForLine {
  readonly underCursor: string | null;
  readonly shownBy: PreviewPlace | null;
}

/** What the scrolling asks of the preview around it. */
export interface ScrollAround {
  /** The document that goes with the page. */
  readonly document: Uri;
  /** Whether the page shows it, though perhaps folded away. */
  shows(shown: ShownForLine): boolean;
  /** Brings it into sight, whichever has the focus. */
  bring(shown: ShownForLine): void;
  /** Undefined while the page shows nothing, or where the server cannot say. */
  shownFor(line: number): Promise<ShownForLine | undefined>;
}

/**
 * Page and text go after each other, each by a setting of its own.
 *
 * A journal is by day, the page by exercise: there is no place in the one that is half down the other. What corresponds
 * is a row and the lines of its exercise. So the page goes to the exercise, piece, set work, question or aim of the
 * line that is looked at: that of the cursor, or the one in the middle of the text where the cursor has been scrolled
 * out of sight. Days and remarks leave it where it is, and so does what is in sight already. The text goes to the line
 * on which that was last played which comes first in the page. Its cursor stays, so that it is a way of looking and no
 * more, and what leads nowhere in a text that is in sight opens none.
 *
 * Neither follows what it brought about itself: the page says only where its reader scrolled, and a text that the page
 * has scrolled is left alone until it is there.
 */
export class ScrollSync {
  readonly #around: ScrollAround;
  #brought: string | undefined;
  /** Typing on a line does not take the page's reader back to it. */
  #atCursor: string | undefined;
  /** Brings the page to the cursor whatever it was brought to, and whatever the setting says. */
  #wanted = false;
  /** The page comes back with a window, to where it was. */
  #isBack: boolean;
  #led: { readonly line: number; readonly until: number } | undefined;
  #resting: ReturnType<typeof setTimeout> | undefined;
  #looked = 0;

  constructor(around: ScrollAround, { isBack }: { readonly isBack: boolean }) {
    this.#around = around;
    this.#isBack = isBack;
  }

  /** The next that is shown of the cursor is wanted in sight: somebody asked for it. */
  want(): void {
    this.#wanted = true;
  }

  /** The page was told what stands at the cursor. */
  cursorShown(shown: ShownForLine): void {
    clearTimeout(this.#resting);
    const stays = this.#isBack || nameOf(shown) === this.#atCursor;
    this.#isBack = false;
    this.#atCursor = nameOf(shown);
    if (this.#wanted || (!stays && this.#isSet("scrollWithEditor"))) this.#bring(shown);
    this.#wanted = false;
  }

  /** A text that goes with the page was scrolled, by a person or by an edit. */
  textScrolled(editor: TextEditor): void {
    if (this.#isLed(editor) || !this.#isSet("scrollWithEditor")) return;
    clearTimeout(this.#resting);
    this.#resting = setTimeout(() => void this.#goAfter(editor), REST);
  }

  /** The reader scrolled the page: the text goes to the line of what comes first in it, if it is in sight. */
  pageScrolled({ uri, line }: PreviewPlace): void {
    if (!this.#isSet("scrollEditor")) return;
    const address = Uri.parse(uri).toString();
    const editor = window.visibleTextEditors.find(({ document }) => document.uri.toString() === address);
    if (!editor || line >= editor.document.lineCount || isInSight(editor, line)) return;
    this.#led = { line, until: Date.now() + LED };
    editor.revealRange(new Range(line, 0, line, 0), TextEditorRevealType.InCenter);
  }

  dispose(): void {
    clearTimeout(this.#resting);
  }

  async #goAfter(editor: TextEditor): Promise<void> {
    this.#looked += 1;
    const look = this.#looked;
    for (const line of linesLookedAt(editor)) {
      const shown = await this.#around.shownFor(line);
      if (!shown || look !== this.#looked) return;
      if (!this.#around.shows(shown)) continue;
      if (nameOf(shown) !== this.#brought) this.#bring(shown);
      return;
    }
  }

  #bring(shown: ShownForLine): void {
    this.#brought = nameOf(shown);
    if (this.#around.shows(shown)) this.#around.bring(shown);
  }

  /** Whether it is on its way to where the page has led it; once it is there, a person scrolls it again. */
  #isLed(editor: TextEditor): boolean {
    const led = this.#led;
    if (!led || Date.now() > led.until) return false;
    if (isInSight(editor, led.line)) this.#led = undefined;
    return true;
  }

  #isSet(name: keyof typeof SCROLL_SETTINGS): boolean {
    const settings = workspace.getConfiguration("daystave.preview", this.#around.document);
    return settings.get(name, SCROLL_SETTINGS[name]);
  }
}

/** An exercise is the same on all its lines. */
function nameOf({ underCursor, shownBy }: ShownForLine): string {
  return underCursor ?? `${shownBy?.line} ${shownBy?.uri}`;
}

/** That of the cursor; where it is out of sight, those in the middle that say something, the nearest first. */
function linesLookedAt({ document, selection, visibleRanges }: TextEditor): readonly number[] {
  const cursor = selection.active.line;
  const lines = visibleRanges.flatMap(({ start, end }) =>
    Array.from({ length: end.line - start.line + 1 }, (_, at) => start.line + at),
  );
  if (lines.includes(cursor)) return [cursor];
  const middle = lines[Math.floor(lines.length / 2)] ?? cursor;
  return lines
    .filter((line) => line < document.lineCount && !BARE.test(document.lineAt(line).text))
    .sort((a, b) => Math.abs(a - middle) - Math.abs(b - middle))
    .slice(0, TRIES);
}

function isInSight({ visibleRanges }: TextEditor, line: number): boolean {
  return visibleRanges.some(({ start, end }) => start.line <= line && line <= end.line);
}
