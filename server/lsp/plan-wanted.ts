import type { PlanMinutesResult } from "../../shared/protocol.ts";
import { planMinutes as minutesOf, type PlanWanted } from "../features/commands/write-plan.ts";
import type { PlanWishes } from "../host/settings.ts";
import type { Place, Session } from "./session.ts";
import type { TodayParams } from "./today.ts";

/** A plan for today as the settings want it. */
export function planWanted(session: Session, uri: string, minutes: number | undefined): PlanWanted {
  const { plan } = session.settingsOf(uri);
  return { today: session.dayOf(uri), minutes: minutes ?? plan.minutes ?? undefined, ...wishes(plan) };
}

function wishes({ shares, longestLine, playBeforePause, unhurriedDays, reasons }: PlanWishes) {
  const settings = { ...shares, longestLine, playBeforePause, unhurriedDays: unhurriedDays !== "never" };
  return { settings, reasons };
}

export async function planMinutes({ session, uri }: Place, { textDocument }: TodayParams): Promise<PlanMinutesResult> {
  await session.workspace.walk(); // how long is usual may stand in any file of the journal
  const place = await session.placeOf(textDocument.uri);
  return place ? minutesOf(place.journal, uri, planWanted(session, uri, undefined)) : null;
}
