/** What is said of a whole day's plan: what kind of day it is, how long it is and why, or why there is nothing. */
export const kindOfDayTexts = {
  rest: "Today is a day of rest.",
  tooShort: "Under 5 minutes nothing needs a plan: play one thing slowly that goes well.",
  awayTooShort: "Five minutes without the instrument, or none.",
  quietDay: "A quiet day is best.",
  playedOfThem: (minutes: number) => `You have played ${minutes} of them today.`,
  thatWasTheTime: "That was today's time: leave it at that, and rest.",
  thatWasHalf: "That was today's half: leave it at that, and rest.",
  limit: (minutes: number, instrument: string) => `At most ${minutes} minutes a day on the ${instrument}.`,
  limitUsed: (minutes: number, instrument: string, used: number) =>
    `At most ${minutes} minutes a day on the ${instrument}, of which ${used} are used up.`,
  afterAway: (time: string) => `One of the first days back after ${time} away`,
  afterIllness: "One of the first days back after being ill",
  firstDayBack: (back: string, time: string) => `${back}: ${time}, and nothing fast.`,
  concertToday: "The concert is today: a short warm-up, and nothing pushed.",
  concertTomorrow: "The concert is tomorrow: half the time, and nothing pushed.",
  concertAhead: (days: number) => `The concert is in ${days} days: nothing above what is steady.`,
  pushed: "The last two days went beyond what is steady: nothing needs pushing today.",
  daysOff: (days: number, time: string) =>
    `After ${days} ${days === 1 ? "day" : "days"} off, an easy start: ${time}, and nothing above what is steady.`,
  /** How long one plays at most, in the middle of a sentence. */
  insteadOf: (minutes: number, wished: number) => `${minutes} minutes instead of ${wished}`,
  shortTime: "a short time",
};
