import type { PreviewPiece, PreviewPieces } from "../../../shared/preview.ts";
import { arrange, button, element, small, unseen } from "./element.ts";
import { fold } from "./fold.ts";
import { lineTexts } from "./line-texts.ts";
import { lineList } from "./lines.ts";
import { pageTexts } from "./page-texts.ts";
import { part } from "./part.ts";
import { rowTable } from "./row.ts";
import { rowTexts } from "./row-texts.ts";
import { type RowData, type RowsAround, RowsView } from "./rows-view.ts";
import { tableBlock } from "./table.ts";

/** What a strip's marks mean, each by what it is drawn with. */
const LEGEND = [
  [".chart-best", rowTexts.heightOfStrip],
  [".chart-goal", rowTexts.lineOfStrip],
  ["rect", rowTexts.colourOfStrip],
] as const;

/** The pieces in hand as strips, what has no bars as lines, and those that were worked before. */
export class PiecesView {
  readonly section = element("section", { id: "pieces" });
  readonly #around: RowsAround;
  readonly #rows: RowsView;
  readonly #legend = small("");
  readonly #table: HTMLElement;
  readonly #head: HTMLElement;
  readonly #body = element("div");
  #figures: PreviewPieces | undefined;
  /** What is below the rows, drawn anew only when it changes. */
  #below = "";

  constructor(around: RowsAround) {
    this.#around = around;
    this.#rows = new RowsView("piece", around);
    const { table, head } = rowTable({
      label: pageTexts.pieces,
      first: rowTexts.ofPiece,
      kind: "strips",
      chart: rowTexts.bars,
      numbers: [rowTexts.latest, rowTexts.wanted],
    });
    [this.#table, this.#head] = [table, head];
    this.section.append(...part(pageTexts.pieces, this.#legend), table, this.#body);
  }

  show(figures: PreviewPieces): void {
    this.#figures = figures;
    this.#rows.take(figures.inHand.map(dataOf));
    const { inHand, plain, earlier } = figures;
    const none = inHand.length === 0;
    this.#table.hidden = none;
    const strips = inHand.map(({ key }) => this.#rows.row(key)!);
    const seen = LEGEND.filter(([mark]) => strips.some((strip) => strip.querySelector(`.row-chart ${mark}`)));
    this.#legend.textContent = seen.map(([, words]) => words).join("; ");
    this.#legend.hidden = seen.length === 0;
    const isWanted = inHand.some(({ wanted }) => wanted !== "");
    this.#head.children[3]!.replaceChildren(isWanted ? rowTexts.wanted : unseen(rowTexts.wanted));
    const told = JSON.stringify([plain, earlier]);
    if (told !== this.#below) {
      this.#below = told;
      const words = rowTexts.countOfEarlierPieces(earlier.length);
      const content = () => [lineList(earlier, this.#around, "plain")];
      this.#body.replaceChildren(
        ...(plain.length > 0 ? [lineList(plain, this.#around, "plain")] : []),
        ...(earlier.length > 0 ? fold({ name: "earlier pieces", words, content }, this.#around) : []),
      );
    }
    this.draw();
  }

  /** Puts the rows in their place again: one was folded out or in. */
  draw(): void {
    const { inHand = [] } = this.#figures ?? {};
    const pieces = new Map(inHand.map((piece) => [piece.key, piece]));
    const opened = (key: string) => {
      const piece = pieces.get(key)!;
      return { told: JSON.stringify([piece.chart.table, piece.place]), make: () => this.#openedOf(piece) };
    };
    arrange(this.#table, [this.#head, ...this.#rows.elements([...pieces.keys()], opened)]);
  }

  #openedOf({ key, name, place, chart }: PreviewPiece): HTMLElement[] {
    const attributes = { class: "action", "aria-label": lineTexts.goToLastLineOf(name) };
    const last = button(attributes, [lineTexts.goToLastLine], () => this.#around.reveal(place));
    return [...(chart.table.rows.length > 0 ? tableBlock(`places of ${key}`, chart.table, this.#around) : []), last];
  }
}

function dataOf(piece: PreviewPiece): RowData {
  const { key, name, facts, due, latest, wanted, day, place, chart } = piece;
  const shows = { name, way: facts, trend: due, chart: chart.svg, numbers: [latest, wanted] as const, day };
  return { key, hash: JSON.stringify(shows), place, shows };
}
