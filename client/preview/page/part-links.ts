import { element } from "./element.ts";
import { pageTexts } from "./page-texts.ts";

/** A part of the page, as its link is called. */
export interface LinkedPart {
  readonly words: string;
  readonly section: HTMLElement;
}

/** Fewer parts than these are found without links. */
const FEWEST = 3;
/** So far below the row a part must begin to be the one that is read, in pixels. */
const BELOW = 24;

/** The row of links to the parts, which stays in sight; the part that is read is marked. */
export class PartLinks {
  readonly row = element("nav", { "aria-label": pageTexts.parts });
  #links: { readonly link: HTMLAnchorElement; readonly section: HTMLElement }[] = [];
  /** The part whose link was pressed: it is the one that is read as long as its heading is in sight. */
  #chosen: HTMLElement | undefined;

  constructor() {
    window.addEventListener("scroll", () => this.mark(), { passive: true });
    this.row.addEventListener("keydown", (event) => this.#step(event));
  }

  show(parts: readonly LinkedPart[]): void {
    const same =
      parts.length === this.#links.length && parts.every(({ section }, at) => this.#links[at]?.section === section);
    if (!same) {
      this.#links = parts.map(({ words, section }) => ({ section, link: this.#linkTo(words, section) }));
      this.row.replaceChildren(...this.#links.map(({ link }) => link));
      this.row.hidden = parts.length < FEWEST;
    }
    this.mark();
  }

  /** Marks the link of the part that is read: the last one in its column that begins above the fold of the row. */
  mark(): void {
    const edge = this.row.getBoundingClientRect().bottom + BELOW;
    const isShown = ({ section }: { readonly section: HTMLElement }) => {
      const { top, bottom } = section.getBoundingClientRect();
      return section === this.#chosen ? top < window.innerHeight && bottom > edge : false;
    };
    const chosen = this.#links.find(isShown);
    if (!chosen) this.#chosen = undefined;
    const current =
      chosen ?? this.#links.find(({ section }) => section.getBoundingClientRect().bottom > edge) ?? this.#links.at(-1);
    for (const { link } of this.#links) {
      if (link === current?.link) link.setAttribute("aria-current", "true");
      else link.removeAttribute("aria-current");
    }
  }

  #linkTo(words: string, section: HTMLElement): HTMLAnchorElement {
    const link = element("a", { href: `#${section.id}` }, [words]);
    link.addEventListener("click", (event) => {
      event.preventDefault(); // the editor's own way to an anchor does not know the row above
      this.#chosen = section;
      section.scrollIntoView();
      const heading = section.querySelector<HTMLElement>("h2");
      heading?.setAttribute("tabindex", "-1");
      heading?.focus({ preventScroll: true });
      this.mark();
    });
    return link;
  }

  /** Arrow keys go along the row. */
  #step(event: KeyboardEvent): void {
    const step = { ArrowRight: 1, ArrowLeft: -1 }[event.key];
    const at = this.#links.findIndex(({ link }) => link === document.activeElement);
    if (step === undefined || at < 0) return;
    event.preventDefault();
    this.#links[(at + step + this.#links.length) % this.#links.length]?.link.focus();
  }
}
