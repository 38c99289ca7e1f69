import type { PupilShown, PupilsShown } from "../../../shared/pupils.ts";
import { arrange, element, replace } from "../../preview/page/element.ts";
import { pupilRow, type Reveal } from "./pupil-row.ts";
import { pupilsTexts } from "./pupils-texts.ts";

/** The page: a row for each pupil, by name. A row that stays the same is kept. */
export class PupilsView {
  readonly #main: HTMLElement;
  readonly #reveal: Reveal;
  readonly #head = element("header", { class: "head" }, [element("h1", {}, [pupilsTexts.heading])]);
  readonly #status = element("p", { class: "status", role: "status" });
  readonly #rows = new Map<string, { readonly told: string; readonly row: HTMLElement }>();

  constructor(main: HTMLElement, reveal: Reveal) {
    this.#main = main;
    this.#reveal = reveal;
    arrange(main, [this.#head, this.#status]);
  }

  show({ pupils }: PupilsShown): void {
    this.#status.textContent = pupils.length === 0 ? pupilsTexts.none : "";
    const rows = pupils.map((pupil) => this.#row(pupil));
    const keys = new Set(pupils.map(({ key }) => key));
    for (const key of this.#rows.keys()) if (!keys.has(key)) this.#rows.delete(key);
    arrange(this.#main, [this.#head, this.#status, ...rows]);
  }

  /** Says what is wrong above the last rows, which stay. */
  complain(message: string): void {
    this.#status.textContent = message;
  }

  #row(pupil: PupilShown): HTMLElement {
    const told = JSON.stringify(pupil);
    const known = this.#rows.get(pupil.key);
    if (known?.told === told) return known.row;
    const row = pupilRow(pupil, this.#reveal);
    if (known) replace(known.row, row);
    this.#rows.set(pupil.key, { told, row });
    return row;
  }
}
