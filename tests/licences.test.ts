import { expect, test } from 'vitest';
import { licences, writtenLicences } from './licences.ts';

test('the list of licences is that of the packages in the lock file; node tests/licences.ts writes it anew', () => {
  const [now, written] = [licences().split('\n'), writtenLicences().split('\n')];
  expect(now.filter((line) => !written.includes(line))).toEqual([]);
  expect(written.filter((line) => !now.includes(line))).toEqual([]);
});

test('every package states a licence', () => {
  expect(writtenLicences()).not.toContain('not stated');
});
