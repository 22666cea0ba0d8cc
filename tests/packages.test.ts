import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';

const ROOT = join(import.meta.dirname, '..');
const read = (name: string) => readFileSync(join(ROOT, name), 'utf8');
const stated = JSON.parse(read('package.json')) as Record<string, Record<string, string>>;
const guide = read('DEVELOPERS.md');

/** The rows of the tables of packages: the names, `remark-*` being any that begin so, and the reason. */
const rows = /\n## Packages[\s\S]*?(?=\n## )/
  .exec(guide)?.[0]
  .split('\n')
  .filter((line) => line.startsWith('| ') && !line.startsWith('| package '))
  .map((line) => line.split('|').map((cell) => cell.trim()))
  .map(([, names = '', reason = '']) => ({ names: names.split(', '), reason }));

const names = Object.keys({
  ...stated['dependencies'],
  ...stated['devDependencies'],
  ...stated['optionalDependencies'],
});
const meant = (name: string, given: string) =>
  given.endsWith('*') ? name.startsWith(given.slice(0, -1)) : name === given;

describe('every package that is asked for', () => {
  test.each(names)('%s has its reason in the guide', (name) => {
    const reasons = (rows ?? []).filter((row) => row.names.some((given) => meant(name, given)));
    expect(reasons.map(({ reason }) => reason.length > 3)).toContain(true);
  });
});

test('no reason outlives its package', () => {
  const given = (rows ?? []).flatMap((row) => row.names);
  expect(given.length).toBeGreaterThan(30);
  expect(given.filter((one) => !names.some((name) => meant(name, one)))).toEqual([]);
});

test('a package is asked for in one version, and the lock file holds that one', () => {
  const lock = JSON.parse(read('package-lock.json')) as { packages: Record<string, { version?: string }> };
  for (const kind of ['dependencies', 'devDependencies', 'optionalDependencies'] as const)
    for (const [name, version] of Object.entries(stated[kind] ?? {}))
      expect(lock.packages[`node_modules/${name}`]?.version, name).toBe(version);
});
