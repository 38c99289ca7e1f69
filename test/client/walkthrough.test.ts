import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { expect, test } from "vitest";
import { chartInMarkdown } from "../../server/features/hover/chart.ts";
import { journalHistory } from "../../server/history/journal-history.ts";
import { trendOf } from "../../server/history/trend.ts";
import { weeksOf } from "../../server/history/weeks.ts";
import { daystave } from "../cli/command-line.ts";
import { journalOfFiles } from "../features/preview/preview-asked.ts";
import { manifest } from "../support/manifest.ts";

const walkthrough = manifest.contributes.walkthroughs[0]!;
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

/** Of a page that is called `day.md` the editor takes `day.nls.de.md` where it speaks German; its own code says so. */
const OF_A_LANGUAGE = /\.nls\.[\w-]+\.md$/;

test("it has at most five steps, each with one picture or page, and every file in the folder is one", () => {
  const media = walkthrough.steps.map((step) => step.media.markdown ?? step.media.svg);
  const files = readdirSync(MEDIA).filter((file) => !OF_A_LANGUAGE.test(file));
  expect(media.length).toBeLessThanOrEqual(5);
  expect([...media].sort()).toEqual(files.map((file) => `${MEDIA}/${file}`));
});

test("each page is there in German, with the same example, as the sample is the same", () => {
  const pages = walkthrough.steps.flatMap(({ media }) => media.markdown ?? []);
  const german = readdirSync(MEDIA).filter((file) => OF_A_LANGUAGE.test(file));
  expect(german.map((file) => `${MEDIA}/${file}`)).toEqual(pages.map((page) => inGerman(page)).sort());
  for (const page of pages) {
    const [own, other] = [page, inGerman(page)].map((path) => readFileSync(path, "utf8"));
    expect(/```[\s\S]*```/.exec(other!)![0]).toBe(/```[\s\S]*```/.exec(own!)![0]);
    expect(other).not.toMatch(/\]\(|<img|!\[/);
    expect(other).not.toBe(own);
  }
});

function inGerman(page: string): string {
  return page.replace(/\.md$/, ".nls.de.md");
}

/** Commands of the editor's own that a step runs, or is done by: in its table of commands in every version we know of. */
const OF_THE_EDITOR = ["editor.action.marker.next", "editor.action.quickFix"];
const OURS: readonly string[] = manifest.contributes.commands.map(({ command }) => command);

/** The command behind the one button of a step. */
function commandOf({ description }: (typeof walkthrough)["steps"][number]): string {
  const commands = [...description.matchAll(/\]\(command:toSide:([^)?]+)\)/g)].map((match) => match[1]!);
  expect(commands).toHaveLength(1);
  return commands[0]!;
}

test("it begins with the sample; each step has a button, whose command there is and which does the step", () => {
  const commands = walkthrough.steps.map(commandOf);
  expect(commands).toEqual([
    "daystave.openSample",
    "daystave.newDay",
    "editor.action.marker.next",
    "daystave.showPreview",
    "daystave.newJournal",
  ]);
  expect(commands.filter((command) => ![...OURS, ...OF_THE_EDITOR].includes(command))).toEqual([]);
  for (const [at, { completionEvents }] of walkthrough.steps.entries()) {
    expect(completionEvents[0]).toBe(`onCommand:${commands[at]}`);
    const others = completionEvents.map((event) => event.slice("onCommand:".length));
    expect(others.filter((command) => ![...OURS, ...OF_THE_EDITOR].includes(command))).toEqual([]);
  }
});

test("it has no other link, nor has a page of it; its picture says in words what is in it, and has colours of the theme", () => {
  for (const { description } of walkthrough.steps) expect(description.match(/\]\(/g)).toHaveLength(1);
  const pages = walkthrough.steps.flatMap(({ media }) => media.markdown ?? []);
  expect(pages.length).toBeGreaterThan(2);
  for (const page of pages) expect(readFileSync(page, "utf8")).not.toMatch(/\]\(|<img|!\[/);
  const pictures = walkthrough.steps.flatMap(({ media }) => (media.svg ? [media] : []));
  expect(pictures).toHaveLength(1);
  expect(pictures[0]!.altText).toMatch(/^A chart of .*\.$/);
  expect(readFileSync(pictures[0]!.svg!, "utf8")).not.toMatch(/#[0-9a-f]{3,8}\b|rgb\(/i);
});

test("its journal and its days are read without a complaint, its wrong scale with the one that it tells of", async () => {
  expect(await check(exampleOf("journal") + exampleOf("day"))).toEqual([]);
  expect(await check(exampleOf("care"))).toEqual([]);
  expect(await check(exampleOf("scales"))).toEqual(["scale-note"]);
});

test("the German words that its German pages name are read as what they mean", async () => {
  const line = "d-Moll melodisch, Terzen, Achtel at 84 sauber, 88 fast";
  const { stdout } = await daystave(["check", "--explain-lines", "-"], {
    stdin: `names german\n\n2026-03-02\n  ${line}\n  H-Dur\n`,
  });
  expect(stdout).toContain("| d-Moll melodisch | thirds |");
  expect(stdout).toContain("| 84; 88 | sauber; fast |");
  expect(stdout).toContain("| H-Dur |");
  const pages = readdirSync(MEDIA).filter((file) => OF_A_LANGUAGE.test(file));
  const words = pages.flatMap(
    (file) => readFileSync(`${MEDIA}/${file}`, "utf8").match(/(?<=`)[^`\n]+(?=`[ .,])/g) ?? [],
  );
  const read = ["names german", "d-Moll melodisch", "Terzen", "H-Dur", "sauber", "fast"];
  expect(words).toEqual(expect.arrayContaining(read));
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
