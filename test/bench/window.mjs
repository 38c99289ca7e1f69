// A window of the browser workbench that is timed from the inside, as `npm start` serves it: the preview's page has the
// window's own origin, so that whatever it does is done on the window's main thread and shows there.
/** The preview sits two frames deep. */
const PREVIEW = 'iframe.webview[src*="extensionId=daystave-dev.daystave"]';
/** All times in milliseconds. */
const LIMIT = 60_000;
/** So long without a long task a window has come to rest. */
const REST = 2_500;
/** Between one character and the next: a fast typist, 16 characters a second. */
const KEY = 60;
/** After the last character: the preview is told of a change once nobody has typed for 150 ms. */
const AFTER = 1_500;

export class TimedWindow {
  #page;

  static async open(browser, url) {
    const page = await browser.newPage({ viewport: { width: 1280, height: 800 }, serviceWorkers: "allow" });
    page.setDefaultTimeout(LIMIT);
    await page.addInitScript(watch);
    await page.goto(url);
    await page.locator(".editor-instance .view-line").first().waitFor();
    return new TimedWindow(page);
  }

  constructor(page) {
    this.#page = page;
  }

  close() {
    return this.#page.close();
  }

  /** Until the status bar counts what the diagnostics say. */
  async diagnosed() {
    await this.#page.waitForFunction(() => /[1-9]/.test(document.getElementById("status.problems")?.textContent ?? ""));
  }

  /** Until neither the window nor a frame of its origin has had a long task for a while. */
  async rested() {
    await this.#page.waitForFunction(
      (rest) =>
        performance.now() - Math.max(window.daystave.opened, ...window.daystave.tasks.map(({ end }) => end)) > rest,
      REST,
      { polling: 200 },
    );
  }

  /**
   * From the Enter in the command palette that asks for the preview until the chart of the first exercise stands in
   * its page and the next frame is due.
   * @param until what to wait for with the command chosen already, so that it is asked for at that very moment
   */
  async timeToPreview(until = async () => {}) {
    const page = this.#page;
    await this.#palette(">Daystave: Show Preview");
    await page.locator(".quick-input-list .monaco-list-row", { hasText: "Daystave: Show Preview" }).first().waitFor();
    await until();
    await page.keyboard.press("Enter");
    const chart = page.frameLocator(PREVIEW).frameLocator("#active-frame").locator("#exercises .tempo-row").first();
    await chart.waitFor({ state: "attached" });
    const drawn = await chart.evaluate(() => window.daystave.drawn);
    return drawn - (await page.evaluate(() => window.daystave.entered));
  }

  async closePreview() {
    const tab = this.#page.locator(".tab", { hasText: "Practice: " });
    await tab.click({ button: "middle" });
    await tab.waitFor({ state: "detached" });
  }

  /**
   * Types a text at the end of a line, counted from 1: the long tasks from the first key to the last, and those of a
   * while after.
   */
  async tasksWhileTyping(line, text) {
    const page = this.#page;
    await page.locator(".editor-instance .view-lines").first().click();
    await page.keyboard.press("Control+g");
    await page.locator(".quick-input-box input").fill(`:${line}`);
    await page.keyboard.press("Enter");
    await page.getByRole("button", { name: `Ln ${line}, Col` }).waitFor();
    await page.keyboard.press("End");
    await this.rested();
    const began = await page.evaluate(() => performance.now());
    await page.keyboard.type(text, { delay: KEY });
    const ended = await page.evaluate(() => performance.now());
    await new Promise((resolve) => setTimeout(resolve, AFTER));
    const tasks = await page.evaluate(() => window.daystave.tasks);
    return {
      during: tasks.filter(({ end, duration }) => end > began && end - duration < ended),
      after: tasks.filter(({ end, duration }) => end - duration >= ended),
    };
  }

  async #palette(text) {
    await this.#page.keyboard.press("F1");
    await this.#page.locator(".quick-input-box input").fill(text);
  }
}

/** Runs in the window and in each of its frames, before their own scripts. */
function watch() {
  const told = { tasks: [], opened: performance.now(), entered: undefined, drawn: undefined };
  window.daystave = told;
  if (window === window.top) {
    // Those of the frames of its own origin are told here, too, under the name of what they are to the window.
    new PerformanceObserver((list) => {
      for (const { startTime, duration, name, attribution } of list.getEntries()) {
        const frame = attribution[0]?.containerSrc ?? "";
        told.tasks.push({ end: startTime + duration, duration, name, frame });
      }
    }).observe({ type: "longtask", buffered: true });
    const enter = ({ key, timeStamp }) => {
      if (key === "Enter") told.entered = performance.timeOrigin + timeStamp;
    };
    window.addEventListener("keydown", enter, { capture: true });
    return;
  }
  // By looking again and again: the document is another one by the time that the editor has written the preview's page.
  told.drawn = new Promise((drawn) => {
    const looking = setInterval(() => {
      if (!document.querySelector("#exercises .tempo-row")) return;
      clearInterval(looking);
      requestAnimationFrame(() => drawn(performance.timeOrigin + performance.now()));
    }, 5);
  });
}
