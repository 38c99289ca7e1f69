/** What can be listed. */
export const LISTS = ["instruments", "kinds", "patterns", "terms", "codes"] as const;
export type ListName = (typeof LISTS)[number];
