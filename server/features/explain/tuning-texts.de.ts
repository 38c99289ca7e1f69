import type { tuningTexts as english } from "./tuning-texts.ts";

export const tuningTexts: typeof english = {
  line: (tuning, told) => `Stimmung (${tuning}), Abstand von rein in Cent: ${told.join("; ")}`,
  thirds: (spread) => `Terzen ${spread}`,
  fifths: (spread) => `Quinten ${spread}`,
  equal: "gleichstufig",
  name: (a, temperament) => `A=${String(a).replace(".", ",")}, ${temperament}`,
  justOn: (tonic) => `rein auf ${tonic}`,
  pure: "rein",
  narrow: "zu eng",
  wide: "zu weit",
  wolf: "eine Wolfsquinte",
  alike: (several, size, ways) => `${several ? "alle " : ""}${size}${ways.length > 0 ? ` ${ways.join(", ")}` : ""}`,
  spread: (least, most, worst, more, ways) =>
    `${least} bis ${most}, am weitesten ab ${worst}${more > 0 ? ` und ${more} weitere` : ""}${ways.length > 0 ? ` (${ways.join(", ")})` : ""}`,
  pitch: (name, a, cents, concert) =>
    `**${name}**: A4 mit ${String(a).replace(".", ",")} Hz${cents === 0 ? "" : `, ${Math.abs(cents)} Cent ${cents < 0 ? "unter" : "über"} ${concert} Hz`}.`,
  noWolf: "Keine Quinte ist eine Wolfsquinte.",
  wolfFifth: (interval, cents, way) => `${interval} (${cents} Cent ${way})`,
  wolves: (count, listed) => `${count === 1 ? "Wolfsquinte" : "Wolfsquinten"}: ${listed}.`,
};
