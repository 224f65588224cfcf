import { describe, expect, test } from 'vitest';
import { terminalOf } from '../../../src/host/terminal.ts';

const TTY = { isTTY: true, columns: 80 };

describe('colour', () => {
  test.each([
    { stream: TTY, env: {}, colours: 1 },
    { stream: {}, env: {}, colours: 0 },
    { stream: TTY, env: { NO_COLOR: '1' }, colours: 0 },
    { stream: TTY, env: { NO_COLOR: '' }, colours: 1 },
    { stream: TTY, env: { TERM: 'dumb' }, colours: 0 },
    { stream: {}, env: { FORCE_COLOR: '1' }, colours: 1 },
    { stream: {}, env: { FORCE_COLOR: '' }, colours: 1 },
    { stream: TTY, env: { FORCE_COLOR: '0' }, colours: 0 },
  ])('$stream $env', ({ stream, env, colours }) => {
    expect(terminalOf(stream, env).colours).toBe(colours);
  });
});

describe('width', () => {
  test.each([
    { stream: TTY, env: {}, width: 80 },
    { stream: {}, env: {}, width: 100 },
    { stream: TTY, env: { COLUMNS: '60' }, width: 60 },
    { stream: {}, env: { COLUMNS: '12' }, width: 40 },
    { stream: {}, env: { COLUMNS: '500' }, width: 160 },
    { stream: TTY, env: { COLUMNS: 'wide' }, width: 80 },
    { stream: TTY, env: { COLUMNS: '0' }, width: 80 },
    { stream: { isTTY: true, columns: 0 }, env: {}, width: 100 },
  ])('$stream $env', ({ stream, env, width }) => {
    expect(terminalOf(stream, env).width).toBe(width);
  });
});
