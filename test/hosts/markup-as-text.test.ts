import { readFileSync } from "node:fs";
import type { Locator } from "playwright-core";
import { expect } from "vitest";
import { describeWorkbench } from "./workbench.ts";

const SAMPLE = "test/hosts/journals/hostile";

/** What stands in quotes in the journal, and what the messages quote of it: studies that are declared twice. */
const TITLES = [
  ...new Set([...readFileSync(`${SAMPLE}/week.practice`, "utf8").matchAll(/"([^"]+)"/g)].map(([, title]) => title!)),
];
const QUOTED = ["<img src=x onerror=alert(1)>", "$(trash) [x](command:x)"];

/** All that a chart is made of. */
const SHAPES = ["svg", "title", "desc", "g", "path", "circle", "line", "rect", "polygon", "text"];

/** Runs in the page: the elements of pictures, and the names of their attributes. A picture that is none of ours has an element `img`. */
function partsOfPictures(all: readonly Element[]): { readonly elements: string[]; readonly attributes: string[] }[] {
  return all.map((image) => {
    const [, svg] = /^data:image\/svg\+xml,(.*)$/.exec(image.getAttribute("src") ?? "") ?? [];
    if (svg === undefined) return { elements: ["img"], attributes: [] };
    const parsed = new DOMParser().parseFromString(decodeURIComponent(svg), "image/svg+xml");
    const elements = [...parsed.querySelectorAll("*")];
    return {
      elements: [...new Set(elements.map(({ localName }) => localName))],
      attributes: elements.flatMap((element) => element.getAttributeNames()),
    };
  });
}

describeWorkbench(
  "a journal that holds markup",
  { sample: SAMPLE, open: "week.practice", inFull: true },
  (inWindow) => {
    inWindow("stays text in preview and hover", async ({ page, hoverOnStartOf, showPreview }) => {
      const preview = await showPreview();
      await preview.locator("#pieces .fold").click(); // that week may be long ago
      await preview.locator("#pieces").getByText("Ground <img src=x onerror=document.title='ran'>").first().waitFor();
      await preview.locator("#pieces").getByText("[Air](command:workbench.action.closeAllEditors)").first().waitFor();
      expect(await preview.locator("main img, main a:not([href^='#'])").count()).toBe(0);

      for (const title of ["Ground, bars", "Air, bars"]) {
        const hover = await hoverOnStartOf(title);
        expect(await hover.locator("script, b, a[href^='command:'], a[data-href^='command:']").count()).toBe(0);
        // One picture, the server's own: texts and shapes that run nothing and lead nowhere.
        const pictures = await hover.locator("img").evaluateAll(partsOfPictures);
        expect(pictures.length).toBeLessThanOrEqual(1);
        for (const { elements, attributes } of pictures) {
          expect(SHAPES).toEqual(expect.arrayContaining(elements));
          expect(attributes.filter((name) => /^on|href|^src$|^style$/.test(name))).toEqual([]);
        }
        await page.keyboard.press("Escape");
      }
      expect(await page.title()).not.toBe("ran");
    });

    inWindow("is shown as typed in the problem list and in the outline", async ({ page, editor }) => {
      await editor.locator(".squiggly-warning").first().waitFor();
      await page.keyboard.press("Control+Shift+M");
      const problems = page.locator(".markers-panel");
      for (const words of QUOTED) await problems.getByText(`study "${words}"`).first().waitFor();
      await expectText(problems);
      await page.keyboard.press("Control+Shift+M");

      await editor.locator(".view-line").first().click();
      await page.keyboard.press("Control+Shift+O");
      const outline = page.locator(".quick-input-list");
      await outline.getByText("2026-03-02 Mon").first().waitFor();
      const offered = await namesIn(outline);
      for (const title of TITLES) expect(offered.join("\n")).toContain(title);
      await expectText(outline);
      await page.keyboard.press("Escape");
      expect(await page.title()).not.toBe("ran");
    });
  },
);

/** Nothing of the journal became an element, a symbol or a link. */
async function expectText(list: Locator): Promise<void> {
  expect(await list.locator("img, b, strong, em, code, script, .codicon-trash, a[href^='command:']").count()).toBe(0);
}

async function namesIn(list: Locator): Promise<string[]> {
  const names = await list.locator(".label-name").allTextContents();
  // As it is seen: a space that does not break a line is one, and a word joiner (U+2060) is nothing.
  return names.map((name) => name.replaceAll("\u00A0", " ").replaceAll("\u2060", ""));
}
