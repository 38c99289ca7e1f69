import type { PreviewLesson, PreviewLink, PreviewSetWork, PreviewTick } from "../../../shared/preview.ts";
import { element, unseen, withWholeDates } from "./element.ts";
import { linkList, placeLink, type Surroundings } from "./surroundings.ts";

/** What was set, asked and said since the last lesson; nothing at all where there is nothing of it. */
export function lessonSection(lesson: PreviewLesson | null, around: Surroundings): HTMLElement[] {
  if (!lesson) return [];
  const work = element(
    "ul",
    { class: "work" },
    lesson.set.map((each) => setWork(each, around)),
  );
  return [
    element("h2", {}, ["For the lesson"]),
    element("p", { class: "quiet" }, withWholeDates(lesson.since)),
    ...(lesson.set.length === 0 ? [] : [element("h3", {}, ["Set"]), work]),
    ...links("Questions", lesson.questions, around),
    ...links("The teacher’s words", lesson.words, around),
  ];
}

function links(title: string, those: readonly PreviewLink[], around: Surroundings): HTMLElement[] {
  return those.length === 0 ? [] : [element("h3", {}, [title]), linkList(those, around)];
}

function setWork({ text, place, days, sentence }: PreviewSetWork, around: Surroundings): HTMLElement {
  return element("li", {}, [
    placeLink(text, place, around),
    element("ol", { class: "ticks" }, days.map(tick)),
    element("p", {}, withWholeDates(sentence)),
  ]);
}

const SIGNS = { done: "✓", "not done": "–", ahead: "" } as const;

function tick({ label, date, state }: PreviewTick): HTMLElement {
  const seen = element("span", { "aria-hidden": "true" }, [
    element("span", { class: "quiet" }, [label]),
    element("span", { class: "sign" }, [SIGNS[state]]),
  ]);
  return element("li", { class: state === "done" ? "done" : "" }, [seen, unseen(`${label} ${date}: ${state}`)]);
}
