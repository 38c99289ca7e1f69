import { MOST_MINUTES_ASKED } from "../history/thresholds.ts";
import type { Arguments, Option } from "./command.ts";
import { printable } from "./printable.ts";

/** The option of commands that make a plan. */
export const MINUTES: Option = {
  type: "string",
  value: "N",
  help: `the time there is, in whole minutes up to ${MOST_MINUTES_ASKED}`,
};

export type MinutesAsked =
  | { readonly ok: true; readonly minutes?: number }
  | { readonly ok: false; readonly reason: string };

/** How long a plan may be; as long as usual where nothing is said. */
export function minutesAsked(values: Arguments["values"]): MinutesAsked {
  const text = values.get("minutes");
  if (text === undefined) return { ok: true };
  const minutes = /^\d{1,4}$/.test(text) ? Number(text) : Number.NaN;
  if (minutes <= MOST_MINUTES_ASKED) return { ok: true, minutes };
  return {
    ok: false,
    reason: `“--minutes” takes whole minutes up to ${MOST_MINUTES_ASKED}, such as 25, not “${printable(text)}”.`,
  };
}
