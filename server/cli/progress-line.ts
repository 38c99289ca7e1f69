import type { Output, Progress } from "./io.ts";

/** Work that is done sooner shows nothing; in milliseconds. */
const QUIET = 700;
/** The line is written anew no more often, in milliseconds. */
const PAUSE = 100;

const START_OF_LINE = "\r";
/** `EL` of ECMA-48: erases to the end of the line. */
const ERASE = "\u001B[K";

/** One line on a terminal that says how far long work is, and is gone when anything else is written. */
export class ProgressLine {
  #next: number;
  #isShown = false;

  /** @param clock milliseconds, from whenever */
  constructor(
    private readonly terminal: Output,
    private readonly clock: () => number,
  ) {
    this.#next = clock() + QUIET;
  }

  readonly show: Progress = (doing, done, of) => {
    const now = this.clock();
    if (now < this.#next) return;
    this.#next = now + PAUSE;
    this.#isShown = true;
    const amount = of === undefined ? `${done}` : `${done} of ${of}`;
    this.terminal.write(`${START_OF_LINE}${doing}: ${amount}${ERASE}`);
  };

  clear(): void {
    if (this.#isShown) this.terminal.write(START_OF_LINE + ERASE);
    this.#isShown = false;
  }

  /** The same output, before which the line goes away. */
  before(output: Output): Output {
    return {
      write: (content) => {
        this.clear();
        output.write(content);
      },
    };
  }
}
