/** How days and numbers of them are said in what a plan, an aim or a lesson says. */
export const dayTexts = {
  on: (date: string) => `on ${date}`,
  /** In the middle of a sentence. */
  weekOf: (monday: string) => `the week of ${monday}`,
  today: "today",
  yesterday: "yesterday",
  tomorrow: "tomorrow",
  /** Two or more. */
  daysAgo: (days: number) => `${days} days ago`,
  inDays: (days: number) => `in ${days} days`,
  days: (count: number) => `${count} ${count === 1 ? "day" : "days"}`,
  /** How long a break was. */
  weeksAway: (count: number) => `${count} ${count === 1 ? "week" : "weeks"}`,
  monthsAway: (count: number) => `${count} ${count === 1 ? "month" : "months"}`,
  yearsAway: (count: number) => `${count} ${count === 1 ? "year" : "years"}`,
  forToday: "for today",
  forDay: (date: string) => `for ${date}`,
  wasFor: (date: string) => `was for ${date}`,
  /** Small numbers, from none on. */
  numbers: ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"],
};
