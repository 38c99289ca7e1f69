/**
 * What was measured, row by row, with what is aimed at. It judges nothing but whether a figure is within its target.
 */
export class Table {
  #rows = [];
  /** Of each hand, by figure: what it came to. */
  #hands = new Map();

  /**
   * A figure beside another one: at most so many times of it is aimed at.
   *
   * @param {string} what
   * @param {number} ours
   * @param {number} other
   * @param {number | undefined} target
   * @param {{ unit?: string, hand?: string, figure?: string }} options `hand` and `figure` put the ratio into the
   *   summary
   */
  ratio(what, ours, other, target, { unit = "ms", hand, figure } = {}) {
    const ratio = ours / other;
    const aim = target === undefined ? "" : `≤ ${target}`;
    this.#rows.push([
      what,
      `${short(ours)} ${unit}`,
      `${short(other)} ${unit}`,
      short(ratio),
      aim,
      verdict(ratio, target),
    ]);
    if (figure) this.#sum(hand, figure, ratio, target);
  }

  /** A figure with a target of its own, or with none; another one may stand beside it. */
  lone(what, value, { unit = "", target, other, hand, figure }) {
    const withUnit = (of) => (unit ? `${short(of)} ${unit}` : String(of));
    const aim = target === undefined ? "" : `≤ ${`${target} ${unit}`.trim()}`;
    this.#rows.push([
      what,
      withUnit(value),
      other === undefined ? "" : withUnit(other),
      "",
      aim,
      verdict(value, target),
    ]);
    if (figure) this.#sum(hand, figure, value, target);
  }

  note(what) {
    this.#rows.push([what]);
  }

  /** All rows, and a summary of the hands: a line each, with a ! where a figure misses its target. */
  toString() {
    const rows = aligned([["", "Daystave", "other", "ratio", "target", ""], ...this.#rows]);
    if (this.#hands.size === 0) return rows;
    const figures = [...new Set([...this.#hands.values()].reverse().flatMap((of) => [...of.keys()]))];
    const lines = [...this.#hands].map(([hand, of]) => [hand, ...figures.map((figure) => of.get(figure) ?? "")]);
    return `${rows}\n\n${aligned([["hand", ...figures], ...lines])}`;
  }

  #sum(hand, figure, value, target) {
    if (!this.#hands.has(hand)) this.#hands.set(hand, new Map());
    this.#hands.get(hand).set(figure, short(value) + (verdict(value, target) === "miss" ? "!" : ""));
  }
}

function verdict(value, target) {
  if (target === undefined) return "";
  return value <= target ? "pass" : "miss";
}

function short(value) {
  return value.toFixed(value < 10 ? 2 : 0);
}

function aligned(rows) {
  const full = rows.filter((cells) => cells.length > 1);
  const widths = full[0].map((_, column) => Math.max(...full.map((cells) => cells[column].length)));
  const cell = (text, column) => (column ? text.padStart(widths[column]) : text.padEnd(widths[column]));
  return rows.map((cells) => cells.map(cell).join("  ").trimEnd()).join("\n");
}
