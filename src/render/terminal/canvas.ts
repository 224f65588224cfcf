// What a page of the terminal is written on: its width in columns and its colours. Handed to every renderer of this
// folder.

import type { Palette } from '../palette.ts';

export interface Canvas {
  readonly palette: Palette;
  /** Columns to fill. */
  readonly width: number;
}
