import type { Staff } from "./staff.ts";

/** How a staff is drawn. */
export interface StaffLook {
  /** In pixels, of the whole, which a short line need not fill. */
  readonly width: number;
  /** How large it is: at 1 staff lines lie ten pixels apart. */
  readonly scale: number;
  /** Different for each drawing on one page; letters, digits and hyphens. */
  readonly id: string;
  /** A CSS colour; what the page has where none is given. */
  readonly colour?: string;
}

/** A drawing as the text of an SVG, its size in pixels, and in how many lines of music. */
export interface StaffDrawing {
  readonly svg: string;
  readonly width: number;
  readonly height: number;
  readonly lines: number;
}

/** Whoever draws staves: a bundle of its own, which comes once a staff is wanted. */
export interface StaffDrawer {
  readonly drawStaves: (staves: readonly Staff[], look: StaffLook) => StaffDrawing;
  readonly fitsOneLine: (staff: Staff, look: Pick<StaffLook, "width" | "scale">) => boolean;
}
