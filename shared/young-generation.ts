/**
 * V8 keeps new objects in a heap of their own, which grows to 48 MB. A server makes much and keeps little: without
 * that room it peaks at 111 MB in place of 137 when it opens ten years, and is no slower (Node 20, medians of eight).
 * Browsers have no such flag.
 */

/** Said when a process is started: one half of that heap may have so many MB. */
export const SMALL_YOUNG_GENERATION = "--max-semi-space-size=1";
/** Said in a process that runs, and looked at whenever that heap would grow. */
export const YOUNG_GENERATION_STAYS = "--semi-space-growth-factor=1";
