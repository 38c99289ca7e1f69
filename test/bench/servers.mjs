// The server beside one that does nothing, in each hand: ten years in one file, opened, hovered over, typed in.
import { HANDS } from "../support/hands.mjs";
import { journalText, WRITERS } from "./journal.mjs";
import { life, longestSlice, rounds } from "./measure.mjs";

export const TEN_YEARS = { lines: 44_000, wrong: 100 };
export const ONE_YEAR = { lines: 4_400, wrong: 10, from: "2025-01-06" };

/** What a hand may cost beside the usual one. */
const BESIDE_USUAL = 1.5;

/**
 * @param {readonly string[]} hands by their names; where the usual one is among them, the others are held against it
 */
export async function compareServers({ bundles, count, hands, table }) {
  const contenders = new Map(hands.flatMap((name) => contendersOf(bundles, name)));
  const all = await rounds(count, contenders, life);
  const slices = await rounds(
    count,
    new Map(hands.map((name) => [name, contenders.get(`${name} ours`)])),
    longestSlice,
  );
  for (const hand of hands) {
    const [ours, empty, year] = ["ours", "empty", "year"].map((which) => all[`${hand} ${which}`]);
    tell(table, hand, { ours, empty, year, slice: slices[hand].slice, usual: all["usual ours"] });
  }
}

function contendersOf({ daystave, empty }, name) {
  const hand = WRITERS[name];
  const ten = journalText({ ...TEN_YEARS, hand });
  return [
    [`${name} ours`, { bundle: daystave, text: ten, hand }],
    [`${name} empty`, { bundle: empty, text: ten, hand }],
    [`${name} year`, { bundle: daystave, text: journalText({ ...ONE_YEAR, hand }), hand }],
  ];
}

function tell(table, hand, { ours, empty, year, slice, usual }) {
  const beside = (what, figure, target, options = {}) =>
    table.ratio(`  ${what}, beside the empty server`, ours[figure], empty[figure], target, { ...options, hand });
  table.note(`${hand}: ${ours.count} diagnostics in ten years, ${year.count} in one`);
  beside("first diagnostics", "first", hand === "usual" ? 3.5 : 5, { figure: "first" });
  if (usual && hand !== "usual")
    table.ratio("  first diagnostics, beside the usual hand", ours.first, usual.first, BESIDE_USUAL, {
      hand,
      figure: "of usual",
    });
  beside("keystroke to diagnostics", "keystroke", 0.25, { figure: "key" });
  beside("the same, 95 of 100 keystrokes", "slowKeystroke", 0.5, { figure: "p95" });
  table.ratio("  keystroke, ten years beside one year", ours.keystroke, year.keystroke, 1.3, { hand, figure: "10:1" });
  beside("completion after a keystroke", "completion", 0.5, { figure: "complete" });
  beside("hover once the history is read", "hover", 2, { figure: "hover" });
  beside("peak memory", "memory", 1.5, { unit: "MiB", figure: "memory" });
  beside("start to initialize", "start", 1.2, { figure: "initialize" });
  table.lone("  longest slice while the history warms", slice, { unit: "ms", target: 16, hand, figure: "slice ms" });
}

/** A keystroke beside the empty server, with no diagnostics and with many. */
export async function compareDiagnostics({ bundles, count, table }) {
  for (const wrong of [0, 500, 1000]) {
    const text = journalText({ ...TEN_YEARS, wrong });
    const hand = HANDS.usual;
    const contenders = new Map([
      ["ours", { bundle: bundles.daystave, text, hand }],
      ["empty", { bundle: bundles.empty, text, hand }],
    ]);
    const { ours, empty } = await rounds(count, contenders, life);
    const what = `keystroke, ${wrong} wrong lines (${ours.count} diagnostics), beside the empty server`;
    table.ratio(what, ours.keystroke, empty.keystroke, 1.0);
  }
}
