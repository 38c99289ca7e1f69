import type { PreviewNote, PreviewStaff } from "../../../shared/staff.ts";
import { drawing } from "./drawing.ts";
import { button, element, replace } from "./element.ts";
import { fold } from "./fold.ts";
import { staffTexts } from "./staff-texts.ts";
import type { Surroundings } from "./surroundings.ts";

export interface StaffAround extends Surroundings {
  /** Asks for the staff of the exercise under the cursor, so wide in pixels. */
  askForStaff(asked: StaffAsk): void;
}

export interface StaffAsk {
  readonly width: number;
  readonly fingerings: boolean;
}

const FOLD = "staff";

/** A page must change by so many pixels for its staff to be drawn anew, and rest for so many milliseconds. */
const OTHER_WIDTH = 12;
const RESIZE_REST = 200;

/** The exercise under the cursor as a staff: folded away until asked for, and asked for while it is not. */
export class StaffView {
  readonly section: HTMLElement;
  readonly #around: StaffAround;
  #room = element("div", { class: "staff-room" });
  /** For who sees the page: who hears it is told each note by its name in the list. */
  readonly #said = element("p", { class: "staff-said", id: "staff-said" });
  #told = "";
  #fingerings = false;
  #width = 0;
  #resting: ReturnType<typeof setTimeout> | undefined;

  constructor(around: StaffAround) {
    this.#around = around;
    const content = () => {
      requestAnimationFrame(() => this.ask());
      return [this.#room, this.#said];
    };
    this.section = element(
      "section",
      { id: "staff" },
      fold({ name: FOLD, words: staffTexts.heading, content }, around),
    );
    new ResizeObserver(() => this.#resized()).observe(this.section);
  }

  /** The cursor went elsewhere, or the journal changed. */
  ask(): void {
    if (!this.#around.unfolded.has(FOLD) || !this.section.isConnected) return;
    this.#width = this.section.clientWidth;
    this.#around.askForStaff({ width: this.#width, fingerings: this.#fingerings });
  }

  /** The same staff stays as it is, with the note that is chosen. */
  show(staff: PreviewStaff | null): void {
    const told = JSON.stringify([staff, this.#fingerings]);
    if (told === this.#told) return;
    this.#told = told;
    const drawn = staff && drawing(staff.svg);
    this.#said.textContent = drawn ? staffTexts.hint : (staff?.sentence ?? staffTexts.nothing);
    const shown = staff && drawn ? [this.#keyboard(drawn, staff)] : [];
    const offers = shown.length > 0 && staff?.fingered ? [this.#fingeringsButton()] : [];
    const room = element("div", { class: "staff-room" }, [...shown, ...offers]);
    replace(this.#room, room);
    this.#room = room;
  }

  /** A drawing whose notes are a list and one stop of the Tab key; which of them is chosen is said below, too. */
  #keyboard(drawn: SVGElement, { notes, text }: PreviewStaff): HTMLElement {
    const holder = element("div", { ...LIST, "aria-label": staffTexts.notes(text) }, [drawn]);
    drawn.setAttribute("role", "none"); // a picture would hide the notes in it; what it is called the list is
    for (const name of ["aria-labelledby", "aria-describedby"]) drawn.removeAttribute(name);
    const heads = notes.map((_, index) => drawn.querySelector<SVGElement>(`[data-note="${index}"]`));
    for (const [index, head] of heads.entries()) if (head) asOption(head, index, notes);
    let chosen = -1;
    const choose = (index: number) => {
      chosen = Math.min(notes.length - 1, Math.max(0, index));
      for (const [at, head] of heads.entries()) {
        head?.classList.toggle("is-chosen", at === chosen);
        head?.setAttribute("aria-selected", String(at === chosen));
      }
      holder.setAttribute("aria-activedescendant", optionId(chosen));
      this.#said.textContent = noteInWords(notes[chosen]!, chosen, notes.length);
    };
    holder.addEventListener("click", ({ target }) => {
      const note = target instanceof Element ? target.closest<SVGElement>("[data-note]") : null;
      if (note) choose(Number(note.dataset["note"]));
    });
    holder.addEventListener("keydown", (event) => {
      const to = { ArrowRight: chosen + 1, ArrowLeft: chosen - 1, Home: 0, End: notes.length - 1 }[event.key];
      if (to === undefined || event.ctrlKey || event.altKey || event.metaKey || event.shiftKey) return;
      event.preventDefault(); // or the page is scrolled as well
      choose(to);
    });
    return holder;
  }

  #fingeringsButton(): HTMLElement {
    const words = this.#fingerings ? staffTexts.hideFingerings : staffTexts.showFingerings;
    return button({ class: "action" }, [words], () => {
      this.#fingerings = !this.#fingerings;
      this.ask();
    });
  }

  #resized(): void {
    clearTimeout(this.#resting);
    if (Math.abs(this.section.clientWidth - this.#width) < OTHER_WIDTH) return;
    this.#resting = setTimeout(() => this.ask(), RESIZE_REST);
  }
}

/** ARIA 1.2: a list of which one is chosen by arrow keys, while the focus stays with the list. */
const LIST = {
  class: "staff-notes",
  role: "listbox",
  "aria-orientation": "horizontal",
  "aria-describedby": "staff-said",
  tabindex: "0",
};

function optionId(index: number): string {
  return `staff-note-${index}`;
}

function asOption(head: SVGElement, index: number, notes: readonly PreviewNote[]): void {
  head.id = optionId(index);
  head.setAttribute("role", "option");
  head.setAttribute("aria-selected", "false");
  head.setAttribute("aria-label", noteInWords(notes[index]!, index, notes.length));
}

/** `Note 3 of 15: F#5, third degree. Fingering 0 123 4-6-, …` */
function noteInWords(note: PreviewNote, index: number, count: number): string {
  const { name, degree, mark, fingering, fingeringWords } = note;
  const told = staffTexts.note(index + 1, count, [name, degree, ...(mark === "" ? [] : [mark])].join(", "));
  return fingering === "" ? told : `${told} ${staffTexts.fingering(fingering, fingeringWords)}`;
}
