/** What is declared of a piece or a movement, a fact each. */
export const pieceTexts = {
  lastNote: (note: string) => `last note ${note}`,
  bars: (count: number) => `${count} bars`,
  goal: (tempo: string) => `goal ${tempo}`,
  movement: (title: string, movement: string, name: string | undefined) =>
    `${title}, movement ${movement}${name ? `: ${name}` : ""}`,
  due: (date: string) => `due ${date}`,
  dueIn: (date: string, when: string) => `due ${date} (${when})`,
};
