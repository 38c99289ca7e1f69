/** Behind these a sentence says the other of what it said: `stiff but fine`. Common practice, no source. */
export const TURNS: ReadonlySet<string> = new Set(
  (
    "but now though then later otherwise aber jetzt doch danach sonst mais maintenant après ensuite sinon maar nu daarna verder " +
    "ma però ora adesso poi pero ahora luego después"
  ).split(" "),
);
