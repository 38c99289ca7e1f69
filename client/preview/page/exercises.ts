import type { PreviewExercise, PreviewExercises, PreviewFingers, PreviewPlace } from "../../../shared/preview.ts";
import { drawing } from "./drawing.ts";
import { arrange, button, element, replace, small } from "./element.ts";
import { type FingersAround, fingersBlock } from "./fingers.ts";
import { inksOf, legend } from "./legend.ts";
import { lineTexts } from "./line-texts.ts";
import { lineList } from "./lines.ts";
import { pageTexts } from "./page-texts.ts";
import { part } from "./part.ts";
import { rowTable } from "./row.ts";
import { rowTexts } from "./row-texts.ts";
import { type Opened, type RowData, type RowsAround, RowsView } from "./rows-view.ts";
import { tableBlock } from "./table.ts";

export interface ExercisesAround extends RowsAround, FingersAround {
  /** Asks for so many exercises more. */
  askForMore(count: number): void;
}

const EARLIER = "earlier exercises";

/** The exercises: rows over one axis of time, those of the last four weeks first, then what has no tempo. */
export class ExercisesView {
  readonly section = element("section", { id: "exercises" });
  readonly #around: ExercisesAround;
  readonly #rows: RowsView;
  readonly #note = small("");
  readonly #body = element("div");
  #figures: PreviewExercises | undefined;
  #marked: string | null = null;
  #fingers: PreviewFingers | null = null;
  /** Parts that stay the same objects while they show the same. */
  readonly #kept = new Map<string, { readonly told: string; element: HTMLElement }>();

  constructor(around: ExercisesAround) {
    this.#around = around;
    this.#rows = new RowsView("exercise", around);
    this.section.append(...part(pageTexts.exercises, this.#note), this.#body);
  }

  /** False where a row was left out as known that is not: then the whole must be asked for. */
  show(figures: PreviewExercises): boolean {
    const data = [...figures.recent, ...figures.earlier].map(dataOf);
    if (!this.#rows.has(data)) return false;
    this.#rows.take(data);
    this.#figures = figures;
    this.#note.textContent = figures.note;
    this.draw();
    return true;
  }

  /** Puts everything in its place again: a row was folded out or in. */
  draw(): void {
    const figures = this.#figures;
    if (!figures) return;
    const { recent, earlier, plain, earlierPlain, left, axis } = figures;
    const all = [...recent, ...earlier];
    const first = recent.length > 0 ? recent : earlier;
    const later = recent.length > 0 ? earlier : [];
    const laterPlain = recent.length > 0 || plain.length > 0 ? earlierPlain : [];
    const firstPlain = laterPlain === earlierPlain ? plain : earlierPlain;
    const table = first.length > 0 ? [this.#table(pageTexts.exercises, first, axis)] : [];
    const seen = this.#around.unfolded.has(EARLIER) ? all : first;
    const inks = inksOf(seen.map(({ key }) => this.#rows.row(key)!));
    arrange(this.#body, [
      ...table,
      ...(all.length > 0 ? [this.#keep("legend", inks.join(" "), () => legend(inks))] : []),
      ...(firstPlain.length > 0 ? [this.#plain("plain", firstPlain)] : []),
      ...this.#earlier(later, laterPlain, { axis, left }),
    ]);
    this.#showMark();
  }

  row(key: string): HTMLElement | undefined {
    return this.#rows.row(key);
  }

  /** Marks the exercise under the cursor. */
  mark(key: string | null, fingers: PreviewFingers | null): void {
    this.#marked = key;
    this.#fingers = fingers;
    this.draw();
  }

  #showMark(): void {
    const { recent = [], earlier = [] } = this.#figures ?? {};
    for (const { key } of [...recent, ...earlier]) {
      const row = this.#rows.row(key)!;
      if (key === this.#marked) row.setAttribute("aria-current", "true");
      else row.removeAttribute("aria-current");
    }
  }

  #table(label: string, exercises: readonly PreviewExercise[], axis: string): HTMLElement {
    const known = this.#keep(`table ${label}`, axis, () => {
      const chart = drawing(axis) ?? "";
      return rowTable({ label, first: rowTexts.ofExercise, chart, numbers: [rowTexts.latest, rowTexts.fastestClean] })
        .table;
    });
    const [head] = known.children;
    const keys = exercises.map(({ key }) => key);
    arrange(known, [head as HTMLElement, ...this.#rows.elements(keys, (key) => this.#openedOf(key))]);
    return known;
  }

  #openedOf(key: string): Opened {
    const { opened, recent = [], earlier = [] } = this.#figures ?? {};
    const { place, shows } = [...recent, ...earlier].find((each) => each.key === key)!;
    const fingers = key === this.#marked ? this.#fingers : null;
    if (opened?.key !== key) return { told: "", make: () => [element("div", { class: "waiting" })] };
    const { svg, table } = opened.chart;
    return {
      told: JSON.stringify([opened, place, fingers]),
      make: () => [
        element("div", { class: "full-chart" }, drawing(svg) ? [drawing(svg)!] : []),
        ...tableBlock(`weeks of ${key}`, table, this.#around),
        this.#lineButton(shows?.name ?? "", place),
        ...(fingers ? [fingersBlock(fingers, this.#around)] : []),
      ],
    };
  }

  #lineButton(name: string, place: PreviewPlace): HTMLElement {
    const label = name === "" ? lineTexts.goToLastLine : lineTexts.goToLastLineOf(name);
    return button({ class: "action", "aria-label": label }, [lineTexts.goToLastLine], () => this.#around.reveal(place));
  }

  #plain(name: string, lines: PreviewExercises["plain"]): HTMLElement {
    return this.#keep(name, JSON.stringify(lines), () => lineList(lines, this.#around, "plain"));
  }

  #earlier(
    exercises: readonly PreviewExercise[],
    plain: PreviewExercises["plain"],
    { axis, left }: Pick<PreviewExercises, "axis" | "left">,
  ): HTMLElement[] {
    const count = exercises.length + plain.length + left;
    if (count === 0) return [];
    const { unfolded } = this.#around;
    const open = unfolded.has(EARLIER);
    const words = rowTexts.countOfEarlierExercises(count);
    const toggle = this.#keep("earlier", words, () => {
      const made = button({ class: "fold" }, [words], () => {
        if (!unfolded.delete(EARLIER)) unfolded.add(EARLIER);
        this.draw();
        this.#around.keep();
      });
      return made;
    });
    toggle.setAttribute("aria-expanded", String(open));
    if (!open) return [toggle];
    const more = () => button({ class: "action" }, [rowTexts.showOthers(left)], () => this.#around.askForMore(left));
    return [
      toggle,
      ...(exercises.length > 0 ? [this.#table(rowTexts.earlierExercises, exercises, axis)] : []),
      ...(plain.length > 0 ? [this.#plain("earlier plain", plain)] : []),
      ...(left > 0 ? [this.#keep("more", String(left), more)] : []),
    ];
  }

  /** The same element while what is told of it is the same. */
  #keep(name: string, told: string, make: () => HTMLElement): HTMLElement {
    const known = this.#kept.get(name);
    if (known?.told === told) return known.element;
    const made = make();
    if (known?.element.isConnected) replace(known.element, made);
    this.#kept.set(name, { told, element: made });
    return made;
  }
}

function dataOf({ key, hash, place, shows }: PreviewExercise): RowData {
  if (!shows) return { key, hash, place };
  const { latest, fastest, ...rest } = shows;
  return { key, hash, place, shows: { ...rest, numbers: [latest, fastest] } };
}
