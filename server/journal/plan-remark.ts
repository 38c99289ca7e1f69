/**
 * Whether a remark is the plan's own: why a line is there, or a word of care. Nobody said it of what was played, so
 * whatever looks at remarks passes it over.
 *
 * @param text what stands behind the dashes
 */
export function isPlanRemark(text: string): boolean {
  return OF_THE_PLAN.test(text);
}

/** As `planLines` (`server/plan/plan-text.ts`) begins them. */
const OF_THE_PLAN = /^\s*(?:plan|care):/i;
