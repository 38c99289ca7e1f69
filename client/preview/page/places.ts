import type { PreviewPlace } from "../../../shared/preview.ts";

/** Where the same lines are named once more: whoever looks for a line means its own part. */
const BESIDE = "#today, #keys";

/** Notes on what leads to a line which one that is, so that each can be found by the other. */
export function markPlace(leads: HTMLElement, { uri, line }: PreviewPlace): void {
  leads.dataset["uri"] = uri;
  leads.dataset["line"] = String(line);
}

/** What leads to a line; undefined where nothing does that is folded out. */
export function leadingTo({ uri, line }: PreviewPlace): HTMLElement | undefined {
  const all = marked().filter(({ dataset }) => dataset["uri"] === uri && dataset["line"] === String(line));
  return all.find((each) => !each.closest(BESIDE)) ?? all[0];
}

/** The line that the first thing below an edge leads to, in pixels from the top of the window. */
export function firstPlaceBelow(edge: number): PreviewPlace | undefined {
  const first = marked().find((each) => {
    const { top, height } = each.getBoundingClientRect();
    return height > 0 && top >= edge && top < window.innerHeight;
  });
  return first && { uri: first.dataset["uri"]!, line: Number(first.dataset["line"]) };
}

/** In the order of the page. */
function marked(): HTMLElement[] {
  return [...document.querySelectorAll<HTMLElement>("main [data-line]")];
}
