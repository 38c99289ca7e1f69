/** How long work may go on before others get a turn, in milliseconds: with a collection of garbage, below a frame. */
const SLICE = 2;

/** Cuts long work into slices. Call `pause` often: it waits only when the slice is used up. */
export class Slices {
  #began = performance.now();

  async pause(): Promise<void> {
    if (performance.now() - this.#began < SLICE) return;
    await new Promise((resolve) => setTimeout(resolve, 0));
    this.#began = performance.now();
  }
}
