// What pages are rendered for, from the terminal they go to. Apart from what else commands print with, so that the pages
// of a build load nothing they don't use.

import type { Terminal } from '../host/terminal.ts';
import { createPalette } from '../render/palette.ts';
import type { Canvas } from '../render/terminal/canvas.ts';

/** As wide and as colourful as the terminal. */
export const canvasOf = ({ colours, width }: Terminal): Canvas => ({ palette: createPalette(colours), width });
