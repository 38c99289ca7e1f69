import type { PreviewChoice, PreviewFigures, PreviewSpan } from "../../../shared/preview.ts";
import { button, element } from "./element.ts";

const SPANS: readonly PreviewSpan[] = [4, 12, 26, 52, "all"];

export interface ChoicesAround {
  choose(choice: PreviewChoice): void;
  lock(locked: boolean): void;
}

/** What the player chooses at the top: span, instrument, and whether the page stays with its journal. */
export class Choices {
  readonly row = element("div", { class: "choices" });
  readonly #span = element("select", { id: "span" });
  readonly #instrument = element("select", { id: "instrument" });
  readonly #instruments: HTMLElement;
  readonly #lock: HTMLButtonElement;

  constructor(around: ChoicesAround, locked: boolean) {
    const spans = SPANS.map((span) => option(String(span), span === "all" ? "all weeks" : `${span} weeks`));
    this.#span.append(...spans);
    const choose = () => around.choose(this.#choice());
    this.#span.addEventListener("change", choose);
    this.#instrument.addEventListener("change", choose);
    this.#instruments = labelled("Instrument", this.#instrument);
    this.#lock = button({ class: "toggle", "aria-pressed": String(locked) }, ["Stay with this journal"], () => {
      const next = this.#lock.getAttribute("aria-pressed") !== "true";
      this.#lock.setAttribute("aria-pressed", String(next));
      around.lock(next);
    });
    this.row.append(labelled("Span", this.#span), this.#instruments, this.#lock);
  }

  show({ choice, instruments }: Pick<PreviewFigures, "choice" | "instruments">): void {
    this.#span.value = String(choice.span);
    const known = [...this.#instrument.options].slice(1).map(({ value }) => value);
    if (JSON.stringify(known) !== JSON.stringify(instruments) || this.#instrument.options.length === 0)
      this.#instrument.replaceChildren(option("", "all"), ...instruments.map((name) => option(name, name)));
    this.#instrument.value = choice.instrument ?? "";
    this.#instruments.hidden = instruments.length < 2;
  }

  #choice(): PreviewChoice {
    return {
      span: SPANS.find((span) => String(span) === this.#span.value) ?? 26,
      instrument: this.#instrument.value || null,
    };
  }
}

function labelled(words: string, field: HTMLElement): HTMLElement {
  return element("span", { class: "choice" }, [element("label", { for: field.id }, [words]), " ", field]);
}

function option(value: string, words: string): HTMLOptionElement {
  return element("option", { value }, [words]);
}
