import type { Page } from "playwright-core";

/** Words of the page that lie on others, or reach beyond its width; each as `one | other`. */
export async function textsInTheWay(page: Page): Promise<readonly string[]> {
  return page.evaluate(inTheWay);
}

/** Runs in the page. */
function inTheWay(): string[] {
  interface Box {
    left: number;
    top: number;
    right: number;
    bottom: number;
    readonly words: string;
    /** What is cut has boxes for the whole and for what is left of it. */
    readonly node: Node;
  }
  /** So much of a line of text is room above and below its letters, in pixels; beside them rounding alone. */
  const [ROOM, ROUNDING] = [3, 0.75];
  /** What an element and those around it leave to be seen of what is in it; asked once for each. */
  const clips = new Map<Element | null, Omit<Box, "words" | "node">>();
  const everything = { left: -Infinity, top: -Infinity, right: Infinity, bottom: Infinity };
  function clipOf(element: Element | null): Omit<Box, "words" | "node"> {
    if (!element || element === document.body) return everything;
    const known = clips.get(element);
    if (known) return known;
    const clip = { ...clipOf(element.parentElement) };
    const { overflowX, overflowY } = getComputedStyle(element);
    const own = element.getBoundingClientRect();
    if (overflowX !== "visible" && !(element instanceof SVGElement)) {
      clip.left = Math.max(clip.left, own.left);
      clip.right = Math.min(clip.right, own.right);
    }
    if (overflowY !== "visible" && !(element instanceof SVGElement)) {
      clip.top = Math.max(clip.top, own.top);
      clip.bottom = Math.min(clip.bottom, own.bottom);
    }
    clips.set(element, clip);
    return clip;
  }
  const boxes: Box[] = [];
  const walker = document.createTreeWalker(document.querySelector("main")!, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const parent = node.parentElement!;
    const words = node.textContent!.trim();
    if (words === "" || parent.closest(".unseen, title, desc, option, nav") || !parent.checkVisibility()) continue;
    const clip = clipOf(parent);
    const range = document.createRange();
    range.selectNodeContents(node);
    for (const { left, top, right, bottom } of range.getClientRects()) {
      const box = {
        left: left + ROUNDING,
        top: top + ROOM,
        right: right - ROUNDING,
        bottom: bottom - ROOM,
        words,
        node,
      };
      box.left = Math.max(box.left, clip.left);
      box.right = Math.min(box.right, clip.right);
      box.top = Math.max(box.top, clip.top);
      box.bottom = Math.min(box.bottom, clip.bottom);
      if (box.right - box.left > 0 && box.bottom - box.top > 0) boxes.push(box);
    }
  }
  const found = boxes
    .filter(({ left, right }) => right > document.documentElement.clientWidth || left < 0)
    .map(({ words }) => `${words} | the edge of the page`);
  boxes.sort((a, b) => a.top - b.top);
  for (const [at, one] of boxes.entries())
    for (let i = at + 1; i < boxes.length && boxes[i]!.top < one.bottom; i++) {
      const other = boxes[i]!;
      if (other.node !== one.node && other.left < one.right && one.left < other.right)
        found.push(`${one.words} | ${other.words}`);
    }
  return found;
}
