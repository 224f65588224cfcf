// What the README has pictures of.

export const PICTURED = 'handball-spring';

export interface Picture {
  readonly file: string;
  /** Of the written build. */
  readonly page: string;
  /** What is taken of the page: the first of these. */
  readonly part: string;
  readonly lies: 'portrait' | 'landscape';
}

export const PICTURES: readonly Picture[] = [
  { file: 'card.png', page: 'weeks/2027-03-08.html', part: '.sheet', lies: 'portrait' },
  { file: 'board.png', page: 'sessions/2027-03-04.html', part: '.board', lies: 'landscape' },
  { file: 'season.png', page: 'season.html', part: '.chart', lies: 'landscape' },
];
