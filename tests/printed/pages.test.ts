// Pages as a browser prints them and people read them: every kind, on both papers, of real seasons and of hard cases.
// Nothing is cut, nothing lies on anything else, no type is under nine points, every word stands out in grey; axe and
// html-validate find nothing; the first page leads everywhere by keyboard.

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import axe from 'axe-core';
import { HtmlValidate } from 'html-validate';
import { chromium } from 'playwright-core';
import { render } from 'preact-render-to-string';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { swatch } from '../../src/render/html/element.ts';
import { PAPERS } from '../../src/render/html/paper.ts';
import type { Paper } from '../../src/render/html/paper.ts';
import { contrast, dotsIn, greyPage, overlaps, pdfSize, pdfWords, typeSizes } from './pdf.ts';
import { haveAll } from './programs.ts';
import { fearedReview, reviewFile } from './review-files.ts';
import { emptyBuild, stressBuild } from './stress-build.ts';
import { exampleBuild, putOnDisk, writtenFiles } from './written.ts';

const MINUTES = 60_000;
/** Words that stand below a board whose place has a long name. */
const FOOT_WORDS = 20;

/** The builds, and which of their pages are printed: a few of each kind. */
const BUILDS: readonly { readonly name: string; readonly paper: Paper; readonly pages: readonly string[] }[] = [
  {
    name: 'handball-spring',
    paper: 'a4',
    pages: [
      'athletes/johanne.html',
      'weeks/2027-01-25.html',
      'sessions/2027-01-28.html',
      'sessions/2027-03-02.html',
      'season.html',
      'index.html',
      'physio.html',
    ],
  },
  {
    name: 'jumpers-two-peaks',
    paper: 'letter',
    pages: ['weeks/2027-01-04.html', 'sessions/2027-01-09.html', 'index.html', 'physio.html'],
  },
  { name: 'youth-group', paper: 'a4', pages: ['weeks/2027-03-15.html', 'season.html', 'physio.html'] },
  {
    name: 'four-weeks',
    paper: 'letter',
    pages: ['weeks/2027-05-03.html', 'season.html'],
  },
  {
    name: 'stress-metric',
    paper: 'a4',
    pages: [
      'athletes/athlete-01.html',
      'athletes/athlete-04.html',
      'athletes/nothing.html',
      'weeks/2027-01-04.html',
      'sessions/2027-01-04.html',
      'sessions/2027-01-06.html',
      'season.html',
      'index.html',
      'review.html',
      'physio.html',
    ],
  },
  {
    name: 'stress-imperial',
    paper: 'letter',
    pages: ['athletes/athlete-01.html', 'athletes/athlete-03.html', 'sessions/2027-01-04.html', 'physio.html'],
  },
  { name: 'harbour-diary', paper: 'letter', pages: ['review.html'] },
  { name: 'empty', paper: 'letter', pages: ['index.html', 'season.html', 'physio.html'] },
];

const buildOf = (name: string): ReturnType<typeof exampleBuild> =>
  name === 'empty'
    ? emptyBuild()
    : name.startsWith('stress')
      ? stressBuild(name.endsWith('imperial') ? 'imperial' : 'metric')
      : exampleBuild(name);

/** What is written of a build, and its Monday page. */
async function pagesOf(name: string, paper: Paper): Promise<ReadonlyMap<string, string>> {
  const build = buildOf(name);
  const files = await writtenFiles(build, paper);
  const review = name.startsWith('stress') ? fearedReview(build, paper) : reviewFile(build, paper);
  return review === undefined ? files : new Map([...files, ['review.html', review]]);
}

const everyPage = BUILDS.flatMap(({ name, paper, pages }) => pages.map((path) => ({ name, paper, path })));

