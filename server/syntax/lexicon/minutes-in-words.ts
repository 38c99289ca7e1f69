/**
 * Numbers of minutes in words, beyond those that count anything: `twenty minutes`, `un'ora e dieci`. By the number, in
 * English, German, French, Dutch, Italian and Spanish: common practice, no source; the last three from memory.
 */
const IN_WORDS: Readonly<Record<number, string>> = {
  5: "five | fünf | cinq | vijf | cinque | cinco",
  10: "ten | zehn | dix | tien | dieci | diez",
  15: "fifteen | fünfzehn | quinze | vijftien | quindici | quince",
  20: "twenty | zwanzig | vingt | twintig | venti | veinte",
  25: "twenty-five | fünfundzwanzig | vingt-cinq | vijfentwintig | venticinque | veinticinco",
  30: "thirty | dreißig | dreissig | trente | dertig | trenta | treinta",
  35: "thirty-five | fünfunddreißig | trente-cinq | vijfendertig | trentacinque",
  40: "forty | vierzig | quarante | veertig | quaranta | cuarenta",
  45: "forty-five | fünfundvierzig | quarante-cinq | vijfenveertig | quarantacinque",
  50: "fifty | fünfzig | cinquante | vijftig | cinquanta | cincuenta",
};

/** The numbers by their words. */
export const MINUTES_IN_WORDS: ReadonlyMap<string, number> = new Map(
  Object.entries(IN_WORDS).flatMap(([value, words]) =>
    words.split(" | ").map((word) => [word, Number(value)] as const),
  ),
);
