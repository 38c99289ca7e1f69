import { button, element } from "./element.ts";
import type { Surroundings } from "./surroundings.ts";

/** What is folded away under a line of words. */
export interface Folded {
  /** The same for the same fold in every answer. */
  readonly name: string;
  readonly words: string;
  /** For its button, where one hears that alone. */
  readonly label?: string;
  /** Made when it is first asked for. */
  content(): readonly HTMLElement[];
}

/** A line of words that folds out what is below it. */
export function fold({ name, words, label, content }: Folded, around: Surroundings): HTMLElement[] {
  const room = element("div", { class: "fold-room" });
  const show = (open: boolean) => {
    room.replaceChildren(...(open ? content() : []));
    toggle.setAttribute("aria-expanded", String(open));
  };
  const toggle = button({ class: "fold", ...(label ? { "aria-label": label } : {}) }, [words], () => {
    const open = !around.unfolded.has(name);
    if (open) around.unfolded.add(name);
    else around.unfolded.delete(name);
    show(open);
    around.keep();
  });
  show(around.unfolded.has(name));
  return [toggle, room];
}
