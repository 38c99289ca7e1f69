/** How dates are said. Months are from January, weekdays from Monday. */
export const dateTexts = {
  months: [
    "January",
    "February",
    "March",
    "April",
    "May",
    "June",
    "July",
    "August",
    "September",
    "October",
    "November",
    "December",
  ],
  shortMonths: ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"],
  weekdays: ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"],
  shortWeekdays: ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"],
  today: "today",
  yesterday: "yesterday",
  /** A day of a month that is named behind it or elsewhere. */
  dayOfMonth: (day: number) => `${day}`,
  /** From one date to another. */
  fromTo: (first: string, last: string) => `${first} to ${last}`,
};
