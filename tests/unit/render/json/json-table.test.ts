import { describe, expect, test } from 'vitest';
import { renderBuild } from '../../../../src/render/json/build.ts';
import { renderJsonTable } from '../../../../src/render/json/json-table.ts';
import { columns } from '../../../../src/report/table.ts';
import type { Row } from '../../../../src/report/table.ts';

const json = (rows: readonly Row[]): string =>
  [
    ...renderJsonTable({ name: 't', columns: [...columns('text', 'name'), ...columns('decimal', 'load_kg')], rows }),
  ].join('');

describe('a table', () => {
  test('is an array of objects with every key', () => {
    const text = json([
      ['a "b"', 72.5],
      ['c', undefined],
    ]);
    expect(text).toBe('[\n{"name":"a \\"b\\"","load_kg":72.5},\n{"name":"c","load_kg":null}\n]\n');
    expect(JSON.parse(text)).toEqual([
      { name: 'a "b"', load_kg: 72.5 },
      { name: 'c', load_kg: null },
    ]);
  });

  test('without rows is an empty array', () => {
    expect(json([])).toBe('[]\n');
  });
});

describe('a build', () => {
  test('has its athletes a line each and its findings last', () => {
    const text = [
      ...renderBuild({ head: { mark: 'abc', none: undefined }, athletes: [{ id: 'a' }, { id: 'b' }], findings: [] }),
    ].join('');
    expect(text).toBe('{\n"mark":"abc",\n"athletes":[\n{"id":"a"},\n{"id":"b"}\n],\n"findings":[]\n}\n');
  });

  test('asks for its findings after its athletes', () => {
    const order: string[] = [];
    function* told(name: string): Generator<{ readonly name: string }> {
      order.push(name);
      yield { name };
    }
    JSON.parse([...renderBuild({ head: {}, athletes: told('athletes'), findings: told('findings') })].join(''));
    expect(order).toEqual(['athletes', 'findings']);
  });
});
