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
  const boxes: Box[] = [];
  const walker = document.createTreeWalker(document.querySelector("main")!, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const parent = node.parentElement!;
    const words = node.textContent!.trim();
    if (words === "" || parent.closest(".unseen, title, desc, option, nav") || !parent.checkVisibility()) continue;
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
      for (let each: Element | null = parent; each && each !== document.body; each = each.parentElement) {
        const { overflowX, overflowY } = getComputedStyle(each);
        const clip = each.getBoundingClientRect();
        if (overflowX !== "visible" && !(each instanceof SVGElement)) {
          box.left = Math.max(box.left, clip.left);
          box.right = Math.min(box.right, clip.right);
        }
        if (overflowY !== "visible" && !(each instanceof SVGElement)) {
          box.top = Math.max(box.top, clip.top);
          box.bottom = Math.min(box.bottom, clip.bottom);
        }
      }
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
