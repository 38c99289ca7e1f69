import { pageMargins } from "../../features/sheet/printed-page.ts";

/**
 * The look of a report: one column of 170 mm, which A4 has between margins of 20 mm; black on white, in the reader's
 * own serif; charts in one grey scale.
 *
 * @param name who plays, which stands at the foot of a printed page
 */
export function reportStyle(name: string): string {
  return STYLE + pageMargins(name, "A4");
}

const STYLE = `
section > * + *, .begin > * + *, article > * + * { margin-top: 1.5mm; }
section > article, .begin > article { margin-top: 4mm; }
ul { padding: 0; list-style: none; }
li { padding-left: 5mm; text-indent: -5mm; }
li + li { margin-top: 1mm; }
.below { margin: 0; text-indent: 0; }
.day { white-space: nowrap; margin-right: 1mm; }
.day::after { content: ":"; }
.legend { font-size: 9pt; }
pre { font: inherit; white-space: pre-wrap; tab-size: 4; }
pre + pre, p + pre { margin-top: 3mm; }
table { border-collapse: collapse; font-variant-numeric: lining-nums tabular-nums; }
caption { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
th, td { padding: 0.3mm 2mm; text-align: left; vertical-align: baseline; font-weight: normal; }
th:first-child { padding-left: 0; }
td:last-child, th:last-child { padding-right: 0; }
thead th { font-style: italic; }
.number { text-align: right; }
td:not(.number) { min-width: 22mm; }
.wide { font-size: 9pt; }
.wide th, .wide td { padding: 0.3mm 1.5mm; }
.beside .number { white-space: nowrap; }
tfoot th, tfoot td { font-weight: bold; }
.beside { display: grid; grid-template-columns: minmax(0, 1fr) max-content; column-gap: 8mm; align-items: start; }
.beside table { font-size: 9pt; line-height: 1.25; }
.room { padding: 1mm 28px 0 28px; }
figure + figure { margin-top: 3mm; }
.chart { display: block; overflow: visible; }
.chart-plot { overflow: visible; }
.chart-label { fill: #000; font-size: 8.5pt; }
.chart path, .chart rect { vector-effect: non-scaling-stroke; print-color-adjust: exact; }
.chart-month, .chart-grid, .chart-foot { fill: none; stroke: #ccc; shape-rendering: crispEdges; }
.chart-best { fill: none; stroke: #555; stroke-width: 1.5px; }
.chart-join { fill: none; stroke: #999; }
.chart-band { fill: #ddd; }
.chart-reached, .chart-other, .chart-inside { fill: none; stroke: #000; stroke-linecap: round; stroke-width: 4.5px; }
.chart-other { stroke-width: 5.5px; }
.chart-inside { stroke: #fff; stroke-width: 3.5px; }
.chart-tick { fill: none; stroke: #555; }
.chart-aim, .chart-goal { fill: none; stroke: #000; }
.chart-aim { stroke-width: 2px; }
.chart-age-0 { fill: #bbb; }
.chart-age-1 { fill: #ccc; }
.chart-age-2 { fill: #ddd; }
.chart-age-3 { fill: #eee; }
@media (max-width: 120mm) {
  .beside { display: block; }
}
@media screen and (max-width: 100mm) {
  main { padding: 8mm 4mm; }
  table { font-size: 9pt; }
  th, td, .wide th, .wide td { padding: 0.3mm 0.5mm; }
  td:not(.number) { min-width: 0; }
  tbody th { min-width: 5.2em; overflow-wrap: anywhere; }
}
@media print {
  caption, .legend { break-after: avoid; }
  h3 + *, h2 + * { break-before: avoid; }
  tr, li, figure, .begin, .legend, .chart, pre { break-inside: avoid; }
  thead { display: table-header-group; break-inside: avoid; break-after: avoid; }
  .begin { break-after: avoid; }
  .begin:has(> article:last-child) { break-after: auto; }
  tbody tr:first-child, tfoot { break-before: avoid; }
  p, pre { orphans: 3; widows: 3; }
}
`;
