import type { Page } from "playwright-core";
import { readSample } from "../../client/workbench/serve.mjs";
import { parseIsoDate } from "../../server/journal/calendar.ts";
import { Journal } from "../../server/journal/journal.ts";
import { dayPlan } from "../../server/plan/day-plan.ts";
import { USUAL_PLAN } from "../../server/plan/plan.ts";
import { planLines, planOnDayLine } from "../../server/plan/plan-text.ts";
import { createDocument } from "../../server/syntax/document/document.ts";
import { cursorAt, linesBecome, runByKeys, todayOf } from "./typing.ts";
import type { InWindow } from "./workbench.ts";

const SAMPLE = "samples/quickstart";
const MINUTES = 45;
/** So many lines at the end of the file are in sight however it is scrolled. */
const LAST = 8;

/** The lines that today's plan has, by the program itself: in the window it is whatever day it is. */
async function plannedLines(page: Page): Promise<readonly string[]> {
  const today = await todayOf(page);
  const files = Object.entries(await readSample(SAMPLE)).filter(([name]) => name.endsWith(".practice"));
  const journal = new Journal("s:/q", new Map(files.map(([name, text]) => [`s:/${name}`, createDocument(text)])));
  const plan = dayPlan(journal, { day: parseIsoDate(today.slice(0, 10))!, minutes: MINUTES, settings: USUAL_PLAN });
  return [`${today}, ${planOnDayLine(plan)}`, ...planLines(plan, { reasons: false, indent: "  " }), ""];
}

/** Those of the sample's week. */
async function lastLines(): Promise<readonly string[]> {
  const [, text] = Object.entries(await readSample(SAMPLE)).find(([name]) => name.endsWith("week.practice"))!;
  return text.split("\n").slice(-LAST);
}

/** A morning's plan, in the sample's week. */
export function plan(inWindow: InWindow): void {
  inWindow("is asked for by keys, written, played and taken back", async ({ page, editor }) => {
    const written = await plannedLines(page);
    await page.keyboard.press("Control+End");
    const before = await lastLines();
    await linesBecome(editor, before, -LAST);
    await runByKeys(page, "Daystave: Write Today's Plan");
    const box = page.locator(".quick-input-box input");
    await page.locator(".quick-input-widget", { hasText: "How many minutes do you have?" }).waitFor();
    await box.fill("many");
    await page.locator(".quick-input-widget", { hasText: "A whole number of minutes, up to 600." }).waitFor();
    await box.fill(String(MINUTES));
    await page.keyboard.press("Enter");
    await linesBecome(editor, written, -written.length);
    await page.keyboard.type(" clean");
    const first = written.findIndex((line) => line.startsWith("  "));
    const played = written.map((line, i) => (i === first ? `${line} clean` : line));
    await linesBecome(editor, played, -written.length);

    const next = written.findIndex((line, i) => i > first && line.startsWith("  "));
    const at = await lineOfCursor(page);
    await runByKeys(page, "Daystave: Write Today's Plan"); // the next line waits: it is gone to, and nothing is asked
    await cursorAt(page, at + next - first, written[next]!.length + 1);
    await page.keyboard.type(" done");
    await linesBecome(
      editor,
      played.map((line, i) => (i === next ? `${line} done` : line)),
      -written.length,
    );

    await page.keyboard.press("Control+z");
    await page.keyboard.press("Control+z");
    await linesBecome(editor, written, -written.length);
    await page.keyboard.press("Control+z");
    await page.keyboard.press("Control+End");
    await linesBecome(editor, before, -LAST);
  });

  inWindow("is written by the button in the preview, which then leads to it", async ({ page, editor, showPreview }) => {
    const written = await plannedLines(page);
    const preview = await showPreview();
    const minutes = preview.getByRole("spinbutton", { name: "minutes for the plan" });
    await minutes.fill(String(MINUTES));
    await preview.getByRole("button", { name: "Write it into the journal" }).click();
    await linesBecome(editor, written, -written.length);
    await preview.getByRole("button", { name: /^Today’s plan is in the journal/ }).waitFor();
    await page.keyboard.press("Control+z");
    await preview.getByRole("button", { name: "Write it into the journal" }).waitFor();
  });

  inWindow("of a day that is over: what was not played is taken out by a code action", async (window) => {
    const { page, editor, goToEndOf } = window;
    await page.keyboard.press("Control+End");
    const before = await lastLines();
    await linesBecome(editor, before, -LAST);
    await goToEndOf("2026-03-08 Sun, 20 min, plan");
    await page.keyboard.press("Control+.");
    const offer = page.locator(".action-widget .monaco-list-row", { hasText: "Take out what was not played" });
    await offer.waitFor();
    await page.keyboard.press("Enter");
    await editor.locator(".view-line", { hasText: /^2026-03-08.Sun$/ }).waitFor();
    await page.keyboard.press("Control+z");
    await page.keyboard.press("Control+End");
    await linesBecome(editor, before, -LAST);
  });
}

async function lineOfCursor(page: Page): Promise<number> {
  const name = await page.getByRole("button", { name: /^Ln \d+, Col \d+$/ }).textContent();
  return Number(/Ln (\d+)/.exec(name ?? "")![1]);
}
