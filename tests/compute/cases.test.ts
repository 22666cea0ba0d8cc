import { globSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { CheckCase, CheckCases } from '#compute/checks/cases.ts';
import { CHECKS } from '#compute/checks/index.ts';
import type { Diagnostic } from '#model/diagnostic.ts';
import { byText } from '#model/diagnostic.ts';
import { catalogueOf } from '../given/small-collection.ts';

/** Runs the cases that stand beside each check, through the whole program, and counts them. */

const ROOT = resolve(import.meta.dirname, '../..');
const FILES = globSync('src/compute/checks/*/*.cases.ts', { cwd: ROOT }).sort();
const FAMILIES = await Promise.all(
  FILES.map(async (file) => {
    const module = (await import(resolve(ROOT, file))) as { cases: CheckCases };
    return { file, code: module.cases.code, cases: module.cases.cases };
  }),
);
const CODES = [...new Set(CHECKS.map((check) => check.code))];

describe.each(FAMILIES)('$code', ({ code, cases }) => {
  test.each(cases.map((one) => ({ ...one })))('$then when $when', async (one) => {
    const catalogue = await catalogueOf(one.given, one.today);
    const problems = [...catalogue.problems, ...catalogue.accepted.map((accepted) => accepted.problem)];
    const misread = problems.filter((problem) => /^entry\//.test(problem.code) && problem.severity === 'error');
    expect(misread.map(({ code, message, found, place }) => ({ code, message, found, place }))).toEqual([]);
    const told = problems.filter((problem) => problem.code === code);
    if (one.then === 'silent') expect(told.map((problem) => problem.message)).toEqual([]);
    else expectTold(told, one);
  });
});

function expectTold(told: readonly Diagnostic[], one: CheckCase): void {
  expect(told.length).toBeGreaterThan(0);
  const says = one.says === undefined ? [] : Array.isArray(one.says) ? one.says : [one.says];
  const text = told
    .flatMap(({ message, found, expected, action, related }) => [
      message,
      found,
      expected,
      action,
      ...related.map((r) => r.message),
    ])
    .join('\n');
  for (const wanted of says) expect(text).toMatch(wanted);
  if (one.severity !== undefined) expect(told.map((problem) => problem.severity)).toContain(one.severity);
  if (one.file !== undefined) expect(told.map((problem) => problem.place.file)).toContain(one.file);
  for (const problem of told) expectWellFormed(problem);
}

/** The form that every message has, and the entry in which a disagreement between entries stands. */
function expectWellFormed({ message, found, expected, action, place, related }: Diagnostic): void {
  expect(message).toMatch(/^\S.*\.$/su);
  expect(found).not.toBe('');
  expect(expected).not.toBe('');
  expect(action).toMatch(/^\p{Lu}\p{Ll}+[ ,].*\.$/su);
  expect(`${message} ${action}`).not.toMatch(/[!]|please|invalid|undefined|NaN|\[object/i);
  for (const { place: other } of related) expect(byText(place.file, other.file)).toBeGreaterThanOrEqual(0);
}

describe('the list of checks', () => {
  test('is sorted by code, each code known by one title a check', () => {
    const codes = CHECKS.map((check) => check.code);
    expect(codes).toEqual(codes.toSorted(byText));
    for (const check of CHECKS) expect(check.title).not.toBe('');
  });

  test.each(CODES)('%s has two cases that fire and two look-alikes that stay silent', (code) => {
    const cases = FAMILIES.filter((family) => family.code === code).flatMap((family) => family.cases);
    expect(cases.filter((one) => one.then === 'fires').length).toBeGreaterThanOrEqual(2);
    expect(cases.filter((one) => one.then === 'silent').length).toBeGreaterThanOrEqual(2);
  });

  test('every family of cases belongs to a check in the list', () => {
    expect(FAMILIES.map((family) => family.code).filter((code) => !CODES.includes(code))).toEqual([]);
  });
});

describe('a fact that is missing', () => {
  const fired = FAMILIES.flatMap(({ code, cases }) =>
    cases.filter((one) => one.then === 'fires').map((one) => ({ code, when: one.when, one })),
  );

  // Leaving out one line of an entry at a time must never stop the program, whatever then fires or doesn't.
  test.each(fired)('never stops the program: $code when $when', async ({ one }) => {
    for (const given of withOneLineLess(one.given)) {
      const { problems } = await catalogueOf(given, one.today);
      expect(Array.isArray(problems)).toBe(true);
    }
  });

  test.each(CHECKS.map((check) => ({ code: check.code, check })))('keeps $code silent', ({ check }) => {
    expect(check.reads.length).toBeGreaterThan(0);
    for (const missing of check.reads) {
      const ask = (name: string) => (name === missing ? undefined : UNTOUCHED);
      expect(check.run(ask)).toEqual([]);
    }
  });
});

/** Stands for any fact: a check that looked at it in spite of a missing one would trip over it. */
const UNTOUCHED = new Proxy({}, { get: () => expect.unreachable('judged while a fact was missing') });

function withOneLineLess(given: Readonly<Record<string, string>>): readonly Readonly<Record<string, string>>[] {
  return Object.entries(given).flatMap(([name, text]) => {
    const lines = text.split('\n');
    const margin = Math.min(...lines.filter((line) => line.trim() !== '').map((line) => line.search(/\S/)));
    return lines.flatMap((line, at) => {
      if (line.search(/\S/) !== margin || !line.includes(':')) return [];
      const end = lines.findIndex(
        (next, index) =>
          index > at && next.trim() !== '' && next.search(/\S/) === margin && !next.trim().startsWith('-'),
      );
      return [{ ...given, [name]: [...lines.slice(0, at), ...lines.slice(end < 0 ? lines.length : end)].join('\n') }];
    });
  });
}
