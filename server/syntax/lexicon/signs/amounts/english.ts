import { joined } from "../../joined.ts";
import type { SignTable } from "../sign-table.ts";

/** What stands beside an amount of time in English, or beside hours of the clock: common practice, no source. */
export const ENGLISH_AMOUNT_SIGNS: SignTable = {
  total: {
    total: joined(
      "all in | all together | all told | altogether | daily total | day total | grand total | in all | in total",
      "overall | practice total | session total | sum | sum total | time spent | time today | today's total",
      "todays total | tot | tot. | total | total for the day | total for today | total mins | total minutes",
      "total practice | total practiced | total practised | total time | total today | ttl",
    ),
  },
  "beside-total": {
    "beside a total": joined(
      "a | about | all | all in | all together | all told | all up | almost | altogether | and | approx",
      "at least | at most | at the bench | at the drums | at the harp | at the keyboard | at the kit",
      "at the organ | at the piano | call it | clocked | day | did | done | for today | full",
      "give or take | good | got in | i guess | i reckon | i think | in all | in bits | in total | in two goes",
      "in two sessions | it | just | like | logged | long | managed | maybe | mins | most ever | nearly",
      "of playing | of practice | of practise | of practising | only | or so | or thereabouts | overall | own",
      "own playing | own practice | own practise | own time | own work | played for | playing | practice",
      "practice time | practiced | practicing | practise | practised | practising | reh | rehearsal | roughly",
      "session | short | so | so far | solid | spread over the day | squeezed in | sum | that's | think",
      "this afternoon | this evening | this morning | time | tired | to date | today | tonight | tops | total",
      "total practice | total time | w a break | w breaks | w pauses | w rests | w/ a break | w/ breaks",
      "w/ pauses | w/ rests | with a break | with breaks | with gaps | with pauses | with rests | worth",
    ),
  },
  "counted-with": {
    "what is in it": joined(
      "excl | excl. | excluding | inc | inc. | incl | incl. | including | not counting | not incl | not incl.",
      "not including | of that | of which | plus a lesson | plus band | plus choir | plus lesson",
      "plus my lesson | plus orchestra | plus rehearsal | plus the lesson | plus the rehearsal",
    ),
  },
  "goes-on": {
    "goes on": "and | but",
  },
  "longer-time": {
    "more than a day": joined(
      "fortnight | last month | last week | last year | month | month so far | month to date | monthly | mth",
      "since last lesson | since the last lesson | so far this month | so far this week | so far this year",
      "term | this fortnight | this month | this term | this week | this wk | this year | week | week so far",
      "week to date | weekly | wk | wk so far | year | year so far | year to date | yr",
    ),
  },
  meeting: {
    meeting: joined(
      "band | choir | chorus | consort | duo | ensemble | group | jam | lesson | octet | orch | orchestra | own",
      "own practice | own practise | own work | practice | practise | quartet | quintet | reh | rehearsal",
      "sectional | session | sextet | trio",
    ),
  },
  "called-off": {
    "called off": "called off | canceled | cancelled | moved | moved to | postponed",
  },
};
