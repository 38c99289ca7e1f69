/** The rows that are one stop of the Tab key, and what of them can have the focus, as selectors. */
export interface Roving {
  readonly rows: string;
  readonly items: string;
}

const STEPS: Readonly<Record<string, (at: number, last: number) => number>> = {
  ArrowDown: (at) => at + 1,
  ArrowUp: (at) => at - 1,
  Home: () => 0,
  End: (_, last) => last,
};
const ASIDE: Readonly<Record<string, number>> = { ArrowRight: 1, ArrowLeft: -1 };

/**
 * Makes rows one stop of the Tab key: Up, Down, Home and End go from row to row in one column, Left and Right along
 * a row. The stop is where one was last; a row that is drawn anew keeps it. After "Developing a Keyboard Interface"
 * of the ARIA Authoring Practices Guide, "Managing Focus Within Components Using a Roving tabindex".
 */
export function rove<T extends HTMLElement>(container: T, roving: Roving): T {
  let stop: HTMLElement | undefined;
  let place: readonly [row: number, column: number] = [0, 0];
  const settle = (focused?: EventTarget | null) => {
    const grid = gridOf(container, roving);
    const items = grid.flat();
    const own = items.find((item) => item === focused) ?? items.find((item) => item === stop);
    const row = grid[Math.min(place[0], grid.length - 1)];
    stop = own ?? (row && nearest(row, place[1]));
    if (stop) place = [grid.findIndex((each) => each.includes(stop!)), columnOf(stop)];
    for (const item of items) {
      const index = item === stop ? 0 : -1;
      if (item.getAttribute("tabindex") !== String(index)) item.setAttribute("tabindex", String(index));
    }
  };
  container.addEventListener("focusin", ({ target }) => settle(target));
  container.addEventListener("keydown", (event) => {
    const next = nextOf(gridOf(container, roving), event);
    if (!next) return;
    event.preventDefault(); // or the page is scrolled as well
    next.focus();
  });
  const drawn = { childList: true, subtree: true, attributeFilter: ["hidden"] };
  new MutationObserver(() => settle(document.activeElement)).observe(container, drawn);
  settle();
  return container;
}

/** By rows; what is hidden is left out. */
function gridOf(container: HTMLElement, { rows, items }: Roving): HTMLElement[][] {
  const own = [...container.querySelectorAll(rows)].map((row) => [...row.querySelectorAll<HTMLElement>(items)]);
  return own.map((row) => row.filter((item) => !item.closest("[hidden]"))).filter((row) => row.length > 0);
}

/** Where a key leads from the item with the focus; undefined where it is another key, or there is no further item. */
function nextOf(grid: readonly HTMLElement[][], event: KeyboardEvent): HTMLElement | undefined {
  if (event.ctrlKey || event.altKey || event.metaKey || event.shiftKey) return undefined;
  const item = event.target as HTMLElement;
  const at = grid.findIndex((row) => row.includes(item));
  if (at < 0) return undefined;
  const aside = ASIDE[event.key];
  if (aside !== undefined) return grid[at]![grid[at]!.indexOf(item) + aside];
  const row = grid[STEPS[event.key]?.(at, grid.length - 1) ?? at];
  return row && row !== grid[at] ? nearest(row, columnOf(item)) : undefined;
}

function nearest(row: readonly HTMLElement[], column: number): HTMLElement {
  const away = (item: HTMLElement) => Math.abs(columnOf(item) - column);
  return row.reduce((best, item) => (away(item) < away(best) ? item : best));
}

/** How many cells of its row come before an item's own. */
function columnOf(item: HTMLElement): number {
  const cell = item.closest("td, th, [role=cell]");
  return cell?.parentElement ? [...cell.parentElement.children].indexOf(cell) : 0;
}
