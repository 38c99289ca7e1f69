import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { expect, test } from "vitest";
import manifest from "../../package.json";
import { chartInMarkdown } from "../../server/features/hover/chart.ts";
import { journalHistory } from "../../server/history/journal-history.ts";
import { trendOf } from "../../server/history/trend.ts";
import { weeksOf } from "../../server/history/weeks.ts";
import { daystave } from "../cli/command-line.ts";
import { journalOfFiles } from "../features/preview/preview-asked.ts";

const [walkthrough] = manifest.contributes.walkthroughs;
const MEDIA = "client/media";
const SAMPLE = "samples/quickstart";

/** The lines of an example that a step shows. */
function exampleOf(step: string): string {
  const [, example] = /```practice-journal\n([\s\S]*?)```/.exec(readFileSync(`${MEDIA}/${step}.md`, "utf8"))!;
  return example!;
}

/** What the command line says of a text: its codes, in order. */
async function check(text: string): Promise<readonly string[]> {
  const { stdout } = await daystave(["check", "--json", "-"], { stdin: text });
  const { files } = JSON.parse(stdout) as { files: { diagnostics: { code: string }[] }[] };
  return files.flatMap(({ diagnostics }) => diagnostics.map(({ code }) => code));
}

test("it has at most five steps, each with one picture or page, and every file in the folder is one", () => {
  const media = walkthrough!.steps.map((step) => step.media.markdown ?? step.media.svg);
  expect(media.length).toBeLessThanOrEqual(5);
  expect([...media].sort()).toEqual(readdirSync(MEDIA).map((file) => `${MEDIA}/${file}`));
});

test("its buttons run commands of ours, beside one that opens an empty journal", () => {
  const [journal, ...rest] = walkthrough!.steps.flatMap(({ description }) =>
    [...description.matchAll(/\]\(command:toSide:([^)]+)\)/g)].map((match) => match[1]!),
  );
  const [command, argument] = journal!.split("?");
  expect(command).toBe("workbench.action.files.newUntitledFile");
  expect(JSON.parse(decodeURIComponent(argument!))).toEqual({ languageId: manifest.contributes.languages[0]!.id });
  const ours = manifest.contributes.commands.map((each) => each.command);
  expect(rest.length).toBeGreaterThan(2);
  expect(rest.filter((each) => !ours.includes(each))).toEqual([]);
});

test("its journal and its days are read without a complaint, its wrong scale with the one that it tells of", async () => {
  expect(await check(exampleOf("journal") + exampleOf("day"))).toEqual([]);
  expect(await check(exampleOf("care"))).toEqual([]);
  expect(await check(exampleOf("scales"))).toEqual(["scale-note"]);
});

/** `UPDATE=1 npx vitest run test/client` draws it anew; look at it. */
test("its picture is what a hover draws of the sample, in the colours of the editor", () => {
  const path = `${MEDIA}/weeks.svg`;
  const drawn = `${weeksOfSample()}\n`;
  if (process.env["UPDATE"]) writeFileSync(path, drawn);
  else expect(readFileSync(path, "utf8")).toBe(drawn);
});

/** Stand for the editor's own colours, which a palette cannot name. */
const PALETTE = { foreground: "#000001", background: "#000002", amount: "#000003" };
const COLOURS = {
  "#000001": "var(--vscode-foreground)",
  "#000002": "var(--vscode-welcomePage-background, var(--vscode-editor-background))",
  "#000003": "var(--vscode-charts-blue, var(--vscode-textLink-foreground))",
};

/** The chart of thirds in D melodic minor, as wide as there is room for. */
function weeksOfSample(): string {
  const names = readdirSync(SAMPLE);
  const files = Object.fromEntries(names.map((name) => [name, readFileSync(`${SAMPLE}/${name}`, "utf8")]));
  const exercises = [...journalHistory(journalOfFiles(files)).exercises.values()];
  const strand = exercises.find(({ subject, pattern }) => subject === "D melodic minor" && pattern === "thirds")!
    .strands[0]!;
  const { noteValue, beat } = strand.records.at(-1)!;
  const weeks = weeksOf(strand.records);
  const picture = chartInMarkdown(strand, weeks, {
    title: "D melodic minor, thirds",
    notation: { noteValue, beat },
    trend: trendOf(weeks),
    palette: PALETTE,
  })!;
  const [, address] = /\]\(data:image\/svg\+xml,(.*)\)$/.exec(picture)!;
  const svg = decodeURIComponent(address!).replace(/ width="\d+" height="\d+"/, ' width="100%"');
  return Object.entries(COLOURS).reduce((text, [stand, colour]) => text.replaceAll(stand, colour), svg);
}
