import type { StaffParams, StaffResult } from "../../shared/staff.ts";
import { staffUnderCursor } from "../features/preview/staff.ts";
import type { Place } from "./session.ts";

/** Nothing is drawn narrower or wider, in pixels. */
const NARROWEST = 160;
const WIDEST = 4000;

export async function staff({ session, journal, uri }: Place, params: StaffParams): Promise<StaffResult> {
  const drawer = await session.staffDrawer();
  const width = Math.min(WIDEST, Math.max(NARROWEST, params.width));
  return staffUnderCursor(journal, uri, params.position.line, {
    drawer,
    width,
    fingerings: params.fingerings === true,
  });
}
