// The command line with a file of tens of megabytes: processor time and peak memory of a command at each size. In a line
// that grows as the text does, each row takes twice what the one before it did.
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { inFolder, usedBy } from "./commands.mjs";
import { journalText, WRITERS } from "./journal.mjs";
import { TEN_YEARS } from "./servers.mjs";

/** Megabytes. */
const SIZES = [12.5, 25, 50];
/** Mebibytes, of which no command may take more. */
const MOST = 1024;
const COMMANDS = {
  check: (path) => ["check", path],
  history: (path) => ["history", path],
  export: (path) => ["export", path, "--csv"],
  format: (path) => ["format", "--check", path],
};

/** The given hands, and one that slips in nearly every line. */
export async function measureLarge({ bundles, hands, table }) {
  for (const hand of [...hands, "faulty"]) {
    for (const [name, args] of Object.entries(COMMANDS)) await growth({ bundles, table, hand, name, args });
  }
}

async function growth({ bundles, table, hand, name, args }) {
  let before;
  for (const size of SIZES) {
    const { time, memory } = await inFolder((folder) => {
      const path = join(folder, "journal.practice");
      writeFileSync(path, textOf(hand, size * 1e6));
      return usedBy([bundles.cli, ...args(path)], folder, table);
    });
    const what = `${name} of ${size} MB, ${hand}`;
    table.lone(`${what}, processor time`, time / 1000, { unit: "s", other: before && before / 1000 });
    table.lone(`  the same, peak memory`, memory, { unit: "MiB", target: MOST });
    before = time;
  }
}

/** So many bytes and a day: days of that hand, and then more of them under later dates. */
function textOf(hand, bytes) {
  const usual = { ...TEN_YEARS, hand: WRITERS[hand] ?? WRITERS.usual };
  const share = bytes / Buffer.byteLength(journalText(usual));
  const text = journalText({ ...usual, lines: Math.ceil(TEN_YEARS.lines * share), wrong: 0 });
  return hand === "faulty" ? slipped(text) : text;
}

/** Two letters change places in every line but those of days, others each time it is written. */
function slipped(text) {
  let state = 1;
  const random = (count) => {
    state = (Math.imul(state, 1103515245) + 12345) >>> 0; // ISO C's example of rand
    return Math.floor((state / 2 ** 32) * count);
  };
  return text
    .split("\n")
    .map((line) => {
      const places = [...line.matchAll(/[a-z](?=[a-z])/g)].map(({ index }) => index);
      if (places.length === 0 || /^\d/.test(line)) return line;
      const at = places[random(places.length)];
      const letter = String.fromCharCode(97 + random(26));
      return line.slice(0, at) + line[at + 1] + line[at] + letter + line.slice(at + 2);
    })
    .join("\n");
}