describe.runIf(haveAll('chromium', 'pdfinfo', 'pdftotext', 'pdftohtml', 'pdftoppm'))('pages in a browser', () => {
  let folder = '';
  let browser: Browser | undefined;
  let tab: Page;
  const written = new Map<string, ReadonlyMap<string, string>>();

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'footfall-pages-'));
    for (const { name, paper } of BUILDS) {
      const files = await pagesOf(name, paper);
      written.set(name, files);
      putOnDisk(join(folder, name), files);
    }
    browser = await chromium.launch({
      executablePath: '/usr/bin/chromium',
      args: [
        '--no-sandbox',
        '--disable-gpu',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
      ],
    });
    tab = await browser.newPage();
  }, 3 * MINUTES);

  afterAll(async () => {
    await browser?.close();
    rmSync(folder, { recursive: true, force: true });
  });

  const open = async (name: string, path: string, media: 'print' | 'screen'): Promise<void> => {
    await tab.emulateMedia({ media });
    await tab.goto(`file://${join(folder, name, path)}`);
  };

  const print = async (name: string, path: string): Promise<string> => {
    await open(name, path, 'print');
    const file = join(folder, `${name}-${path.replaceAll('/', '-')}.pdf`);
    await tab.pdf({ path: file, preferCSSPageSize: true });
    return file;
  };

  /** Sheets of two half-page cards each, and how many cards are higher than their half. */
  const sheetsOnPage = async (): Promise<{ readonly sheets: number; readonly cut: number }> =>
    await tab.evaluate(() => {
      const cards = [...document.querySelectorAll('.card')];
      return {
        sheets: Math.ceil(cards.length / 2),
        cut: cards.filter((card) => {
          const style = getComputedStyle(card);
          const height = card.getBoundingClientRect().height - Number.parseFloat(style.paddingTop);
          return height > Number.parseFloat(style.minHeight) + 1.5;
        }).length,
      };
    });

  /** Pages that a board was laid out on. */
  const boardPagesOn = async (): Promise<number> =>
    await tab.evaluate(() => document.querySelectorAll('article.board').length);

  /** Who has a session apart from the rows, and isn't named on the first page of the board. */
  const unnamedOnFirst = async (): Promise<readonly string[]> =>
    await tab.evaluate(() => {
      const first = document.querySelector('article.board')?.textContent ?? '';
      const own = [...document.querySelectorAll('.own li > b:first-child')];
      return own.map((one) => (one.textContent ?? '').replace(/:$/u, '')).filter((one) => !first.includes(one));
    });

  /** What stands out of the paper, which a browser would make smaller to fit. */
  const tooWide = async (): Promise<readonly string[]> =>
    await tab.evaluate(() => {
      const { right } = document.querySelector('main')?.getBoundingClientRect() ?? { right: 0 };
      return [...document.querySelectorAll('main *')]
        .filter(
          (element) => element.closest('svg, .unseen') === null && element.getBoundingClientRect().right > right + 2,
        )
        .map((element) => `${element.tagName} ${element.textContent.slice(0, 30)}`);
    });

  /** Sets and reps that run into the boxes to tick beside them. */
  const intoBoxes = async (): Promise<readonly string[]> =>
    await tab.evaluate(() =>
      [...document.querySelectorAll('.lines tr')].flatMap((row) => {
        const dose = row.querySelector('.dose');
        const box = row.querySelector('.boxes .box');
        if (dose === null || box === null) return [];
        const text = document.createRange();
        text.selectNodeContents(dose);
        const room = box.getBoundingClientRect().left - text.getBoundingClientRect().right;
        return room < 1 ? [row.textContent] : [];
      }),
    );

  test.each(everyPage)(
    '$name/$path prints on $paper, whole and readable',
    { timeout: 3 * MINUTES },
    async ({ name, paper, path }) => {
      const file = await print(name, path);
      const size = pdfSize(file);
      const upright = [PAPERS[paper].width, PAPERS[paper].height].map((mm) => (mm * 72) / 25.4);
      const isLandscape = path.startsWith('sessions/') || path === 'season.html';
      const [width = 0, height = 0] = isLandscape ? upright.toReversed() : upright;
      expect(size.pages).toBeGreaterThan(0);
      expect([Math.abs(size.width - width) < 1.5, Math.abs(size.height - height) < 1.5]).toEqual([true, true]);
      const pages = pdfWords(file);
      for (const words of pages) {
        const outside = words.filter(
          (word) => word.left < 15 || word.right > width - 15 || word.top < 10 || word.bottom > height - 10,
        );
        expect(outside.map(({ text }) => text)).toEqual([]);
        expect(overlaps(words)).toEqual([]);
      }
      expect(typeSizes(file)[0] ?? 9).toBeGreaterThanOrEqual(9);
      expect(await tooWide()).toEqual([]);
      expect(await intoBoxes()).toEqual([]);
      // Forty athletes in five groups may run over; a real squad's board is laid out page by page.
      const laidOut = await boardPagesOn();
      if (laidOut > 0 && !name.startsWith('stress')) expect(size.pages).toBe(laidOut);
      // No page holds the foot of a board and nothing else.
      const least = Math.min(...pages.map((words) => words.length));
      if (laidOut > 0) expect(least).toBeGreaterThan(FOOT_WORDS);
      expect(await unnamedOnFirst()).toEqual([]);
      if (/^(athletes|weeks)/u.test(path) && size.pages > 1)
        expect(await sheetsOnPage()).toEqual({ sheets: size.pages, cut: 0 });
    },
  );

  /** What is cut off on a phone: text out of its cell, and, of what isn't as wide as a board, out of the screen. */
  const cutOnPhone = async (): Promise<readonly string[]> =>
    await tab.evaluate(() => {
      const cells = [...document.querySelectorAll('.timetable td, .timetable th, .card h2, .card header p')];
      const cut = cells.filter((one) => one.scrollWidth > one.clientWidth + 1 && one.clientWidth > 0);
      const wide = document.querySelector('.timetable, .drawing') === null;
      const edge = document.documentElement.clientWidth + 1;
      const outside = [...document.querySelectorAll('.card *, .lists > *, .decisions *')].filter(
        (one) => wide && one.getBoundingClientRect().right > edge,
      );
      const [title, drawing] = [document.querySelector('.chart h2'), document.querySelector('.drawing')];
      const covered = (title?.getBoundingClientRect().bottom ?? 0) > (drawing?.getBoundingClientRect().top ?? Infinity);
      return [...cut, ...outside, ...(covered && title !== null ? [title] : [])].map((one) =>
        one.textContent.slice(0, 40),
      );
    });

  test.each(everyPage.filter(({ path }) => !path.startsWith('weeks/')))(
    '$name/$path is read on a phone',
    { timeout: 3 * MINUTES },
    async ({ name, path }) => {
      await tab.setViewportSize({ width: 390, height: 800 });
      await open(name, path, 'screen');
      const cut = await cutOnPhone();
      await tab.setViewportSize({ width: 1280, height: 720 });
      expect(cut).toEqual([]);
    },
  );

  const inGrey = everyPage.filter(({ name, path }) => name !== 'youth-group' && !path.startsWith('athletes/'));

  // 7 : 1 is what WCAG 2.2 asks for text in success criterion 1.4.6, its highest level.
  test.each(inGrey)(
    '$name/$path has every word stand out in grey',
    { timeout: 3 * MINUTES },
    async ({ name, path }) => {
      const file = await print(name, path);
      const page = greyPage(file);
      const weak = (pdfWords(file)[0] ?? [])
        .filter(({ text }) => /[\p{L}\p{N}]/u.test(text))
        .filter((word) => {
          const dots = dotsIn(page, word);
          return contrast(Math.min(...dots), Math.max(...dots)) < 7;
        });
      expect(weak.map(({ text }) => text)).toEqual([]);
    },
  );

  test('the patterns of eight groups are told apart in grey', async () => {
    const swatches = Array.from({ length: 8 }, (_, index) => render(swatch(index)));
    await tab.setContent(
      `<style>body { margin: 0 } svg { position: absolute; left: 0; width: 27mm; height: 12.6mm }${swatches
        .map((_, index) => `svg:nth-of-type(${index + 1}) { top: ${20 * index}mm }`)
        .join(' ')}</style>${swatches.join('')}`,
    );
    const file = join(folder, 'patterns.pdf');
    await tab.pdf({ path: file, format: 'A4', margin: { top: '0', left: '0' } });
    const page = greyPage(file);
    const mm = 72 / 25.4;
    const seen = swatches.map((_, index) =>
      dotsIn(page, { left: 0, top: 20 * index * mm, right: 27 * mm, bottom: (20 * index + 12.6) * mm }),
    );
    for (const [one, dots] of seen.entries()) {
      for (const [other, others] of seen.entries()) {
        if (other <= one) continue;
        const different = dots.filter((dot, at) => Math.abs(dot - (others[at] ?? 0)) > 128).length / dots.length;
        expect([one, other, different > 0.1]).toEqual([one, other, true]);
      }
    }
  });

  test.each(everyPage)('$name/$path lets axe find nothing', { timeout: 3 * MINUTES }, async ({ name, path }) => {
    await open(name, path, 'screen');
    await tab.evaluate(axe.source);
    const violations = await tab.evaluate<readonly string[]>(
      `axe.run().then(({ violations }) => violations.map(({ id, nodes }) => id + ': ' + nodes[0].html))`,
    );
    expect(violations).toEqual([]);
  });

  test.each(everyPage)('$name/$path asks for nothing from elsewhere', async ({ name, path }) => {
    const asked: string[] = [];
    tab.on('request', (request) => {
      if (!request.url().startsWith('file:')) asked.push(request.url());
    });
    await open(name, path, 'print');
    const scripts = await tab.evaluate(() => document.querySelectorAll('script, link, img, iframe').length);
    expect({ asked, scripts }).toEqual({ asked: [], scripts: 0 });
  });

  const examples = BUILDS.map(({ name }) => name).filter((name) => name !== 'empty' && name !== 'stress-imperial');

  test.each(examples)(
    'the first page of %s reaches every page by keyboard alone, and every page leads back',
    { timeout: 2 * MINUTES },
    async (name) => {
      const files = new Map(written.get(name));
      // The Monday page is asked for alone, and written by itself.
      files.delete('review.html');
      await open(name, 'index.html', 'screen');
      const links = await tab.evaluate(() =>
        [...document.querySelectorAll('a')].map((link) => link.getAttribute('href')),
      );
      const focused: (string | null)[] = [];
      for (let count = 0; count < links.length; count += 1) {
        await tab.keyboard.press('Tab');
        focused.push(await tab.evaluate(() => document.activeElement?.getAttribute('href') ?? null));
      }
      expect(focused).toEqual(links);
      expect(new Set(links)).toEqual(new Set([...files.keys()].filter((path) => path !== 'index.html')));
      expect(new Set(links).size).toBe(links.length);
      for (const path of files.keys()) {
        if (!path.endsWith('.html') || path === 'index.html') continue;
        const back = /<a href="([^"]+)"/u.exec(files.get(path) ?? '')?.[1] ?? '';
        expect([path, join(dirname(path), back)]).toEqual([path, 'index.html']);
      }
      await open(name, 'index.html', 'screen');
      await tab.keyboard.press('Tab');
      await tab.keyboard.press('Enter');
      await tab.waitForURL(/season\.html$/u);
      await tab.keyboard.press('Tab');
      await tab.keyboard.press('Enter');
      await tab.waitForURL(/index\.html$/u);
    },
  );
});

test(
  'html-validate finds nothing in any page',
  async () => {
    const validator = new HtmlValidate({
      extends: ['html-validate:recommended'],
      rules: {
        'void-style': 'off',
        'no-trailing-whitespace': 'off',
        'long-title': 'off',
        'no-raw-characters': 'off',
        'no-inline-style': 'off',
      },
    });
    for (const { name, paper } of BUILDS) {
      const files = await pagesOf(name, paper);
      const pages = [...files].filter(([path]) => path.endsWith('.html'));
      const kinds = new Map(pages.map(([path, text]) => [path.split('/')[0] ?? '', { path, text }]));
      for (const { path, text } of kinds.values()) {
        const report = await validator.validateString(text);
        const messages = report.results.flatMap((result) =>
          result.messages.map(({ ruleId, message, line }) => `${name}/${path}:${line} ${ruleId} ${message}`),
        );
        expect(messages.slice(0, 5)).toEqual([]);
      }
    }
  },
  2 * MINUTES,
);
