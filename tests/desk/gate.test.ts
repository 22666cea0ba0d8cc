import { expect, test } from 'vitest';
import { Gate } from '../../src/desk/gate.ts';

const gate = (now = () => 0) => new Gate(['127.0.0.1'], 4400, true, now);

test('without --lan there is no code, and none opens it', () => {
  const alone = new Gate(['127.0.0.1'], 4400, false, () => 0);
  expect(alone.code).toBeUndefined();
  expect(alone.opensByCode('')).toBe(false);
  expect(alone.opensByCode('000000')).toBe(false);
});

test('the code works once', () => {
  const one = gate();
  const code = one.code ?? '';
  expect(code).toMatch(/^\d{6}$/);
  expect(one.opensByCode(code)).toBe(true);
  expect(one.opensByCode(code)).toBe(false);
});

test('after five wrong codes the right one opens nothing', () => {
  const one = gate();
  for (let guess = 0; guess < 5; guess++) expect(one.opensByCode('nothing')).toBe(false);
  expect(one.opensByCode(one.code ?? '')).toBe(false);
});

test('the code ends after ten minutes', () => {
  let now = 0;
  const one = gate(() => now);
  now = 10 * 60_000 + 1;
  expect(one.opensByCode(one.code ?? '')).toBe(false);
});

test('two desks never have one secret', () => {
  expect(gate().secret).not.toBe(gate().secret);
  expect(gate().secret.length).toBeGreaterThanOrEqual(32);
});
