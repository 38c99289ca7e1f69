import type { placeTexts as english } from "./place-texts.ts";

/** One, and several. */
const NOUNS: Readonly<Record<string, readonly [string, string]>> = {
  bar: ["Takt", "Takte"],
  bars: ["Takt", "Takte"],
  lines: ["Zeile", "Zeilen"],
  page: ["Seite", "Seiten"],
  var: ["Variation", "Variationen"],
  letter: ["Buchstabe", "Buchstaben"],
  section: ["Abschnitt", "Abschnitte"],
  part: ["Teil", "Teile"],
  verse: ["Strophe", "Strophen"],
  phrase: ["Phrase", "Phrasen"],
  strain: ["Teil", "Teile"],
  "upbeat to": ["Auftakt zu", "Auftakt zu"],
};

export const placeTexts: typeof english = {
  place: (noun, which) => {
    const [one, several] = NOUNS[noun] ?? [noun, noun];
    const named = which
      .replace(/([\dA-Z])[-–](?=\d|[A-Z]\b)/g, "$1–")
      .replace(/-end\b/, " bis Ende")
      .replace(/ to end\b/, " bis Ende")
      .replace(/ to (?=\w)/, " bis ");
    return `${/^[\dA-Za-z]+$/.test(named) ? one : several} ${named}`;
  },
  movement: (which) => (/^\d+$/.test(which) ? `${which}. Satz` : `Satz ${which}`),
  fromTheTop: "von Anfang an",
};
