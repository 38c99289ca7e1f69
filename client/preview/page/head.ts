import type { PreviewChoice, PreviewFigures, PreviewSpan } from "../../../shared/preview.ts";
import { element } from "./element.ts";
import { pageTexts } from "./page-texts.ts";

const SPANS: readonly PreviewSpan[] = [4, 12, 26, 52, "all"];

export interface HeadAround {
  choose(choice: PreviewChoice): void;
}

/** The name, and beside it two quiet choices: the weeks, and the instrument. */
export class Head {
  readonly title = element("h1", { dir: "auto" }, [pageTexts.practice]);
  readonly row: HTMLElement;
  /** Which days these are: on paper below the name, on the screen the title of the weeks. */
  readonly #dates = element("p", { class: "dates" });
  readonly #span = element("select", { "aria-label": pageTexts.weeks, title: pageTexts.weeksShown });
  readonly #instrument = element("select", { "aria-label": pageTexts.instrument, title: pageTexts.instrument });
  readonly #instruments: HTMLElement;
  readonly #choices: HTMLElement;

  constructor(around: HeadAround) {
    this.#span.append(
      ...SPANS.map((span) => option(String(span), span === "all" ? pageTexts.allWeeks : pageTexts.weeksLong(span))),
    );
    const choose = () => around.choose(this.#choice());
    this.#span.addEventListener("change", choose);
    this.#instrument.addEventListener("change", choose);
    this.#instruments = element("span", { class: "choice" }, [this.#instrument]);
    this.#choices = element("div", { class: "choices" }, [
      element("span", { class: "choice" }, [this.#span]),
      this.#instruments,
    ]);
    this.#choices.hidden = true;
    this.row = element("header", { class: "head" }, [this.title, this.#dates, this.#choices]);
  }

  show({ name, dates, choice, instruments, instrumentNames, exercises }: PreviewFigures): void {
    this.title.textContent = name;
    this.title.title = name;
    this.#choices.hidden = exercises === null && choice.span === 26;
    this.#span.value = String(choice.span);
    this.#span.title = pageTexts.weeksShownFrom(dates);
    const chosen = choice.instrument === null ? undefined : instrumentNames[instruments.indexOf(choice.instrument)];
    this.#dates.textContent = [dates, ...(chosen === undefined ? [] : [chosen])].join(", ");
    const known = [...this.#instrument.options].slice(1).map(({ value }) => value);
    if (JSON.stringify(known) !== JSON.stringify(instruments) || this.#instrument.options.length === 0)
      this.#instrument.replaceChildren(
        option("", pageTexts.allInstruments),
        ...instruments.map((each, i) => option(each, instrumentNames[i] ?? each)),
      );
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

function option(value: string, words: string): HTMLOptionElement {
  return element("option", { value }, [words]);
}
