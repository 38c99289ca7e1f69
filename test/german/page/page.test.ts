import { describe, expect, test } from "vitest";
import { fingersUnderCursor } from "../../../server/features/preview/fingers.ts";
import { journalOf, URI } from "../../features/journal-text.ts";
import { exercisesOf, filesOfYear, journalOfFiles, previewOf } from "../../features/preview/preview-asked.ts";
import { type PageAlone, pagesAlone, type Shown } from "../../hosts/page-alone.ts";
import { textsInTheWay } from "../../hosts/page-texts.ts";
import { englishLeft } from "../english-left.ts";
import { germanYear, LAST_DAY } from "../german-year.ts";
import { foldAllOut, textsOfPage } from "./reading.ts";
import { sample } from "./sample-pages.ts";

// The built page of the preview in German, filled by the core in German. Words: from memory, as German teachers have them.

const pages = pagesAlone();
const open = (shown: Shown) => pages({ language: "de", ...shown });

const GERMAN = germanYear();
const CURSOR = GERMAN.split("\n").findLastIndex((line) => line.includes("F-Dur, gestoßen"));
const OF_HALF_A_YEAR = { journal: journalOf(GERMAN), today: LAST_DAY, cursor: CURSOR };
const OF_A_YEAR = { journal: journalOfFiles(filesOfYear()), today: "2026-11-21" };

describe("half a year in German", () => {
  test("its parts, and what leads to them", async () => {
    const { page } = await open(OF_HALF_A_YEAR);
    expect(await page.locator("nav a").allTextContents()).toEqual([
      "Heute",
      "Übungen",
      "Stücke",
      "Tonarten",
      "Unterricht",
      "Wochen",
      "Ziele",
    ]);
    expect(await page.getByRole("heading", { level: 2 }).allTextContents()).toEqual([
      "Heute",
      "Übungen",
      "Stücke",
      "Tonarten",
      "Für den Unterricht",
      "Wochen",
      "Ziele",
    ]);
    expect(await page.getByLabel("Wochen", { exact: true }).locator("option").allTextContents()).toEqual([
      "4 Wochen",
      "12 Wochen",
      "26 Wochen",
      "52 Wochen",
      "alle Wochen",
    ]);
    await page.close();
  });

  test("the heads of the columns, the marks, and a trend whose time comes last", async () => {
    const { page } = await open(OF_HALF_A_YEAR);
    const exercises = page.getByRole("table", { name: "Übungen" });
    expect(await exercises.getByRole("columnheader").allTextContents()).toEqual([
      "Name, Spielweise, Trend",
      expect.stringContaining("Tempi nach Monaten"),
      "zuletzt",
      "sauber bis",
      "letzter Tag",
    ]);
    expect(await page.locator("#exercises .legend-entry").allTextContents()).toContain(
      "nicht erreicht oder nicht notiert",
    );
    expect(await exercises.locator(".row-trend").allTextContents()).toContain(
      "eine Metronomstufe schneller in vier Wochen",
    );
    expect(await page.locator("#pieces .below").allTextContents()).toEqual(["für Sa 4. Juli (in 6 Tagen)"]);
    await page.close();
  });

  test("a key is read out with its kind and its days", async () => {
    const { page } = await open(OF_HALF_A_YEAR);
    const cells = await page.locator("#keys tbody .key").allTextContents();
    expect(cells).toContain("F-Dur, 50 Tage, Tonart von Menuett");
    expect(cells).toContain("D harmonisches Moll, keine Tage, Nachbartonart von Abendlied");
    await page.close();
  });

  test("one exercise unfolded: its weeks, and where it leads", async () => {
    const { page } = await open(OF_HALF_A_YEAR);
    await page.locator("#exercises .row-toggle").first().click();
    await page.getByRole("button", { name: "Alle 25 Wochen" }).waitFor();
    await page.getByRole("button", { name: "Zur letzten Zeile gehen: F-Dur" }).waitFor();
    await page.close();
  });

  test("the hardest finger changes of the line at the cursor", async () => {
    const { page } = await open(OF_HALF_A_YEAR);
    const { key } = exercisesOf(previewOf(GERMAN, { today: LAST_DAY }))[0]!;
    const fingers = fingersUnderCursor(journalOf(GERMAN), URI, CURSOR);
    const hear = { place: null, lines: [], silent: "" };
    await page.locator("#exercises .row-toggle").first().click();
    await page.evaluate((told) => window.postMessage(told, "*"), { type: "cursor", underCursor: key, fingers, hear });
    await page.getByText("Schwerste Griffwechsel dieser Zeile:").waitFor();
    const changes = await page.locator(".fingers ol > li").allTextContents();
    expect(changes.length).toBeGreaterThan(0);
    expect(changes.filter((change) => englishLeft(change, "").length > 0)).toEqual([]);
    expect(await page.locator(".fingers button").first().getAttribute("title")).toMatch(
      / zu \S+: für sich allein üben$/,
    );
    await page.close();
  });

  test("what was noted of the body can be put away for a day, and shown again", async () => {
    const { page } = await open({ journal: `${GERMAN}2026-06-27\n  Daumen tut weh\n`, today: LAST_DAY });
    await page.getByRole("button", { name: "Für heute ausblenden" }).click();
    await page.getByRole("button", { name: "Zeigen, was du zum Körper notiert hast" }).click();
    await page.getByText("Gestern hast du „Daumen tut weh“ notiert.").waitFor();
    await page.close();
  });

  test("a plan of too many minutes", async () => {
    const { page } = await open(OF_HALF_A_YEAR);
    const field = page.getByLabel("Minuten für den Plan");
    await field.fill("1000");
    await field.press("Enter");
    await page.getByText("Ganze Minuten, von 5 bis 600.").waitFor();
    await page.close();
  });

  test("a line that is heard, and one that cannot be", async () => {
    const { page } = await open(OF_HALF_A_YEAR);
    await page.getByRole("button", { name: "Zum Anhören" }).click();
    await page.getByRole("button", { name: "Anhören: click at 72" }).click();
    await page.getByText("Zu hören: Tempo 72.").waitFor();
    await page.getByRole("button", { name: "Stopp" }).click();
    await page.getByLabel("eine Zeile zum Anhören").fill("sing");
    await page.getByRole("button", { name: "Anhören", exact: true }).click();
    await page.getByText(/^Beginn mit dem, was klingen soll/).waitFor();
    await page.close();
  });

  test("a note of the staff, with its fingering", async () => {
    const { page } = await open(OF_HALF_A_YEAR);
    await page.getByRole("button", { name: "In Noten" }).click();
    await page.getByRole("button", { name: "Griffe zeigen" }).click();
    await page.getByRole("button", { name: "Griffe ausblenden" }).waitFor();
    await page.getByRole("option", { name: /^Ton 3 von 15: A\d, 3\. Stufe\. Griff \S.*: .*\.$/ }).waitFor();
    await page.close();
  });
});

