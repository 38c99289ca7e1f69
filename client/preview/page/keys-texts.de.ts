import type { keysTexts as english } from "./keys-texts.ts";

export const keysTexts: typeof english = {
  caption: "Übetage nach Art und Vorzeichen",
  /** `D-Dur`, `D-Moll-Pentatonik`, `D-Dur-Dreiklang`, `D harmonisches Moll` */
  ofKind: (kind) =>
    /^(?:Dur|Moll)/.test(kind) ? `-${kind.replace(/^(Dur|Moll)dreiklang$/, "$1-Dreiklang")}` : ` ${kind}`,
  days: (days) => (days === 0 ? "keine Tage" : days === 1 ? " Tag" : " Tage"),
  hiddenLeft: (left) => `← noch ${keys(left)} links`,
  hiddenRight: (right) => `noch ${keys(right)} rechts →`,
  hiddenOnBothSides: (left, right) => `← noch ${keys(left)} links, ${right} rechts →`,
  also: "Außerdem",
  showOthers: "Übrige Tonarten zeigen",
  foldOthers: "Übrige Tonarten ausblenden",
};

function keys(count: number): string {
  return `${count} ${count === 1 ? "Tonart" : "Tonarten"}`;
}
