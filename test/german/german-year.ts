import { isoDate, parseIsoDate, weekday } from "../../server/journal/calendar.ts";

/** The last day of the year below; a Sunday. */
export const LAST_DAY = "2026-06-28";

const HEAD = `player Wiebke
instrument Altblockflöte
names german
piece "Abendlied" as Abendlied: g-Moll, goal Viertel=72, due 2026-07-04
piece "Reigen": last note G4, 1 flat, range D4 to G5
piece "Menuett": F-Dur
aim d-Moll melodisch, Terzen, Achtel bei 96 by 2026-08-30
aim F-Dur, gebunden, Achtel bei 60
aim B-Dur, Achtel bei 80 by 2026-06-20
`;

/** Half a year in German words, so that every English word in what is shown of it is left over; invented. */
export function germanYear(): string {
  const first = parseIsoDate("2026-01-05")!;
  const last = parseIsoDate(LAST_DAY)!;
  const days: string[] = [];
  for (let day = first; day < last; day++) {
    const week = Math.floor((day - first) / 7);
    if (weekday(day) === 1) days.push(mondayIn(week, isoDate(day)));
    if (weekday(day) === 4) days.push(thursdayIn(week, isoDate(day)));
  }
  return `${HEAD}${days.join("\n")}\n`;
}

function mondayIn(week: number, date: string): string {
  const tempo = 60 + week;
  return `${date}, 45 Minuten
Einspielen, 10 Minuten
  lange Töne, 5 Minuten
Technik, 20 Minuten
  d-Moll melodisch, Terzen, gebunden, Achtel bei ${tempo} sauber, ${tempo + 8} ungleichmäßig
  d-Moll melodisch, Terzen, gestoßen, Achtel bei ${tempo - 6} sauber
  F-Dur, gestoßen, Achtel bei 72 sauber
Stücke, 15 Minuten
  Abendlied, Takte ${1 + (week % 5) * 8}-${8 + (week % 5) * 8}, bei ${50 + week} sauber`;
}

function thursdayIn(week: number, date: string): string {
  return `${date}, 30 Minuten
${week === 20 ? "Unterricht, 30 Minuten\nset g-Moll, gebunden 4 Tage\nset „Zeile 4 klatschen“\nset F-Dur, Terzen by 2026-07-01\n" : ""}  F-Dur, gestoßen, Achtel bei 72 sauber
  g-Moll harmonisch, Achtel bei ${54 + (week % 3)} ungleichmäßig
  Menuett, langsam`;
}