test("one exercise or piece of earlier weeks, and several", async () => {
  const earlier = (names: readonly string[]) => names.map((name) => `2026-05-25\n  ${name} at 60 clean\n`).join("");
  for (const [text, words] of [
    [earlier(["G-Dur"]), "Früher: 1 Übung"],
    [earlier(["G-Dur", "F-Dur"]), "Früher: 2 Übungen"],
  ] as const) {
    const { page } = await open({
      journal: `names german\n${text}2026-07-06\n  C-Dur at 60 clean\n`,
      today: "2026-07-07",
    });
    await page.getByRole("button", { name: words, exact: true }).waitFor();
    await page.close();
  }
});

describe("no English is left but what the journal says", () => {
  async function leftOf({ page }: PageAlone, written: string): Promise<readonly string[]> {
    await foldAllOut(page);
    const rows = await page.locator(".row-toggle").all();
    const texts = new Set<string>();
    for (const row of [undefined, rows[0], rows.at(-1)]) {
      await row?.click();
      await page.locator(".waiting").waitFor({ state: "detached" });
      await foldAllOut(page);
      for (const text of await textsOfPage(page)) texts.add(text);
    }
    expect(texts.size).toBeGreaterThan(30);
    return [...texts].filter((text) => !written.includes(text) && englishLeft(text, written).length > 0);
  }

  test("of half a year in German", async () => {
    const shown = await open(OF_HALF_A_YEAR);
    expect(await leftOf(shown, "As")).toEqual([]);
    expect(shown.thrown).toEqual([]);
    await shown.page.close();
  });

  test.each([
    ["year", "2026-11-21"],
    ["quickstart", "2026-03-29"],
    ["pupils/ingrid", "2026-03-09"],
    ["pupils/sefa", "2026-03-09"],
    ["pupils/tobin", "2026-03-09"],
  ])("of the sample %s", async (folder, today) => {
    const { journal, written } = sample(folder);
    const shown = await open({ journal, today, choice: { span: "all", instrument: null }, cursor: 8 });
    expect(await leftOf(shown, written)).toEqual([]);
    expect(shown.thrown).toEqual([]);
    await shown.page.close();
  });

  test("English that is put there is found", async () => {
    const shown = await open(OF_HALF_A_YEAR);
    await shown.page.locator("#aims h2").evaluate((heading) => {
      heading.setAttribute("title", "go to its line");
    });
    expect(await leftOf(shown, "As")).toEqual(["go to its line"]);
    await shown.page.close();
  });
});

describe("German words have room at any width", () => {
  /** A wide font in a large size, as somebody's system may have it. */
  const WIDE = ['"DejaVu Sans", Verdana, sans-serif', 14] as const;

  for (const [what, shown] of [
    ["half a year in German", OF_HALF_A_YEAR],
    ["the sample of a year", OF_A_YEAR],
    ["the sample of a year in a wide font", { ...OF_A_YEAR, font: WIDE }],
  ] as const)
    test(what, async () => {
      const { page } = await open(shown);
      await foldAllOut(page);
      await page.getByRole("button", { name: "Übrige Tonarten ausblenden" }).click(); // the kinds lie on keys beside them
      await page.locator("#exercises .row-toggle").first().click();
      await page.locator(".waiting").waitFor({ state: "detached" });
      for (const width of [320, 400, 500, 1000, 1600]) {
        await page.setViewportSize({ width, height: 900 });
        expect(await textsInTheWay(page), `${width} px`).toEqual([]);
        const isWider = () => document.documentElement.scrollWidth > innerWidth;
        expect(await page.evaluate(isWider), `${width} px`).toBe(false);
        const cut = await page
          .locator("nav, .row-trend > span:first-child, .head-row > div")
          .evaluateAll((all) =>
            all.filter((each) => each.scrollWidth > each.clientWidth + 1).map((each) => each.textContent),
          );
        expect(cut, `${width} px`).toEqual([]);
        const clipped = await page
          .locator(".row-trend > span:first-child")
          .evaluateAll((all) =>
            all
              .filter(
                (said) => said.getBoundingClientRect().bottom > said.parentElement!.getBoundingClientRect().bottom + 1,
              )
              .map((said) => said.textContent),
          );
        expect(clipped, `${width} px`).toEqual([]);
      }
      await page.close();
    });
});
