import type { PreviewPlace } from "../../../shared/preview.ts";
import { replace } from "./element.ts";
import { markPlace } from "./places.ts";
import { openedRow, type ShownRow, tableRow } from "./row.ts";
import type { Surroundings } from "./surroundings.ts";

export interface RowsAround extends Surroundings {
  /** The name of the one row of the page that is unfolded; null where none is. */
  readonly open: string | null;
  /** Folds a row out, or back in; the page does not jump. */
  toggle(name: string, row: () => HTMLElement | undefined): void;
}

/** What a row is made of. Its place changes without its being drawn again. */
export interface RowData {
  readonly key: string;
  /** Changes whenever what it shows does. */
  readonly hash: string;
  readonly place: PreviewPlace;
  /** Left out where the page has it. */
  readonly shows?: ShownRow;
}

interface Row {
  hash: string;
  element: HTMLElement;
  place: PreviewPlace;
}

/** The rows of a part by their keys: an update draws anew only those that changed. */
export class RowsView {
  readonly #around: RowsAround;
  /** Begins the names of its rows among those of the page. */
  readonly #kind: string;
  #rows = new Map<string, Row>();
  #opened: { readonly name: string; readonly told: string; readonly element: HTMLElement } | undefined;

  constructor(kind: string, around: RowsAround) {
    this.#kind = kind;
    this.#around = around;
  }

  nameOf(key: string): string {
    return `${this.#kind} ${key}`;
  }

  /** False where a row was left out as known that is not. */
  has(data: readonly RowData[]): boolean {
    return data.every(({ key, hash, shows }) => shows || this.#rows.get(key)?.hash === hash);
  }

  /** Takes over what the rows are now; those that are not named are forgotten. */
  take(data: readonly RowData[]): void {
    this.#rows = new Map(data.map((each) => [each.key, this.#rowFor(each)]));
  }

  row(key: string): HTMLElement | undefined {
    return this.#rows.get(key)?.element;
  }

  /** The rows of some keys, and behind the unfolded one what it shows. */
  elements(keys: readonly string[], content: (key: string) => Opened): HTMLElement[] {
    return keys.flatMap((key) => {
      const { element } = this.#rows.get(key)!;
      const isOpen = this.#around.open === this.nameOf(key);
      element.classList.toggle("is-open", isOpen);
      element.querySelector(".row-toggle")!.setAttribute("aria-expanded", String(isOpen));
      return isOpen ? [element, this.#openedFor(key, content(key))] : [element];
    });
  }

  /** The same element while it shows the same. */
  #openedFor(key: string, { told, make }: Opened): HTMLElement {
    const name = this.nameOf(key);
    if (this.#opened?.name === name && this.#opened.told === told) return this.#opened.element;
    const element = openedRow(make());
    if (this.#opened?.name === name && this.#opened.element.isConnected) replace(this.#opened.element, element);
    this.#opened = { name, told, element };
    return element;
  }

  #rowFor({ key, hash, place, shows }: RowData): Row {
    const known = this.#rows.get(key);
    if (known) known.place = place;
    if (known?.hash === hash) {
      for (const link of known.element.querySelectorAll<HTMLElement>(".place")) markPlace(link, place);
      return known;
    }
    const row: Row = known ?? { hash, place, element: document.createElement("div") };
    const toggle = () => this.#around.toggle(this.nameOf(key), () => row.element);
    const made = tableRow(shows!, () => row.place, { ...this.#around, toggle });
    if (known) replace(known.element, made);
    row.hash = hash;
    row.element = made;
    return row;
  }
}

/** What an unfolded row shows, made anew only when what is told of it changes. */
export interface Opened {
  readonly told: string;
  make(): readonly (Node | string)[];
}
