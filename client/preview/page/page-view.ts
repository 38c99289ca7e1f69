import type { PreviewFigures, PreviewFingers } from "../../../shared/preview.ts";
import { aimsSection } from "./aims.ts";
import { Choices, type ChoicesAround } from "./choices.ts";
import { arrange, element, replace } from "./element.ts";
import { type KeysAround, keysSection } from "./keys.ts";
import { lessonSection } from "./lesson.ts";
import { type MovingAround, MovingView } from "./moving.ts";
import { piecesSection } from "./pieces.ts";
import { weekSection } from "./week.ts";

export type PageAround = ChoicesAround & MovingAround & KeysAround;

/** The page's one column. A section whose figures stay the same is not touched. */
export class PageView {
  readonly #around: PageAround;
  readonly #main: HTMLElement;
  readonly #title = element("h1", {}, ["Practice"]);
  readonly #choices: Choices;
  readonly #complaint = element("p", { class: "complaint", role: "status" });
  readonly #moving: MovingView;
  readonly #sections = new Map<string, { readonly figures: string; section: HTMLElement }>();

  constructor(main: HTMLElement, around: PageAround, locked: boolean) {
    this.#main = main;
    this.#around = around;
    this.#choices = new Choices(around, locked);
    this.#moving = new MovingView(around);
    arrange(main, this.#top());
  }

  /** False where the figures rest on something that the page does not have: then the whole must be asked for. */
  show(figures: PreviewFigures): boolean {
    if (!this.#moving.show(figures.moving)) return false;
    const around = this.#around;
    this.#complaint.textContent = "";
    this.#title.textContent = `Practice: ${figures.name}`;
    this.#choices.show(figures);
    arrange(this.#main, [
      ...this.#top(),
      this.#section("week", figures.week, (week) => weekSection(week, around)),
      ...(figures.lesson ? [this.#section("lesson", figures.lesson, (lesson) => lessonSection(lesson, around))] : []),
      this.#moving.section,
      this.#section("pieces", figures.pieces, (pieces) => piecesSection(pieces, around)),
      this.#section("been", figures.keys, (keys) => keysSection(keys, around)),
      this.#section("next", figures.aims, (aims) => aimsSection(aims, around)),
    ]);
    this.mark(figures.underCursor, figures.fingers);
    return true;
  }

  mark(underCursor: string | null, fingers: PreviewFingers | null): void {
    this.#moving.mark(underCursor);
    this.#moving.showFingers(fingers);
  }

  /** Says what is wrong above the last figures, which stay. */
  complain(message: string): void {
    this.#complaint.textContent = message;
  }

  #top(): HTMLElement[] {
    return [this.#title, this.#choices.row, this.#complaint];
  }

  #section<T>(name: string, value: T, make: (value: T) => HTMLElement[]): HTMLElement {
    const figures = JSON.stringify(value);
    const known = this.#sections.get(name);
    if (known?.figures === figures) return known.section;
    const section = element("section", { class: name }, make(value));
    if (known) replace(known.section, section);
    this.#sections.set(name, { figures, section });
    return section;
  }
}
