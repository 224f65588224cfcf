// The numbers that printed pages add to a build: who is named how, what a board holds together, how far pages look.
// Read by src/report alone. All of it is common practice (C).

export const SHEETS = {
  /** Athletes under this age, or of an unknown one, stand on pages with a first name or a number only. */
  firstNameUnderAge: 16,
  /** What a lift is lightened by, in per cent, for somebody who can't do it as written today. */
  lighterPercent: 10,
  /** Pain and effort are told on a scale up to this. */
  scaleMost: 10,
  /** Days of recorded pain that are shown to whoever treats an athlete. */
  painDays: 28,
  /** What no more than one in so many athletes do is no row of a board of several groups. */
  boardRowOneIn: 7,
  /** Whoever does so many per cent of a session in exercises that nobody else has does all of it apart. */
  boardApartPercent: 25,
  /** So many minutes off the row's, a group's exercise is told its own time; and an athlete, theirs. */
  boardGroupOffMinutes: 4,
  boardAthleteOffMinutes: 8,
  /** A board tells the next competition and tests up to so many days ahead. */
  boardDaysAhead: 8,
} as const;
