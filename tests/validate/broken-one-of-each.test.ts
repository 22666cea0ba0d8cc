import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readCollection } from '#read/collection.ts';
import { validateAll } from '#validate/entries.ts';

const FOLDER = `${import.meta.dirname}/../collections/broken-one-of-each`;

interface Expected {
  readonly code: string;
  readonly severity: string;
  readonly at: string;
  readonly field: string;
  /** What stands in the file at that place. */
  readonly pointsAt: string;
}

const expected: readonly Expected[] = JSON.parse(readFileSync(`${FOLDER}/expected.json`, 'utf8'));
const files = readCollection(FOLDER);
const { entries, problems } = validateAll(files);
const told = [...files.problems, ...problems];

describe('a folder with one broken entry of each kind', () => {
  test('gives one problem each, and no other', () => {
    const places = told.map(({ code, severity, place }) => ({
      code,
      severity,
      at: `${place.file}:${place.line}:${place.column}`,
      field: place.field,
    }));
    const wanted = expected.map(({ pointsAt: _, ...rest }) => rest);
    expect(new Set(places)).toEqual(new Set(wanted));
    expect(places).toHaveLength(wanted.length);
  });

  test.each(expected.filter(({ pointsAt }) => pointsAt !== ''))('$at is where $pointsAt stands', ({ at, pointsAt }) => {
    const [, file = '', line = 0, column = 0] = /^(.*):(\d+):(\d+)$/u.exec(at) ?? [];
    const text = readFileSync(`${FOLDER}/${file}`, 'utf8').split('\n')[Number(line) - 1] ?? '';
    expect(text.slice(Number(column) - 1).startsWith(pointsAt)).toBe(true);
  });

  test.each(told.map((problem) => [`${problem.place.file} ${problem.code}`, problem] as const))(
    '%s says what it is, what is expected and what to do',
    (_, problem) => {
      expect(problem.message).toMatch(/\S.*[.?]$/u);
      expect(problem.action).toMatch(/^[A-Z].*\.$/su);
      expect(problem.message).not.toContain(problem.place.file);
      expect(`${problem.message} ${problem.action}`.replace(/"[^"]*"/gu, '')).not.toMatch(
        /invalid|please|!|undefined|\[object/iu,
      );
    },
  );

  test('an entry whose optional fact is broken is still used, without that fact', () => {
    const reel = entries.reels.find(({ id }) => id === 'bad-title-length');
    const titles = reel?.contents?.is === 'known' ? reel.contents.value : [];
    expect(titles.map(({ title, durationS }) => [title.value, durationS?.value])).toEqual([
      ['Low Water', 250],
      ['Marram', undefined],
    ]);
  });

  test('an entry that lacks what it needs is not used, and counts as there', () => {
    expect([...entries.unusable].sort()).toEqual([
      'notes/missing-title',
      'reels/code-refused',
      'reels/missing-status',
      'reels/no-front-matter',
      'reels/not-yaml',
      'reels/unclosed',
      'reels/unknown-status',
      'reels/yaml-alias',
      'reels/yaml-tag',
      'shares/missing-for',
    ]);
  });
});
