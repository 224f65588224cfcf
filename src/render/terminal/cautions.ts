// The cautions at the end of every page of a terminal, quietly and always.

import { CAUTIONS } from '../../report/cautions.ts';
import type { Canvas } from './canvas.ts';
import { hanging } from './layout.ts';

/** The cautions wrapped to the canvas. */
export function renderCautions({ palette, width }: Canvas): readonly string[] {
  return hanging('', CAUTIONS.join(' '), width).map((line) => palette.quiet(line));
}
