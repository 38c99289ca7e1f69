// Writes days as the text of a journal, in the layout that `daystave format` keeps.
import { entryLine } from "./entries.mjs";

/**
 * How much of a sitting an entry of a phase takes, beside the others; a warm-up has at most five minutes to an entry.
 */
const WEIGHTS = { "warm-up": 0.7, groundwork: 1, fluency: 0.8, studies: 1.3, pieces: 1.4, "tenor corner": 1.2 };
/** Minutes are written in fives. */
const STEP = 5;

/** One day, ending in a line break. */
export function dayText(day, random) {
  const [first, ...others] = day.sittings;
  const head = [day.date + (day.weekday ? ` ${day.weekday}` : ""), day.words, amount(first.minutes)];
  const lines = [head.filter(Boolean).join(", "), ...sittingLines(day, first, random)];
  for (const sitting of others) {
    lines.push([`session ${sitting.clock}`, amount(sitting.minutes)].filter(Boolean).join(", "));
    lines.push(...sittingLines(day, sitting, random));
  }
  return `${lines.join("\n")}\n`;
}

function amount(minutes) {
  return minutes && `${minutes} min`;
}

function sittingLines({ week }, sitting, random) {
  const minutes = phaseMinutes(sitting);
  return sitting.lines.map((line) => {
    const indent = line.phase ? "  " : "";
    if (line.type === "phase") return phaseLine(line, minutes.get(line));
    if (line.type === "entry") return indent + entryLine(line.text, week, random);
    if (line.type === "remark") return `${indent}  ${line.text}`;
    return line.type === "break" ? indent + line.text : line.text;
  });
}

function phaseLine({ text, company }, minutes) {
  return [text, amount(minutes), company].filter(Boolean).join(", ");
}

/** The minutes of each phase: those that are said, and for the others their share of what is left of the sitting. */
function phaseMinutes({ minutes, lines }) {
  const phases = lines.filter(({ type }) => type === "phase");
  const shares = new Map(phases.map((phase) => [phase, phase.minutes]));
  const open = phases.filter((phase) => phase.minutes === undefined);
  if (!minutes || open.length === 0) return shares;
  let left = minutes - phases.reduce((sum, phase) => sum + (phase.minutes ?? 0), 0);
  for (const [i, phase] of open.entries()) {
    const weights = open.slice(i).map((each) => weightOf(each, lines));
    const room = left - STEP * (weights.length - 1);
    if (room < STEP) throw new Error(`too little time: ${lines.map(({ text }) => text).join(" | ")}`);
    const fair = (left * weights[0]) / weights.reduce((sum, weight) => sum + weight, 0);
    const most = phase.letter === "w" ? STEP * entriesOf(phase, lines) : room;
    const share = i === open.length - 1 ? left : Math.min(room, most, Math.max(STEP, Math.round(fair / STEP) * STEP));
    shares.set(phase, share);
    left -= share;
  }
  return shares;
}

/** The weight of a phase: that of its entries together. */
function weightOf(phase, lines) {
  return (WEIGHTS[phase.text] ?? 1) * Math.max(1, entriesOf(phase, lines));
}

function entriesOf({ letter }, lines) {
  return lines.filter(({ type, phase }) => type === "entry" && phase === letter).length;
}
