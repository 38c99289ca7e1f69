import type { PreviewPlace } from "../../../shared/preview.ts";
import { firstPlaceBelow } from "./places.ts";

/** Milliseconds of rest after which the page has been scrolled. */
const REST = 150;

/** Tells when the page was scrolled, and where the reader did that: what the page does to itself is not theirs. */
export class Scrolling {
  /** How many changes of the page's own may still scroll it. */
  #own = 0;
  #isTheirs = false;
  #resting: ReturnType<typeof setTimeout> | undefined;

  /**
   * @param rested called whenever the page has come to rest
   * @param read called after that where the reader scrolled it, with the line that is led to below the row of links
   */
  constructor(rested: () => void, read: (place: PreviewPlace) => void) {
    window.addEventListener("scroll", () => {
      this.#isTheirs ||= this.#own === 0;
      clearTimeout(this.#resting);
      this.#resting = setTimeout(() => {
        rested();
        const place = this.#isTheirs ? firstPlaceBelow(topOfPage()) : undefined;
        this.#isTheirs = false;
        if (place) read(place);
      }, REST);
    });
  }

  /** Changes the page, which may scroll it: the browser tells of that before the next picture or the one after. */
  quietly<T>(change: () => T): T {
    this.#own += 1;
    requestAnimationFrame(() => requestAnimationFrame(() => (this.#own -= 1)));
    return change();
  }
}

/** Brings something into the middle of the page where it is not in sight below the row of links. The focus stays. */
export function bringIntoSight(target: HTMLElement): void {
  const { top, bottom } = target.getBoundingClientRect();
  if (bottom <= topOfPage() || top >= window.innerHeight) target.scrollIntoView({ block: "center" });
}

/** Where what can be read begins, in pixels from the top of the window: the row of links stays in sight. */
function topOfPage(): number {
  return Math.max(0, document.querySelector("nav")?.getBoundingClientRect().bottom ?? 0);
}
