import type { Surroundings } from "./session.ts";

/** Everything that needs the core. */
export type Handlers = typeof import("./handlers.ts");

/** What the entry point brings. */
export interface Host extends Surroundings {
  /** The core is a bundle of its own in Node; asked for once. */
  readonly handlers: () => Promise<Handlers>;
}
