import { globSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { RuleCases } from '#compute/condition/cases.ts';
import { CONDITION_RULES } from '#compute/condition/rules/index.ts';
import { CAUTIONS } from '#model/cautions.ts';
import { type ConditionFacts, WHAT_TO_RECORD } from '#model/condition-facts.ts';

const FOLDER = resolve(import.meta.dirname, '../../../src/compute/condition/rules');
const FILES = globSync('*.cases.ts', { cwd: FOLDER }).sort();
const ALL: readonly RuleCases[] = await Promise.all(
  FILES.map(async (file) => ((await import(resolve(FOLDER, file))) as { cases: RuleCases }).cases),
);

const facts = (given: Partial<ConditionFacts>): ConditionFacts => ({ signs: [], ...given });

describe.each(ALL.map((one) => ({ id: one.rule.id, ...one })))('$id', ({ rule, cases }) => {
  test.each(cases)('$then when $when', ({ given, then, says, observed }) => {
    const finding = rule.assess(facts(given));
    expect(finding.outcome).toBe(then);
    if (says !== undefined) expect(finding.because).toMatch(says);
    if (observed !== undefined) expect(finding.observed).toBe(observed);
  });

  test('is at risk at the sight of each of its signs, whatever isn’t recorded', () => {
    for (const sign of rule.shownBy) {
      expect(rule.assess(facts({ signs: [{ sign, on: '2026', notFoundOn: undefined }] }))).toMatchObject({
        outcome: 'at-risk',
        observed: true,
      });
    }
  });

  test('has a case for every fact missing, one at risk and one clear, and a clear one drawn from other practice', () => {
    expect(cases.filter((one) => one.then === 'at-risk').length).toBeGreaterThanOrEqual(2);
    expect(cases.filter((one) => one.then === 'clear').length).toBeGreaterThanOrEqual(1);
    expect(cases.filter((one) => one.then === 'not-recorded').length).toBeGreaterThanOrEqual(rule.reads.length);
  });

  test('says what to record where a fact is missing, and never calls that clear', () => {
    const finding = rule.assess(facts({}));
    expect(finding.outcome).toBe('not-recorded');
    for (const name of rule.reads) expect(finding.action).toContain(WHAT_TO_RECORD[name]);
  });

  test('prints its cautions where its action stands, and names its sources', () => {
    const atRisk = cases.find((one) => one.then === 'at-risk');
    const finding = rule.assess(facts(atRisk?.given ?? {}));
    expect(finding.cautions.length).toBeGreaterThan(0);
    expect(finding.sources.length).toBeGreaterThan(0);
    for (const caution of finding.cautions) expect(Object.values<string>(CAUTIONS)).toContain(caution);
  });
});

test('every rule is in the list once, and has its cases', () => {
  const ids = CONDITION_RULES.map((rule) => rule.id);
  expect(new Set(ids).size).toBe(ids.length);
  expect([...ids].sort()).toEqual(ALL.map((one) => one.rule.id).sort());
});
