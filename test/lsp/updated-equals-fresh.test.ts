import fc from "fast-check";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { FILES, head, lines, typedEdit } from "../properties/edits.ts";
import { IN_FULL } from "../support/random-runs.ts";
import { EditedJournal, type EditorStep, QUESTIONS, type State } from "./edited-journal.ts";

// However a journal came to be what it is, by edits, files opened, closed and written: what the server tells of it is
// what one tells that was started this moment and sees the same texts.

/** `DAYSTAVE_EDITS=100000` for more, or another first seed with `DAYSTAVE_SEED`. */
const EDITS = Number(process.env["DAYSTAVE_EDITS"] ?? (IN_FULL ? 2000 : 500));
const SEED = Number(process.env["DAYSTAVE_SEED"] ?? 1);
/** Edits of one server's life. */
const LIFE = 10_000;
/** The two are held against each other after so many steps, most of them edits. */
const EVERY = 50;

const uri = fc.constantFrom(...FILES, ...FILES.slice(1), "file:///journal/more/c.practice");
const at = fc.nat(100_000);
const step: fc.Arbitrary<EditorStep> = fc.oneof(
  { weight: 60, arbitrary: fc.record({ type: fc.constant("edit" as const), uri, edit: typedEdit }) },
  { weight: 5, arbitrary: fc.record({ type: fc.constant("undo" as const), uri }) },
  { weight: 5, arbitrary: fc.record({ type: fc.constant("toggle" as const), uri, saved: fc.boolean() }) },
  {
    weight: 3,
    arbitrary: fc.record({
      type: fc.constant("written" as const),
      uri,
      edit: typedEdit,
      deleted: fc.constantFrom(true, false, false, false),
    }),
  },
  {
    weight: 20,
    arbitrary: fc.record({ type: fc.constant("asked" as const), uri, question: fc.constantFrom(...QUESTIONS), at }),
  },
  { weight: 1, arbitrary: fc.record({ type: fc.constant("pause" as const), uri }) },
);

beforeEach(() => void vi.useFakeTimers({ toFake: ["setTimeout", "clearTimeout", "performance"] }));
afterEach(() => void vi.useRealTimers());

const lives = Array.from({ length: Math.ceil(EDITS / LIFE) }, (_, i) => ({
  seed: SEED + i,
  edits: Math.min(LIFE, EDITS - i * LIFE),
}));

test.each(lives)(
  "after $edits edits from seed $seed the server tells what a fresh one tells",
  async ({ seed, edits }) => {
    const [texts] = fc.sample(fc.tuple(head, lines, lines), { seed, numRuns: 1 });
    const journal = await EditedJournal.start({ disk: FILES.map((file, i) => [file, texts![i]!]), open: [] });
    for (let round = 1; journal.edits < edits; round++) {
      const before = journal.state;
      const steps = fc.sample(step, { seed: seed * 1_000_003 + round, numRuns: EVERY });
      const differs = await lived(journal, steps, round);
      if (differs) expect.fail(await told(`seed ${seed}, round ${round}: ${differs}`, before, steps, round));
    }
    expect(journal.log.filter((each) => /failed/.test(each))).toEqual([]);
  },
  60_000 + 20 * EDITS,
);

/** Takes the steps; what differs then from a fresh server, or what went wrong on the way. */
async function lived(journal: EditedJournal, steps: readonly EditorStep[], round: number): Promise<string | undefined> {
  try {
    for (const each of steps) await journal.take(each);
    return await journal.differsFromFresh(round);
  } catch (error) {
    return error instanceof Error ? error.stack : String(error);
  }
}

/** A failure with as few of the last steps as show it; with all of them where it takes more than these. */
async function told(found: string, before: State, steps: readonly EditorStep[], round: number): Promise<string> {
  const after = async (some: readonly EditorStep[]) => lived(await EditedJournal.start(before), some, round);
  let fewest = steps;
  let shown = await after(steps);
  for (let i = steps.length - 1; shown && i >= 0; i--) {
    const fewer = fewest.filter((_, k) => k !== i);
    const still = await after(fewer);
    if (still) [fewest, shown] = [fewer, still];
  }
  const lead = shown ? `The fewest steps: ${shown}` : "It takes more than the steps since the two last agreed:";
  return [found, lead, JSON.stringify(before), ...fewest.map((each) => JSON.stringify(each))].join("\n");
}
