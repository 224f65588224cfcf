// Draws the pictures of the README anew: `npm run pictures`, after pages changed. A sheet of cards, a board and the season
// chart of an example as they are printed, by Debian's Chromium.

import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { exampleBuild, putOnDisk, writtenFiles } from '../printed/written.ts';
import { PICTURED, PICTURES } from './pictured.ts';

/** Dots a sheet of A4 is wide, upright or lying, at 96 to an inch. */
const WIDTHS = { portrait: 794, landscape: 1123 } as const;

/** White around what is taken. */
const EDGE = 20;

const folder = mkdtempSync(join(tmpdir(), 'footfall-pictures-'));
const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox', '--disable-gpu'] });
try {
  putOnDisk(folder, await writtenFiles(exampleBuild(PICTURED), 'a4'));
  mkdirSync(join('examples', PICTURED, 'pictures'), { recursive: true });
  const tab = await browser.newPage();
  await tab.emulateMedia({ media: 'print' });
  for (const { file, page, part, lies } of PICTURES) {
    await tab.setViewportSize({ width: WIDTHS[lies], height: 1200 });
    await tab.goto(`file://${join(folder, page)}`);
    await tab.addStyleTag({ content: `body { padding: ${EDGE}px 0; } ${part} ~ * { display: none; }` });
    const box = await tab.locator(part).first().boundingBox();
    if (box === null) throw new Error(`${page} has no ${part}`);
    const clip = { x: box.x - EDGE, y: box.y - EDGE, width: box.width + 2 * EDGE, height: box.height + 2 * EDGE };
    await tab.screenshot({ path: join('examples', PICTURED, 'pictures', file), clip, fullPage: true });
  }
} finally {
  await browser.close();
  rmSync(folder, { recursive: true, force: true });
}
