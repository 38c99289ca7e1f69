import type { PreviewPlan, PreviewPlanAsked, PreviewPlanLine, PreviewStretch } from "../../../shared/preview.ts";
import { button, element, replace, small, withLastNumber } from "./element.ts";
import { planTexts } from "./plan-texts.ts";
import { placeLink, type Surroundings } from "./surroundings.ts";

export interface PlanAround extends Surroundings {
  /** What was asked last; null where nothing was. */
  planAsked(): PreviewPlanAsked | null;
  askForPlan(asked: PreviewPlanAsked): void;
  writePlan(): void;
}

const LEAST = 5;
const MOST = 600;
/** The name under which it is remembered that the reasons are shown. */
const REASONS = "reasons of the plan";

/** A plan for today: a field for its minutes, its lines by phase, and the button that writes it into the journal. */
export class PlanView {
  readonly block = element("div", { class: "plan" });
  readonly #around: PlanAround;
  readonly #field = element("input", {
    id: "plan-minutes",
    type: "number",
    min: String(LEAST),
    max: String(MOST),
    step: "1",
    inputmode: "numeric",
    "aria-label": planTexts.minutesOfPlan,
    "aria-describedby": "plan-wrong",
  });
  readonly #wrong = element("p", { id: "plan-wrong", class: "small quiet", "aria-live": "polite" });
  readonly #head = element("div", { class: "plan-head" }, [
    element("h3", {}, [planTexts.heading]),
    element("span", { class: "plan-minutes" }, [
      this.#field,
      element("label", { for: "plan-minutes" }, [planTexts.minutes]),
    ]),
  ]);
  #body = element("div");
  #plan: PreviewPlan | null = null;
  #told = "";

  constructor(around: PlanAround) {
    this.#around = around;
    this.#field.addEventListener("change", () => this.#ask());
    this.block.append(this.#head, this.#wrong, this.#body);
  }

  show(plan: PreviewPlan | null): void {
    const told = JSON.stringify(plan);
    if (told === this.#told) return;
    this.#told = told;
    const wasOffered = this.#plan?.offer !== "";
    this.#plan = plan;
    this.block.hidden = plan === null;
    if (!plan) return;
    const isShown = plan.offer === "" && !plan.place;
    this.#head.hidden = !isShown;
    this.#wrong.hidden = !isShown;
    if (isShown && document.activeElement !== this.#field) this.#accept(plan.minutes);
    const had = this.#body.contains(document.activeElement);
    const body = element("div", {}, this.#content(plan));
    replace(this.#body, body);
    this.#body = body;
    // Who pressed the button that showed the plan is where it begins.
    if (had && wasOffered && isShown) this.#field.focus({ preventScroll: true });
  }

  #content({ offer, place, day, sentences, stretches }: PreviewPlan): HTMLElement[] {
    const around = this.#around;
    if (place) return [element("p", {}, [placeLink(planTexts.isInJournal, place, "", around)])];
    if (offer !== "") {
      const ask = () => around.askForPlan({ minutes: around.planAsked()?.minutes ?? null, shownOn: day });
      return [button({ class: "action" }, [offer], ask)];
    }
    const said = sentences.map((sentence) => element("p", { class: "said" }, [sentence]));
    if (stretches.length === 0) return said;
    return [...said, ...this.#lines(stretches), button({ class: "action" }, [planTexts.write], () => this.#write())];
  }

  /** The lines by phase, and the button that shows why each is there. */
  #lines(stretches: readonly PreviewStretch[]): HTMLElement[] {
    const { unfolded, keep } = this.#around;
    const list = element("dl", { class: "labelled stretches" }, stretches.flatMap(stretchOf));
    const show = () => {
      const isOpen = unfolded.has(REASONS);
      for (const reasons of list.querySelectorAll<HTMLElement>(".reasons")) reasons.hidden = !isOpen;
      toggle.setAttribute("aria-expanded", String(isOpen));
    };
    const toggle = button({ class: "fold" }, [planTexts.why], () => {
      if (!unfolded.delete(REASONS)) unfolded.add(REASONS);
      show();
      keep();
    });
    show();
    return [list, toggle];
  }

  /** Not while the field has something else than minutes. */
  #write(): void {
    if (this.#field.hasAttribute("aria-invalid")) this.#field.focus();
    else this.#around.writePlan();
  }

  #ask(): void {
    const minutes = this.#field.valueAsNumber;
    const isRight = Number.isInteger(minutes) && minutes >= LEAST && minutes <= MOST;
    this.#wrong.textContent = isRight ? "" : planTexts.wrongMinutes(LEAST, MOST);
    if (isRight) this.#field.removeAttribute("aria-invalid");
    else this.#field.setAttribute("aria-invalid", "true");
    if (!isRight || !this.#plan) return;
    this.#around.askForPlan({ minutes, shownOn: this.#around.planAsked()?.shownOn ?? null });
  }

  #accept(minutes: number): void {
    this.#field.value = String(minutes);
    this.#field.removeAttribute("aria-invalid");
    this.#wrong.textContent = "";
  }
}

function stretchOf({ phase, minutes, lines }: PreviewStretch): HTMLElement[] {
  const shown = lines.length > 0 ? lines.map(lineOf) : [lineOf({ text: "", minutes, reasons: [] })];
  return [element("dt", {}, [phase]), element("dd", {}, [element("ul", { class: "lines" }, shown)])];
}

function lineOf({ text, minutes, reasons }: PreviewPlanLine): HTMLElement {
  const why = element(
    "span",
    { class: "below reasons" },
    reasons.map((reason) => small(reason)),
  );
  return element("li", { class: "line" }, [
    element("span", { class: "line-text", dir: "auto" }, [withLastNumber(text)]),
    element("span", { class: "fact quiet" }, [minutes]),
    why,
  ]);
}
