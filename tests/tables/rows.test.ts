import { existsSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { reckoned } from '../given/reckoned.ts';
import { departures, MET_BY, PUBLISHED, type PublishedRow } from './published.ts';

const ROOT = resolve(import.meta.dirname, '../..');
const textOf = (path: string) => readFileSync(resolve(ROOT, path), 'utf8');
const KNOWN_GAPS = existsSync(resolve(ROOT, 'tests/known-gaps.txt')) ? textOf('tests/known-gaps.txt') : '';

describe('the published rows', () => {
  test('each has a source, an id of its own, and something that meets it', () => {
    const ids = PUBLISHED.map((row) => row.id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(PUBLISHED.filter((row) => row.source.trim() === '').map((row) => row.id)).toEqual([]);
    expect(ids.filter((id) => MET_BY[id] === undefined)).toEqual([]);
    expect(Object.keys(MET_BY).filter((id) => !ids.includes(id))).toEqual([]);
  });

  test('what is said to meet a row exists, and names the row', () => {
    expect(Object.entries(MET_BY).flatMap(([id, by]) => complaints(id, by))).toEqual([]);
  });

  test('no row that reckon answers is met by anything less', () => {
    const lesser = PUBLISHED.filter((row) => row.reckon !== undefined && MET_BY[row.id] !== 'reckon');
    expect(lesser.map((row) => row.id)).toEqual([]);
  });
});

/** What a word of rows.json points to, and whether the row's id stands there. */
function complaints(id: string, by: string): string[] {
  const [kind, name = ''] = by.split(/:(.*)/s);
  if (kind === 'reckon') return PUBLISHED.some((row) => row.id === id && row.reckon) ? [] : [`${id}: no reckon args`];
  if (kind === 'gap') return KNOWN_GAPS.includes(id) ? [] : [`${id}: a gap with no reason in tests/known-gaps.txt`];
  const file = {
    case: `src/compute/checks/${name}.cases.ts`,
    rule: `src/compute/condition/rules/${name}.cases.ts`,
    table: `tests/${name}`,
    page: `tests/${name}`,
  }[kind ?? ''];
  if (file === undefined) return [`${id}: ${by} is no way to meet a row`];
  if (!existsSync(resolve(ROOT, file))) return [`${id}: there is no ${file}`];
  return textOf(file).includes(id) ? [] : [`${id}: ${file} doesn't name it`];
}

describe('reckon', () => {
  const asked = PUBLISHED.flatMap((row) => (row.reckon === undefined ? [] : [{ ...row, reckon: row.reckon }]));
  test.each(asked.filter((row) => row.expected['refused'] !== true))('$id $reckon.name $reckon.args', async (row) => {
    const { exit, json } = await reckoned(row.reckon.name, row.reckon.args);
    expect(json.problems ?? []).toEqual([]);
    expect(exit).toBe(0);
    expect(departures(json, answered(row), row.tolerance, row.reckon.name)).toEqual([]);
    expect(json).toMatchObject({ name: row.reckon.name, formula: expect.any(String), source: expect.any(String) });
  });

  test.each(asked.filter((row) => row.expected['refused'] === true))('$id $reckon.args is asked about', async (row) => {
    const { exit, json } = await reckoned(row.reckon.name, row.reckon.args);
    expect(exit).toBe(2);
    const [problem] = json.problems ?? [];
    const said = `${problem?.message} ${problem?.expected} ${problem?.action}`;
    const wanted = [row.expected['suggest'], row.expected['ask']].flat().filter((text) => text !== undefined);
    for (const text of wanted) expect(said).toContain(text);
    const code = row.expected['code'];
    if (code !== undefined) expect(problem?.code).toBe(code);
  });

  test.each(asked.filter((row) => row.expected['stated'] !== undefined))(
    '$id the stated sum differs by as much',
    (row) => {
      const seconds = (clock: unknown) =>
        String(clock)
          .split(':')
          .reduce((sum, part) => sum * 60 + Number(part), 0);
      const apart = Math.abs(seconds(row.expected['stated']) - Number(row.expected['value']));
      expect(apart).toBe(row.expected['difference_s']);
    },
  );
});

/** What the command itself is asked for; a stated sum that a row compares with isn't one of its keys. */
function answered(row: PublishedRow): Record<string, unknown> {
  const { stated: _stated, difference_s: _difference, ...own } = row.expected;
  return own;
}
