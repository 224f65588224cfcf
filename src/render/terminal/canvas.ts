// What a page of the terminal is written on: its width and its colours.

import type { Palette } from '../palette.ts';

export interface Canvas {
  readonly palette: Palette;
  /** Columns to fill. */
  readonly width: number;
}
