import type { PreviewNote, PreviewStaff } from "../../../shared/staff.ts";
import { drawing } from "./drawing.ts";
import { button, element } from "./element.ts";
import { fold } from "./fold.ts";
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
const NOTHING = "The cursor is on no scale or arpeggio.";
const HINT = "Choose a note with a click or the arrow keys.";

/** A page must change by so many pixels for its staff to be drawn anew, and rest for so many milliseconds. */
const OTHER_WIDTH = 12;
const RESIZE_REST = 200;

/** The exercise under the cursor as a staff: folded away until asked for, and asked for while it is not. */
export class StaffView {
  readonly section: HTMLElement;
  readonly #around: StaffAround;
  readonly #room = element("div", { class: "staff-room" });
  readonly #said = element("p", { class: "staff-said", role: "status" });
  #fingerings = false;
  #width = 0;
  #resting: ReturnType<typeof setTimeout> | undefined;

  constructor(around: StaffAround) {
    this.#around = around;
    const content = () => {
      requestAnimationFrame(() => this.ask());
      return [this.#room, this.#said];
    };
    const words = "On the staff";
    this.section = element("section", { id: "staff" }, fold({ name: FOLD, words, content }, around));
    new ResizeObserver(() => this.#resized()).observe(this.section);
  }

  /** The cursor went elsewhere, or the journal changed. */
  ask(): void {
    if (!this.#around.unfolded.has(FOLD) || !this.section.isConnected) return;
    this.#width = this.section.clientWidth;
    this.#around.askForStaff({ width: this.#width, fingerings: this.#fingerings });
  }

  show(staff: PreviewStaff | null): void {
    const drawn = staff && drawing(staff.svg);
    this.#said.textContent = drawn ? HINT : (staff?.sentence ?? NOTHING);
    const shown = staff && drawn ? [this.#keyboard(drawn, staff)] : [];
    const offers = shown.length > 0 && staff?.fingered ? [this.#fingeringsButton()] : [];
    this.#room.replaceChildren(...shown, ...offers);
  }

  /** A drawing whose notes are one stop of the Tab key; which of them is chosen is said below. */
  #keyboard(drawn: SVGElement, { notes, text }: PreviewStaff): HTMLElement {
    const label = `Notes on the staff. ${text}`;
    const holder = element("div", { class: "staff-notes", role: "group", tabindex: "0", "aria-label": label }, [drawn]);
    let chosen = -1;
    const choose = (index: number) => {
      chosen = Math.min(notes.length - 1, Math.max(0, index));
      for (const each of drawn.querySelectorAll<SVGElement>("[data-note]"))
        each.classList.toggle("is-chosen", each.dataset["note"] === String(chosen));
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
    const words = this.#fingerings ? "Hide the fingerings" : "Show the fingerings";
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

/** `Note 3 of 15: F#5, third degree. Fingering 0 123 4-6-, …` */
function noteInWords(note: PreviewNote, index: number, count: number): string {
  const { name, degree, mark, fingering, fingeringWords } = note;
  const told = `Note ${index + 1} of ${count}: ${[name, degree, ...(mark === "" ? [] : [mark])].join(", ")}.`;
  return fingering === "" ? told : `${told} Fingering ${fingering}: ${fingeringWords}.`;
}
