import type { PreviewToday } from "../../../shared/preview.ts";
import { arrange, button, element, replace, small, withExamples } from "./element.ts";
import { lineTexts } from "./line-texts.ts";
import { labelledLines } from "./lines.ts";
import { pageTexts } from "./page-texts.ts";
import { part } from "./part.ts";
import { type PlanAround, PlanView } from "./plan.ts";

type TodayWithoutPlan = Omit<PreviewToday, "plan">;

/** What there is to say of the day, what is set, what was worked last with where to start, and a plan. */
export class TodayView {
  readonly section = element("section", { id: "today" });
  readonly #around: PlanAround;
  readonly #plan: PlanView;
  #day = element("div");
  #told = "";

  constructor(around: PlanAround) {
    this.#around = around;
    this.#plan = new PlanView(around);
  }

  show({ plan, ...today }: PreviewToday): void {
    const told = JSON.stringify(today);
    if (told !== this.#told) {
      const made = element("div", {}, dayOf(today, this.#around));
      replace(this.#day, made);
      this.#day = made;
      this.#told = told;
    }
    this.#plan.show(plan);
    arrange(this.section, [this.#day, this.#plan.block]);
  }
}

function dayOf({ date, sentences, care, set, last }: TodayWithoutPlan, around: PlanAround): HTMLElement[] {
  const said = sentences.map((sentence) => element("p", { class: "said" }, withExamples(sentence)));
  return [
    ...(date === "" ? [] : part(pageTexts.today, small(date))),
    ...(care > 0 ? ofCare(said.slice(0, care), date, around) : []),
    ...said.slice(care),
    ...labelledLines(
      [
        { label: lineTexts.set, lines: set },
        { label: lineTexts.workedLast, lines: last, kind: "cut" },
      ],
      around,
    ),
  ];
}

/** What is said of the body, which can be put away for that day; it changes nothing else. */
function ofCare(said: readonly HTMLElement[], date: string, { unfolded, keep }: PlanAround): HTMLElement[] {
  const name = `care put away on ${date}`;
  const room = element("div", { class: "care" }, said);
  const toggle = button({ class: "fold" }, [""], () => {
    if (!unfolded.delete(name)) unfolded.add(name);
    show();
    keep();
  });
  const show = () => {
    const isAway = unfolded.has(name);
    room.hidden = isAway;
    toggle.textContent = isAway ? pageTexts.showCare : pageTexts.putCareAway;
    toggle.setAttribute("aria-expanded", String(!isAway));
  };
  show();
  return [room, toggle];
}
