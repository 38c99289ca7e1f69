import type { OutcomeWords } from "./outcome-words.ts";

/**
 * How it went, in Dutch: from memory.
 */
export const DUTCH_OUTCOMES: OutcomeWords = {
  reached: `
    goed | heel goed | schoon | zuiver | netjes | prima | ok | oké | makkelijk | gemakkelijk | soepel | zeker |
    stabiel | gelijkmatig | lukt | gelukt | gaat goed | ging goed | foutloos | geen fouten | zonder fouten | niet
    slecht | mooi | top | perfect | uitstekend | in orde | beter dan gisteren | ja | eindelijk
  `,
  nearly: `
    bijna | net niet | bijna goed | bijna schoon | redelijk | matig | zo zo | gaat wel | beter | wordt beter |
    foutje | foutjes | fout | fouten | wiebelig | nog niet helemaal | wisselend
  `,
  not: `
    nee | slecht | slordig | rommelig | vals | ongelijk | onzuiver | gehaast | te snel | te hoog | te laag | hapert
    | hakkelig | struikel | gestruikeld | vastgelopen | mislukt | lukt niet | gaat niet | niet goed | niet schoon |
    niet zuiver | nog niet | moeilijk | stroef | kwijt
  `,
  intensifiers: "heel | erg | vrij | best | nogal | een beetje | meestal | nu | eindelijk | echt | nog | zo | steeds",
  negations: "niet | geen | nooit | nauwelijks | maar | behalve",
};
