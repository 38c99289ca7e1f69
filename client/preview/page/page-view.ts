import type { PreviewFigures, PreviewPlace, PreviewUnchanged } from "../../../shared/preview.ts";
import type { Sound } from "../../../shared/sound.ts";
import type { PreviewStaff } from "../../../shared/staff.ts";
import { aimsPart } from "./aims.ts";
import { arrange, element, replace } from "./element.ts";
import { type ExercisesAround, ExercisesView } from "./exercises.ts";
import { Head, type HeadAround } from "./head.ts";
import { type HearAround, HearView } from "./hear.ts";
import { keysPart } from "./keys.ts";
import { lessonPart } from "./lesson.ts";
import { pageTexts } from "./page-texts.ts";
import { type LinkedPart, PartLinks } from "./part-links.ts";
import { PiecesView } from "./pieces.ts";
import { leadingTo } from "./places.ts";
import type { PlanAround } from "./plan.ts";
import { type StaffAround, StaffView } from "./staff.ts";
import { TodayView } from "./today.ts";
import { weeksPart } from "./weeks.ts";

export type PageAround = HeadAround &
  PlanAround &
  HearAround &
  StaffAround &
  Omit<ExercisesAround, "toggle" | "open"> & { open: string | null };

/** The page: its head, the links to its parts, and those in two columns or one. A part that stays the same is kept. */
export class PageView {
  readonly #around: PageAround & ExercisesAround;
  readonly #main: HTMLElement;
  readonly #head: Head;
  readonly #week = element("p", { class: "week" });
  readonly #status = element("p", { class: "status", role: "status" });
  readonly #links = new PartLinks();
  readonly #columns = [element("div", { class: "column" }), element("div", { class: "column" })] as const;
  readonly #today: TodayView;
  readonly #exercises: ExercisesView;
  readonly #hear: HearView;
  readonly #staff: StaffView;
  readonly #pieces: PiecesView;
  readonly #parts = new Map<string, { readonly told: string; section: HTMLElement }>();

  constructor(main: HTMLElement, around: PageAround) {
    this.#main = main;
    this.#around = Object.assign(around, {
      toggle: (name: string, row: () => HTMLElement | undefined) => this.#toggle(name, row),
    });
    this.#head = new Head(around);
    this.#today = new TodayView(this.#around);
    this.#hear = new HearView(this.#around);
    this.#exercises = new ExercisesView(this.#around);
    this.#staff = new StaffView(this.#around);
    this.#pieces = new PiecesView(this.#around);
    const columns = element("div", { class: "columns" }, [...this.#columns]);
    this.#links.row.hidden = true;
    arrange(main, [this.#head.row, this.#week, this.#status, this.#links.row, columns]);
    columns.addEventListener("keydown", ({ key }) => {
      if (key === "Escape") this.#foldOpen();
    });
  }

  /** False where the figures rest on something that the page does not have: then the whole must be asked for. */
  show(figures: PreviewFigures): boolean {
    if (figures.exercises && !this.#exercises.show(figures.exercises)) return false;
    this.#status.textContent = figures.reading ? pageTexts.reading : "";
    this.#head.show(figures);
    this.#week.textContent = figures.today.date === "" ? "" : figures.week;
    this.#today.show(figures.today);
    if (figures.pieces) this.#pieces.show(figures.pieces);
    const [left, right] = this.#partsOf(figures);
    const [today, ...others] = left.map(({ section }) => section);
    const played = figures.today.isRest ? [] : [this.#hear.section, this.#staff.section];
    arrange(this.#columns[0], [today!, ...played, ...others]);
    arrange(
      this.#columns[1],
      right.map(({ section }) => section),
    );
    this.#main.classList.toggle("one-column", right.length === 0);
    this.#links.show([...left, ...right]);
    this.mark(figures);
    return true;
  }

  mark({ underCursor, fingers, hear }: Omit<PreviewUnchanged, "unchanged" | "shownBy">): void {
    this.#exercises.mark(underCursor, fingers);
    this.#hear.show(hear);
    this.#staff.ask();
  }

  /** The row of an exercise, or else what leads to a line; undefined where neither is folded out. */
  find(key: string | null, place: PreviewPlace): HTMLElement | undefined {
    const row = key === null ? undefined : this.#exercises.row(key);
    const link = row?.isConnected ? row : leadingTo(place);
    return link?.closest<HTMLElement>(".row, .line, tr") ?? link;
  }

  sound(text: string, sound: Sound | null): void {
    this.#hear.sound(text, sound);
  }

  showStaff(staff: PreviewStaff | null): void {
    this.#staff.show(staff);
  }

  /** Says what is wrong above the last figures, which stay. */
  complain(message: string): void {
    this.#status.textContent = message;
  }

  /** What there is, in the order of the page: left what one works at, right what one looks up. */
  #partsOf(figures: PreviewFigures): readonly [LinkedPart[], LinkedPart[]] {
    const around = this.#around;
    const { exercises, pieces, keys, lesson, weeks, aims } = figures;
    const own = <T>(words: string, id: string, value: T | null, make: (value: T) => HTMLElement[]): LinkedPart[] =>
      value === null ? [] : [{ words, section: this.#part(id, value, make) }];
    return [
      [
        { words: pageTexts.today, section: this.#today.section },
        ...(exercises ? [{ words: pageTexts.exercises, section: this.#exercises.section }] : []),
      ],
      [
        ...(pieces ? [{ words: pageTexts.pieces, section: this.#pieces.section }] : []),
        ...own(pageTexts.keys, "keys", keys, (value) => keysPart(value, around)),
        ...own(pageTexts.lesson, "lesson", lesson, (value) => lessonPart(value, around)),
        ...own(pageTexts.weeks, "weeks", weeks, (value) => weeksPart(value, around)),
        ...own(pageTexts.aims, "aims", aims.length > 0 ? aims : null, (value) => aimsPart(value, around)),
      ],
    ];
  }

  #part<T>(id: string, value: T, make: (value: T) => HTMLElement[]): HTMLElement {
    const told = JSON.stringify(value);
    const known = this.#parts.get(id);
    if (known?.told === told) return known.section;
    const section = element("section", { id }, make(value));
    if (known) replace(known.section, section);
    this.#parts.set(id, { told, section });
    return section;
  }

  /** Escape folds what is unfolded, and goes back to its row. */
  #foldOpen(): void {
    const { open } = this.#around;
    const row = this.#main.querySelector<HTMLElement>(".row.is-open");
    if (open === null || !row) return;
    this.#toggle(open, () => row);
    row.querySelector<HTMLElement>(".row-toggle")?.focus();
  }

  /** One row of the page is unfolded at a time; the one that was pressed stays where it is on the screen. */
  #toggle(name: string, row: () => HTMLElement | undefined): void {
    const before = row()?.getBoundingClientRect().top ?? 0;
    this.#around.open = this.#around.open === name ? null : name;
    this.#exercises.draw();
    this.#pieces.draw();
    window.scrollBy(0, (row()?.getBoundingClientRect().top ?? before) - before);
    this.#around.keep();
  }
}
