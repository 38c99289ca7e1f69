// What the history is judged by. These numbers are our own choices, and no study's; what they mean to a player is in
// the format reference, under "Weeks and trends" (syntaxes/FORMAT.md).

/** How sure the interval of a slope is, and the test that tells a rise or a fall from chance: once in twenty. */
export const CONFIDENCE = 0.95;

/** Under so many tested weeks it is too early to say anything. */
export const WEEKS_FOR_A_TREND = 4;

/** How far back one looks for how it goes lately, in ISO weeks: half a year. */
export const LATELY = 26;

/** A rise or a fall comes, from the first tested week to the last, to at least this part of the last one's tempo. */
export const LEAST_CHANGE = 0.04;

/** A week, or a day within one, whose best is under this part of what it is held against was slow work. */
export const NEAR_BEST = { numerator: 17, denominator: 20 };

/** A week is held against the best of so many weeks before it, empty ones passed over, */
export const WEEKS_BEFORE = 8;
/** but of at least so many, for which the week itself and those after it help out, */
export const LEAST_WEEKS_BESIDE = 4;
/** and none of them farther away than so many ISO weeks. */
export const WEEKS_AWAY = 26;

/** A tempo is known by what was tried of it in so many days before, */
export const TRIED_WITHIN = 84;
/** and is shown with how often it was reached from so many tries on, on so many days. */
export const LEAST_TRIES = 5;
export const LEAST_DAYS_TRIED = 2;
/** A tempo is steady that was reached in at least this share of so many tries. */
export const STEADY = { numerator: 4, denominator: 5 };

/**
 * A tempo over so many times what was before it may be a slip of the pen, and sets no other until it was reached on a
 * second day. Two integers, so that 90 after 60 is exactly none.
 */
export const LEAP = { numerator: 3, denominator: 2 };

/** Practice begins at this part of the steady tempo, or slower; so it stays where something hurt, or after a break. */
export const BEGIN_AT = 0.8;
/** After so many days without it, an exercise is begun a notch lower, and two. */
export const DAYS_FOR_A_NOTCH = [14, 28] as const;

/** After a word that the body hurts one goes easy for so many days, or until so many practised ones without one, */
export const SPARING_DAYS = 28;
export const DAYS_WITHOUT_PAIN = 3;
/** and then no faster than what is steady for so many more. */
export const EASING_DAYS = 2;
/** So many days in a row without practice are a break, after which one goes easy for so many practised ones. */
export const BREAK_DAYS = 21;
export const RETURN_DAYS = 3;

/** When a tempo may be reached is said from so many tested weeks on, the last of them within so many ISO weeks, */
export const WEEKS_FOR_A_FORECAST = 6;
export const WEEKS_TESTED_WITHIN = 4;
/** and no farther ahead than so many weeks: a year. */
export const FORECAST_LATEST_WEEKS = 52;

/** A piece that was worked on in so many days is in hand: twelve weeks. */
export const DAYS_IN_HAND = 84;
/** What was practised of keys is said of so many days, twelve weeks, unless others are chosen. */
export const DAYS_OF_KEYS = 84;
/** The key of a piece in hand is wanted again after so many days, and a key next to it after so many. */
export const KEY_WITHIN = 14;
export const NEIGHBOUR_WITHIN = 28;

/** A break cuts off what came before it where so many tested weeks after it come to */
export const WEEKS_ROUND_A_BREAK = 4;
/** at most this part of as many before it. */
export const FRESH = { numerator: 19, denominator: 20 };

/** A tempo has settled by so many tested weeks of the last 26, */
export const WEEKS_TO_SETTLE = 10;
/** of which so many have not gone above what was before them, */
export const LAST_WEEKS_SETTLED = 6;
/** in so many tries at least. */
export const TRIES_TO_SETTLE = 8;

/** Two ways of playing are held against each other in the weeks of the last so many */
export const COMPARED_WITHIN = 52;
/** in which both reached a tempo, from so many on in which they differ, */
export const LEAST_WEEKS_COMPARED = 6;
/** where they differ more than chance gives so often, */
export const CHANCE_OF_A_DIFFERENCE = 0.05;
/** and the one is at this part of the other, or below. */
export const WORTH_SAYING = 0.97;

// The plan of a day (server/plan/day-plan.ts).

/** Minutes that a plan is made of, and a pause. */
export const UNIT = 5;
/** Without a wish the usual minutes of so many practised days are planned, from so many days on, */
export const DAYS_OF_USUAL_MINUTES = 8;
export const LEAST_DAYS_OF_MINUTES = 3;
/** within these bounds; else so many. */
export const MINUTES_PLANNED = { least: 10, most: 60, unknown: 20 };
/** The longest time that may be asked for. */
export const MOST_MINUTES_ASKED = 600;
/** Without the instrument, and on the day of a concert, no longer than that. */
export const MINUTES_AWAY = 15;
export const MINUTES_ON_CONCERT_DAY = 20;
/** From so many units on there is a warm-up, and from so many on one of two. */
export const UNITS_FOR_A_WARM_UP = 4;
export const UNITS_FOR_TWO_OF_WARM_UP = 12;
/** From so many units on pieces come before the slow work, and something whole at the end. */
export const UNITS_FOR_A_CLOSE = 6;
/** A piece played through may take so many minutes in one go. */
export const LONGEST_WHOLE = 30;

/** Taken up again after so many days to so many, below a break, one goes unhurried for a day. */
export const DAYS_OFF = 7;
/** So many days ahead of a concert nothing is pushed, and every other day its pieces are played through. */
export const DAYS_BEFORE_A_CONCERT = 14;

/** After so many days without it an aim, or the key of a piece, is due before all others; */
export const LONG_AGO = 7;
/** an aim whose day may come too soon after so many, the key of a piece after so many, */
export const AIM_WITHIN = 3;
export const KEY_OF_A_PIECE_WITHIN = 5;
/** and nothing else until it has been left alone for more than so many. */
export const TURN = 2;
/** Finger changes are taken out of entries of so many days. */
export const FINGER_CHANGES_WITHIN = 14;
/** A stretch of a piece is so many bars, and waits for so many days. */
export const BARS_OF_A_STRETCH = 8;
export const STRETCH_WITHIN = 14;
/** Where nothing is steady, and of pieces, one goes by the best that was reached in so many days. */
export const REACHED_WITHIN = 28;
/** The end is played at this part of the tempo last reached whole. */
export const CLOSE_AT = 0.9;
/** What went well without the metronome is begun with it at this part of the tempo of an aim or a goal. */
export const FIRST_TEMPO_AT = 0.5;
/** A piece's day is named where it is so near. */
export const DAY_OF_A_PIECE_WITHIN = 60;
/** What was played so long ago is exercise of a former time. */
export const EXERCISES_WITHIN = 84;

/** A word of pain is answered for so many days. */
export const CARE_WITHIN = 7;
/** A week is full that has more than this times the middle of so many weeks before, of which so many are known, */
export const WEEK_ABOVE = 1.5;
export const WEEKS_OF_MINUTES = 12;
export const LEAST_WEEKS_OF_MINUTES = 4;
/** and so many minutes above the fullest of them. */
export const MINUTES_ABOVE = 30;
