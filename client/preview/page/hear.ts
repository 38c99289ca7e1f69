import type { PreviewHear, PreviewPlace } from "../../../shared/preview.ts";
import type { Passage, Sound } from "../../../shared/sound.ts";
import { arrange, button, element } from "./element.ts";
import { fold } from "./fold.ts";
import { hearTexts } from "./hear-texts.ts";
import { LOUDEST, Player, type Playing, QUIET_START } from "./player.ts";
import type { Surroundings } from "./surroundings.ts";

export interface HearAround extends Surroundings {
  /** Asks what a line of words sounds like beside a line of the journal; the answer comes to `sound`. */
  hear(place: PreviewPlace | null, text: string): void;
  writeTempo(place: PreviewPlace, bpm: number): void;
}

/** What was heard last: where its tempo may be written. */
interface Heard {
  readonly place: PreviewPlace | null;
  readonly bpm: number | undefined;
}

/** Lines to hear: those that fit the line of the cursor, and a field for one's own. Nothing sounds unasked. */
export class HearView {
  readonly section = element("section", { id: "hear", "aria-label": hearTexts.heading });
  readonly #around: HearAround;
  readonly #lines = element("ul", { class: "to-hear" });
  readonly #field = element("input", {
    type: "text",
    "aria-label": hearTexts.aLine,
    placeholder: "click at 60, 2 bars on, 2 off",
    spellcheck: "false",
  });
  readonly #status = element("p", { class: "said", role: "status" });
  readonly #stop = button({ class: "action" }, [hearTexts.stop], () => this.#player.stop());
  readonly #goOn = button({ class: "action" }, [], () => this.#player.goOn());
  readonly #write = button({ class: "action" }, [], () => this.#writeTempo());
  readonly #body: HTMLElement;
  readonly #player = new Player((playing) => this.#tell(playing));
  #hear: PreviewHear = { place: null, lines: [], silent: "" };
  #told = "";
  /** What is being asked for, and beside which line. */
  #asked: { readonly text: string; readonly place: PreviewPlace | null } | undefined;
  /** What was asked for last. */
  #text = "";
  #passages: readonly Passage[] = [];
  #notes = "";
  #heard: Heard | undefined;

  constructor(around: HearAround) {
    this.#around = around;
    const form = element("form", { class: "hear-own" }, [
      this.#field,
      element("button", { type: "submit", class: "action" }, [hearTexts.hear]),
    ]);
    form.addEventListener("submit", (event) => {
      event.preventDefault();
      this.#ask(this.#field.value);
    });
    const controls = element("p", { class: "hear-controls" }, [this.#goOn, this.#write, this.#stop]);
    const caution = element("p", { class: "small quiet" }, [hearTexts.caution]);
    this.#body = element("div", { class: "hear" }, [
      this.#lines,
      form,
      controls,
      this.#status,
      loudness(this.#player),
      caution,
    ]);
    const content = () => [this.#body];
    this.section.append(...fold({ name: "to hear", words: hearTexts.heading, content }, around));
    this.#tell({ type: "silent" });
  }

  show(hear: PreviewHear): void {
    const told = JSON.stringify(hear);
    if (told === this.#told) return;
    this.#told = told;
    this.#hear = hear;
    if (hear.silent !== "") this.#player.stop();
    arrange(
      this.#lines,
      hear.lines.map((line) => this.#line(line)),
    );
    this.#drawWrite();
    if (hear.silent !== "") this.#status.textContent = hear.silent;
  }

  /** What a line that was asked for sounds like: an answer to an earlier one comes too late. */
  sound(text: string, sound: Sound | null): void {
    const asked = this.#asked;
    if (asked?.text !== text) return;
    this.#asked = undefined;
    if (!sound?.ok) {
      this.#say(sound?.reason ?? hearTexts.unknown);
      return;
    }
    this.#passages = sound.passages;
    this.#notes = sound.notes.join(" ");
    this.#heard = { place: asked.place, bpm: undefined };
    this.#player.play(sound.passages);
  }

  #line(text: string): HTMLElement {
    const heard = button({ class: "action", "aria-label": hearTexts.hearLine(text) }, [text], () => {
      this.#field.value = text;
      this.#ask(text);
    });
    return element("li", {}, [heard]);
  }

  #ask(text: string): void {
    this.#player.stop();
    this.#text = text;
    this.#asked = { text, place: this.#hear.place };
    this.#around.hear(this.#hear.place, text);
  }

  #tell(playing: Playing): void {
    const follows = this.#isListening();
    if (playing.type === "sounding") this.#sounds(playing.passage);
    if (playing.type === "waiting") this.#say(hearTexts.was(this.#label(playing.next - 1)));
    if (playing.type === "silent") this.#say("");
    this.#stop.hidden = playing.type !== "sounding";
    this.#goOn.hidden = playing.type !== "waiting";
    if (playing.type === "waiting") this.#goOn.textContent = hearTexts.goOn(this.#label(playing.next));
    this.#drawWrite(playing.type !== "sounding");
    // One key stops it, goes on, or writes the tempo.
    const next = [this.#stop, this.#goOn, this.#write].find(({ hidden }) => !hidden);
    if (follows) next?.focus({ preventScroll: true });
  }

  /** Whether who uses the keyboard waits for what is heard, and is not writing the next line meanwhile. */
  #isListening(): boolean {
    const focused = document.activeElement;
    if (focused === this.#field) return this.#field.value === this.#text;
    return this.#body.contains(focused) && focused instanceof HTMLButtonElement;
  }

  #sounds(passage: number): void {
    this.#heard = { place: this.#heard?.place ?? null, bpm: this.#passages[passage]?.bpm };
    this.#say(`${hearTexts.sounds(this.#label(passage))} ${this.#notes}`.trim());
  }

  #label(passage: number): string {
    return this.#passages[passage]?.label ?? "";
  }

  #drawWrite(mayWrite = !this.#write.hidden): void {
    const { place, bpm } = this.#heard ?? { place: null, bpm: undefined };
    const isThere = place !== null && JSON.stringify(place) === JSON.stringify(this.#hear.place);
    this.#write.hidden = !mayWrite || bpm === undefined || !isThere;
    if (bpm !== undefined) this.#write.textContent = hearTexts.writeTempo(bpm);
  }

  #writeTempo(): void {
    const { place, bpm } = this.#heard ?? {};
    if (place && bpm !== undefined) this.#around.writeTempo(place, bpm);
  }

  #say(words: string): void {
    this.#status.textContent = words;
  }
}

/** Louder and softer, up to a limit. */
function loudness(player: Player): HTMLElement {
  const range = element("input", { id: "loudness", type: "range", min: "0", max: "100", step: "5" });
  range.value = String(Math.round((100 * QUIET_START) / LOUDEST));
  range.addEventListener("input", () => {
    player.loudness = (LOUDEST * range.valueAsNumber) / 100;
  });
  return element("p", { class: "loudness" }, [
    element("label", { for: "loudness" }, [`${hearTexts.loudness} `]),
    range,
  ]);
}
