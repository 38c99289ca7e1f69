import { element } from "./element.ts";

/** The heading of a part, and at its right a few quiet words. */
export function part(title: string, note: HTMLElement | null = null): HTMLElement[] {
  return [element("div", { class: "part-head" }, [element("h2", {}, [title]), ...(note ? [note] : [])])];
}
