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
