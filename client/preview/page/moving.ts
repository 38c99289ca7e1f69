import type { PreviewExercise, PreviewFingers, PreviewMoving, PreviewPlace } from "../../../shared/preview.ts";
import { arrange, button, element, replace, withExamples } from "./element.ts";
import { exercise } from "./exercise.ts";
import { type FingersAround, fingersBlock } from "./fingers.ts";
import type { Surroundings } from "./surroundings.ts";

/** An exercise as it stands in the page. Its place changes without its being drawn again. */
interface Row {
  readonly hash: string;
  readonly article: HTMLElement;
  place: PreviewPlace;
}

export interface MovingAround extends Surroundings, FingersAround {
  /** Asks for so many exercises more. */
  askForMore(count: number): void;
}

/** What is moving: one row for each exercise. An update replaces only the rows that changed. */
export class MovingView {
  readonly section = element("section", { class: "moving" });
  readonly #around: MovingAround;
  readonly #sentence = element("p");
  readonly #list = element("div");
  readonly #titles = new Map<string, HTMLElement>();
  #rows = new Map<string, Row>();
  #marked: string | null = null;
  /** The hardest steps of the line under the cursor, as told and as they stand in the page. */
  #fingers: { readonly told: string; readonly block: HTMLElement } | undefined;

  constructor(around: MovingAround) {
    this.#around = around;
    this.section.append(element("h2", {}, ["What is moving"]), this.#sentence, this.#list);
  }

  /** False where a row was left out as known that is not: then the whole must be asked for. */
  show({ sentence, groups, left }: PreviewMoving): boolean {
    const exercises = groups.flatMap((group) => group.exercises);
    if (exercises.some(({ key, hash, shows }) => !shows && this.#rows.get(key)?.hash !== hash)) return false;
    this.#sentence.className = groups.length === 0 ? "empty" : "quiet";
    this.#sentence.replaceChildren(...withExamples(sentence));
    this.#rows = new Map(exercises.map((each) => [each.key, this.#rowFor(each)]));
    const children = groups.flatMap((group) => [
      this.#titleFor(group.title),
      ...group.exercises.map(({ key }) => this.#rows.get(key)!.article),
    ]);
    arrange(this.#list, left === 0 ? children : [...children, this.#moreButton(left)]);
    return true;
  }

  /**
   * Marks the exercise under the cursor; when it is another one than before, brings it into sight if it is out of it.
   */
  mark(key: string | null): void {
    const isOther = key !== this.#marked;
    this.#marked = key;
    for (const [each, { article }] of this.#rows) {
      if (each === key) article.setAttribute("aria-current", "true");
      else article.removeAttribute("aria-current");
    }
    const article = key === null ? undefined : this.#rows.get(key)?.article;
    if (isOther && article && !isInSight(article)) article.scrollIntoView({ block: "center" });
  }

  /**
   * Shows the hardest steps of the line under the cursor: in the row of its exercise, or above all where it has none.
   */
  showFingers(fingers: PreviewFingers | null): void {
    const told = JSON.stringify(fingers);
    if (this.#fingers?.told !== told) {
      const made = fingers ? { told, block: fingersBlock(fingers, this.#around) } : undefined;
      if (made && this.#fingers) replace(this.#fingers.block, made.block);
      else this.#fingers?.block.remove();
      this.#fingers = made;
    }
    const block = this.#fingers?.block;
    const row = this.#marked === null ? undefined : this.#rows.get(this.#marked)?.article;
    if (!block || block.parentElement === (row ?? this.section)) return;
    if (row) row.append(block);
    else this.#list.before(block);
  }

  #rowFor({ key, hash, place, shows }: PreviewExercise): Row {
    const known = this.#rows.get(key);
    if (known?.hash === hash) {
      known.place = place;
      return known;
    }
    const around: Surroundings = { ...this.#around, reveal: () => this.#around.reveal(row.place) };
    const row: Row = { hash, place, article: exercise(key, shows!, place, around) };
    if (known) replace(known.article, row.article);
    return row;
  }

  #titleFor(title: string): HTMLElement {
    const heading = this.#titles.get(title) ?? element("h3", {}, [title]);
    this.#titles.set(title, heading);
    return heading;
  }

  #moreButton(left: number): HTMLElement {
    const words = `Show the other ${left}`;
    return button({ class: "toggle" }, [words], () => this.#around.askForMore(left));
  }
}

function isInSight(target: HTMLElement): boolean {
  const { top, bottom } = target.getBoundingClientRect();
  return bottom > 0 && top < window.innerHeight;
}
