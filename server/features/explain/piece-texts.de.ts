import type { pieceTexts as english } from "./piece-texts.ts";

export const pieceTexts: typeof english = {
  lastNote: (note) => `Schlusston ${note}`,
  bars: (count) => `${count} ${count === 1 ? "Takt" : "Takte"}`,
  goal: (tempo) => `Ziel ${tempo}`,
  movement: (title, movement, name) => `${title}, ${movement}. Satz${name ? `: ${name}` : ""}`,
  due: (date) => `bis ${date}`,
  dueIn: (date, when) => `bis ${date} (${when})`,
};
