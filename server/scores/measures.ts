import type { Staff, Stretch } from "../notation/staff.ts";
import { tupletsOf } from "../notation/tuplets.ts";

/** Where notes have no beams, and where they have: so many go into a measure. A line of music holds about as many. */
const MOST_PLAIN = 8;
const MOST_BEAMED = 16;

/**
 * Where a staff may be broken into lines: stretches of whole beams and tuplets. They are no bars, as an exercise has no
 * metre; but most programs break a staff only between measures.
 */
export function measuresOf(staff: Staff): readonly Stretch[] {
  const most = staff.value.base >= 8 ? MOST_BEAMED : MOST_PLAIN;
  const measures: Stretch[] = [];
  let from = 0;
  let to = -1;
  for (const unit of unitsOf(staff)) {
    if (unit.to - from + 1 > most && to >= from) {
      measures.push({ from, to });
      from = unit.from;
    }
    to = unit.to;
  }
  return [...measures, { from, to }];
}

/** Each note stands in one: a tuplet, a beam, or a note by itself. */
function unitsOf(staff: Staff): readonly Stretch[] {
  const groups = staff.value.tuplet ? tupletsOf(staff) : staff.beams;
  const inGroup = new Map(groups.map((group) => [group.from, group]));
  const units: Stretch[] = [];
  for (let i = 0; i < staff.notes.length; i = units.at(-1)!.to + 1) units.push(inGroup.get(i) ?? { from: i, to: i });
  return units;
}
