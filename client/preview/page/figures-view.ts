import type { PreviewFigures, PreviewRow } from "../../../shared/protocol.ts";
import { element } from "./element.ts";
import { exercise, type Reveal } from "./exercise.ts";

/** The page's one column: a heading, and below it one section for each exercise. An update replaces only what changed. */
export class FiguresView {
  readonly #reveal: Reveal;
  readonly #complaint = element("p", { class: "complaint", role: "status" });
  readonly #empty = element("p", { class: "empty" }, [
    "No exercise with a tempo yet. Write a line such as ",
    element("code", {}, ["D minor melodic, thirds, 8ths at 60 clean"]),
    " below a day, and its weeks appear here.",
  ]);
  readonly #list = element("div");
  #sections = new Map<string, { readonly hash: string; readonly section: HTMLElement }>();

  constructor(main: HTMLElement, reveal: Reveal) {
    this.#reveal = reveal;
    main.replaceChildren(
      element("h1", {}, ["What is moving"]),
      element("p", { class: "quiet" }, ["The best tempo reached in each week, for every exercise of this journal."]),
      this.#complaint,
      this.#list,
    );
  }

  show({ rows }: PreviewFigures): void {
    this.#complaint.textContent = "";
    this.#sections = new Map(rows.map((row) => [row.key, { hash: row.hash, section: this.#sectionFor(row) }]));
    const sections = [...this.#sections.values()].map(({ section }) => section);
    arrange(this.#list, sections.length > 0 ? sections : [this.#empty]);
  }

  /** Says what is wrong above the last figures, which stay. */
  complain(message: string): void {
    this.#complaint.textContent = message;
  }

  #sectionFor(row: PreviewRow): HTMLElement {
    const known = this.#sections.get(row.key);
    return known?.hash === row.hash ? known.section : exercise(row, this.#reveal);
  }
}

/** Makes these the children in this order. What stands right already is not touched, so it keeps focus and selection. */
function arrange(parent: HTMLElement, children: readonly HTMLElement[]): void {
  const wanted = new Set<Element>(children);
  for (const child of [...parent.children]) if (!wanted.has(child)) child.remove();
  let next = parent.firstElementChild;
  for (const child of children) {
    if (child === next) next = next.nextElementSibling;
    else parent.insertBefore(child, next);
  }
}
