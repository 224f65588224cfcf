import { Writable } from 'node:stream';
import { describe, expect, test } from 'vitest';
import { createOutput, OutputFailed, ReaderGone } from '../../../src/host/output.ts';

interface Slow {
  readonly stream: Writable;
  readonly pieces: string[];
  readonly most: () => number;
}

/** A reader that takes a while for each piece, and how much was ever waiting for it. */
function slowReader(): Slow {
  const pieces: string[] = [];
  let most = 0;
  const stream: Writable = new Writable({
    highWaterMark: 100_000,
    decodeStrings: false,
    write(piece: string, _encoding, done) {
      most = Math.max(most, stream.writableLength);
      pieces.push(piece);
      setTimeout(done, 1);
    },
  });
  return { stream, pieces, most: () => most };
}

function failing(code: string): Writable {
  return new Writable({
    write(_piece, _encoding, done) {
      done(Object.assign(new Error('it went wrong'), { code }));
    },
  });
}

describe('a slow reader', () => {
  test('gets everything in order and in large pieces, and little waits for it', async () => {
    const { stream, pieces, most } = slowReader();
    const lines = Array.from({ length: 60_000 }, (_, index) => `line ${index}\n`);
    await createOutput(stream).writeAll(lines);
    expect(pieces.join('')).toBe(lines.join(''));
    expect(pieces.length).toBeLessThan(15);
    expect(most()).toBeLessThan(300_000);
  });

  test('holds up whoever makes the texts', async () => {
    const { stream } = slowReader();
    let made = 0;
    function* endless(): Generator<string> {
      for (; made < 100; made += 1) yield 'x'.repeat(64 * 1024);
    }
    const writing = createOutput(stream).writeAll(endless());
    await Promise.resolve();
    expect(made).toBeLessThan(5);
    await writing;
    expect(made).toBe(100);
  });

  test('is waited for at the end', async () => {
    const { stream, pieces } = slowReader();
    const output = createOutput(stream);
    await output.write('last words');
    await output.end();
    expect(pieces.join('')).toBe('last words');
  });
});

describe('a reader that has gone', () => {
  test('ends the writing', async () => {
    const output = createOutput(failing('EPIPE'));
    await expect(output.writeAll(['a'.repeat(100_000), 'b'.repeat(100_000)])).rejects.toThrow(ReaderGone);
    await expect(output.write('more')).rejects.toThrow(ReaderGone);
  });

  test('is noticed at the end at the latest', async () => {
    const output = createOutput(failing('EPIPE'));
    await output.write('short').catch(() => undefined);
    await expect(output.end()).rejects.toThrow(ReaderGone);
  });
});

test('any other failure keeps its words', async () => {
  const output = createOutput(failing('ENOSPC'));
  await expect(output.writeAll(['a'.repeat(100_000)])).rejects.toThrow(OutputFailed);
  await expect(output.end()).rejects.toThrow('it went wrong');
});
