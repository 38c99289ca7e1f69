import type { Spoken } from "../../shared/languages.ts";
import type { Surroundings } from "./session.ts";

/** Everything that needs the core. */
export type Handlers = typeof import("./handlers.ts");

/** What the entry point brings. */
export interface Host extends Surroundings {
  /**
   * The core is a bundle of its own; asked for once. `bundles` is where the client has them; without a language it
   * speaks English.
   */
  readonly handlers: (bundles: string | undefined, language: Spoken | undefined) => Promise<Handlers>;
}
