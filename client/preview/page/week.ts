import type { PreviewWeek } from "../../../shared/preview.ts";
import { chartBlock } from "./chart.ts";
import { element, quiet, withWholeDates } from "./element.ts";
import { placeLink, type Surroundings } from "./surroundings.ts";

/** This week: its minutes as a sentence and by day, and the way to each of its days. */
export function weekSection({ title, dates, sentence, chart, days }: PreviewWeek, around: Surroundings): HTMLElement[] {
  const links = days.flatMap(({ text, place }) => [" ", placeLink(text, place, around)]);
  return [
    element("h2", {}, ["This week"]),
    element("p", { class: "quiet" }, withWholeDates(`${title}, ${dates}`)),
    ...(chart.ok ? [element("p", {}, [sentence])] : []),
    chartBlock({ key: "week", name: "this week", chart }, around),
    ...(links.length === 0 ? [] : [element("p", { class: "days" }, [quiet("Go to"), ...links])]),
  ];
}
