// Sizes of what stands on a board, in points and millimetres: one set for the stylesheet and for the heights that are worked
// out before a browser sees a page.

export const BOARD_TYPE = {
  title: { points: 18, bold: true },
  facts: { points: 11 },
  text: { points: 10 },
  strong: { points: 10, bold: true },
  small: { points: 9 },
  cue: { points: 9.5 },
} as const;

export const BOARD_MEASURES = {
  titleLine: 8,
  factsLine: 5,
  headLine: 4.6,
  gap: 1.5,
  side: 60,
  sideGap: 4,
  /** What most of a row do stands in it on one line. */
  minutes: 30,
  minutesLine: 4.4,
  smallLine: 3.7,
  textLine: 4.1,
  padding: 1,
  stationsAcross: 4,
  stationGap: 1.2,
  stationLine: 4.2,
  rollRow: 5.9,
  /** Of the list to tick, where it has a page's width: at most so many columns, no narrower than this. */
  rollColumns: 5,
  rollColumn: 50,
  rollGap: 3.5,
  remindersGap: 5,
  cueLine: 4,
} as const;

/** Groups side by side on one page. */
export const MOST_GROUPS = 6;
/** Names under the group, as long as they are few enough to read. */
export const MOST_NAMES_IN_HEAD = 8;
