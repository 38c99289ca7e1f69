/** English verbs that lead to what is practised behind `with`: common practice, no source. */
export const VERBS_BEFORE_WITH: ReadonlySet<string> = new Set(
  "start | started | starting | begin | began | beginning | finish | finished | end | ended | up | continued".split(
    " | ",
  ),
);
