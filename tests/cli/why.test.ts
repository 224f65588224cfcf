// The questions about one athlete: why a week is what it is, and when a volume is safe.

import { expect, test, vi } from 'vitest';
import { footfall, HANDBALL } from './footfall.ts';

vi.setConfig({ testTimeout: 120_000 });

test('why tells the week that holds the date, its own sessions line by line', async () => {
  const { status, out } = await footfall(['why', 'tuva', '2027-01-07', HANDBALL]);
  expect(status).toBe(0);
  expect(out).toContain('Tuva H., week 1, from 4 Jan 2027');
  expect(out).toContain('squad/seniors.yaml:61');
  expect(out).toMatch(/^ {4}1\. /mu);
  expect(out.match(/^ {4}1\. /gmu)).toHaveLength(1);
});

test('why never tells the reason of a limit', async () => {
  const { out } = await footfall(['why', 'tuva', '2027-01-07', HANDBALL]);
  expect(out).not.toContain('physio');
  expect(out).not.toContain('knee');
});

test('why as JSON is one object with the same numbers', async () => {
  const { out } = await footfall(['why', 'oda', '2027-02-01', HANDBALL, '--format', 'json']);
  const told: { contacts: number; bound_by: string; bounds: { by: string; most: number; held: boolean }[] } =
    JSON.parse(out);
  expect(told.contacts).toBe(225);
  expect(told.bound_by).toBe('weekly-rise');
  expect(told.bounds.filter(({ held }) => held)).toMatchObject([{ by: 'weekly-rise', most: 225 }]);
});

test('why refuses who and when there is not', async () => {
  const nobody = await footfall(['why', 'odda', '2027-02-01', HANDBALL]);
  expect(nobody.status).toBe(2);
  expect(nobody.err).toContain('there is no athlete "odda"');
  const never = await footfall(['why', 'oda', '2028-02-01', HANDBALL]);
  expect(never.status).toBe(2);
  expect(never.err).toContain('is in no week of the season, 2027-01-04 to 2027-05-02');
});

test('reach gives the earliest week and what stands in the way', async () => {
  const { status, out } = await footfall(['reach', 'oda', '240', HANDBALL]);
  expect(status).toBe(0);
  expect(out).toContain('safe in week 6, from 8 Feb 2027');
  expect(out).toMatch(/week {2}3 +110 +easy: deload-depth/u);
});

test('reach says the most where there is no such week, and the rise it would take', async () => {
  const far = await footfall(['reach', 'oda', '300', HANDBALL]);
  expect(far.out).toContain('the most is 245');
  const near: { earliest: unknown; rise: { percent: number; by_week: number } } = JSON.parse(
    (await footfall(['reach', 'oda', '270', HANDBALL, '--format', 'json'])).out,
  );
  expect(near.earliest).toBeNull();
  expect(near.rise.by_week).toBe(6);
  expect(near.rise.percent).toBeGreaterThan(10);
});

test('reach refuses what is no number', async () => {
  const { status, err } = await footfall(['reach', 'oda', 'many', HANDBALL]);
  expect(status).toBe(2);
  expect(err).toContain('Contacts are a whole number');
});
