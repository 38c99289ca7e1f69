import { joined } from "./joined.ts";

// For whom somebody plays at home, in six languages: a title ends before. Common practice, no source.

export const PERSONS: ReadonlySet<string> = new Set(
  joined(
    "granny | gran | grandma | grandad | granddad | grandpa | nan | nana | nanny | mum | mummy | mom | mommy | dad | daddy | mother",
    "father | sister | brother | auntie | aunt | aunty | uncle | cousin | teacher | family | class | friends | neighbours | neighbors",
    "oma | opa | mama | papa | mutti | vati | tante | onkel | omi | opi | mamie | papi | papy | maman | tata | tonton | moeder | vader",
    "nonna | nonno | mamma | zia | zio | abuela | abuelo | abuelita | mamá | papá | tía | tío",
  ).split(" | "),
);

/** Before them. */
export const FOR_WHOM: ReadonlySet<string> = new Set(
  "to | for | für | pour | voor | aan | à | per | a | para".split(" | "),
);

/** Between: `to my granny`. */
export const WHOSE: ReadonlySet<string> = new Set(
  "my | the | our | his | her | meine | meiner | meinen | die | den | ma | mon | mes | mijn | de | la | il | mia | mio | mi".split(
    " | ",
  ),
);
