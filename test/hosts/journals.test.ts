import { expect } from "vitest";
import { describeWorkbench } from "./workbench.ts";

const JOURNALS = "test/hosts/journals";

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

describeWorkbench("a journal without a tempo", { sample: `${JOURNALS}/empty`, open: "week.practice" }, (inWindow) => {
  inWindow("says in the preview what to write", async ({ showPreview }) => {
    const preview = await showPreview();
    for (const sentence of [
      "No minutes are written this week or last. Write them behind a date",
      "No exercise is written yet. Write a line such as",
      "No piece is in hand. Declare one",
      "No scale or arpeggio was practised in these 26 weeks",
      "No aim is written. Write one",
    ])
      await preview.getByText(sentence).waitFor();
    expect(await preview.locator("table, svg").count()).toBe(0);
  });
});

describeWorkbench(
  "a journal that holds markup",
  { sample: `${JOURNALS}/hostile`, open: "week.practice" },
  (inWindow) => {
    inWindow("stays text in preview and hover", async ({ page, hoverOnStartOf, showPreview }) => {
      const preview = await showPreview();
      await preview.getByRole("heading", { name: "Ground <img src=x onerror=document.title='ran'>" }).waitFor();
      await preview.getByRole("heading", { name: "[Air](command:workbench.action.closeAllEditors)" }).waitFor();
      expect(await preview.locator("main img, main a, main b").count()).toBe(0);

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
  },
);

// An origin of its own, as the editor's own service gives it: a preview that leaned on sharing the editor's would fail here.
describeWorkbench(
  "the preview on an origin of its own",
  { sample: "samples/quickstart", open: "week.practice", webview: "subdomain" },
  (inWindow) => {
    inWindow("draws its figures", async ({ showPreview, page }) => {
      const preview = await showPreview();
      await preview.getByRole("table").first().waitFor();
      const origin = await preview.locator("html").evaluate((html) => html.ownerDocument.defaultView!.location.origin);
      expect(origin).not.toBe(new URL(page.url()).origin);
    });
  },
);
