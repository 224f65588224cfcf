// What is on a PDF, as poppler reads it: pages and their size, words with their boxes, sizes of type.

import { execFileSync } from 'node:child_process';

const run = (command: string, args: readonly string[]): string =>
  execFileSync(command, args, { encoding: 'utf8', maxBuffer: 200_000_000 });

export interface PdfSize {
  readonly pages: number;
  /** In points. */
  readonly width: number;
  readonly height: number;
}

export function pdfSize(file: string): PdfSize {
  const text = run('pdfinfo', [file]);
  const size = /^Page size:\s+([\d.]+) x ([\d.]+) pts/mu.exec(text);
  return {
    pages: Number(/^Pages:\s+(\d+)/mu.exec(text)?.[1]),
    width: Number(size?.[1]),
    height: Number(size?.[2]),
  };
}

export interface Word {
  readonly text: string;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

const WORD = /<word xMin="([\d.-]+)" yMin="([\d.-]+)" xMax="([\d.-]+)" yMax="([\d.-]+)">([^<]*)<\/word>/gu;

/** The words of each page. */
export function pdfWords(file: string): readonly (readonly Word[])[] {
  return run('pdftotext', ['-bbox', file, '-'])
    .split('<page ')
    .slice(1)
    .map((page) =>
      [...page.matchAll(WORD)].map(([, left, top, right, bottom, text = '']) => ({
        text,
        left: Number(left),
        top: Number(top),
        right: Number(right),
        bottom: Number(bottom),
      })),
    );
}

/** Pairs of words of which one lies on the other: more than a third of its height and more than a letter wide. */
export function overlaps(words: readonly Word[]): readonly string[] {
  const found: string[] = [];
  const ordered = words.toSorted((a, b) => a.top - b.top);
  ordered.forEach((word, index) => {
    for (let next = index + 1; next < ordered.length; next += 1) {
      const other = ordered[next];
      if (other === undefined || other.top >= word.bottom) break;
      const high = Math.min(word.bottom, other.bottom) - other.top;
      const wide = Math.min(word.right, other.right) - Math.max(word.left, other.left);
      const height = Math.min(word.bottom - word.top, other.bottom - other.top);
      if (high > height / 3 && wide > 2) found.push(`${word.text} / ${other.text}`);
    }
  });
  return found;
}

/** Poppler's greatest magnification, for sizes in thirds of a point. */
const ZOOM = 3;

/** Sizes of type in points, smallest first; poppler tells one less than the size, rounded down. */
export function typeSizes(file: string): readonly number[] {
  const text = run('pdftohtml', ['-xml', '-i', '-hidden', '-stdout', '-zoom', String(ZOOM), file]);
  const sizes = [...text.matchAll(/<fontspec [^>]*size="(\d+)"/gu)].map(([, size]) => (Number(size) + 1) / ZOOM);
  return [...new Set(sizes)].toSorted((a, b) => a - b);
}

/** A page as a printer without colour lays it down: a byte a dot, black 0. */
export interface GreyPage {
  readonly width: number;
  readonly height: number;
  readonly dots: Uint8Array;
  /** Dots to a point. */
  readonly scale: number;
}

const DOTS_AN_INCH = 144;
const PGM = /^P5\s+(\d+)\s+(\d+)\s+255\s/u;

/** The first page in grey, by poppler. */
export function greyPage(file: string): GreyPage {
  const bytes = execFileSync('pdftoppm', ['-gray', '-r', String(DOTS_AN_INCH), '-l', '1', '-singlefile', file], {
    maxBuffer: 200_000_000,
  });
  const head = PGM.exec(bytes.subarray(0, 40).toString('latin1'));
  if (head === null) throw new Error(`${file} gave no grey picture`);
  return {
    width: Number(head[1]),
    height: Number(head[2]),
    dots: bytes.subarray(head[0].length),
    scale: DOTS_AN_INCH / 72,
  };
}

export type Box = Pick<Word, 'left' | 'top' | 'right' | 'bottom'>;

/** The dots in a box, row by row. */
export function dotsIn({ width, height, dots, scale }: GreyPage, { left, top, right, bottom }: Box): readonly number[] {
  const found: number[] = [];
  const until = { x: Math.min(width, Math.ceil(right * scale)), y: Math.min(height, Math.ceil(bottom * scale)) };
  for (let y = Math.max(0, Math.floor(top * scale)); y < until.y; y += 1) {
    for (let x = Math.max(0, Math.floor(left * scale)); x < until.x; x += 1) found.push(dots[y * width + x] ?? 0);
  }
  return found;
}

/** Of two greys as the Web Content Accessibility Guidelines 2.2 reckon it ("contrast ratio"), from 1 to 21. */
export function contrast(one: number, other: number): number {
  const light = (grey: number): number => {
    const share = grey / 255;
    return share <= 0.040_45 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  };
  const [dark = 0, bright = 0] = [light(one), light(other)].toSorted((a, b) => a - b);
  return (bright + 0.05) / (dark + 0.05);
}
