import { expect, test } from 'vitest';
import { listPages, pageTitle, partWords, ROWS_A_PAGE, startWords } from '#render/views/list-pages.ts';

const named = (count: number) => Array.from({ length: count }, (_, at) => `Set ${String(at).padStart(5, '0')}`);
const pages = (count: number, most?: number) => listPages(named(count), (name) => name, most);

test('a list that fits on a page has one, and an empty list too', () => {
  for (const count of [0, 1, ROWS_A_PAGE]) {
    expect(pages(count)).toHaveLength(1);
    expect(pages(count)[0]?.rows).toHaveLength(count);
  }
});

test('a longer one has every row on one of its pages, in order, each page knowing where it stands', () => {
  for (const count of [ROWS_A_PAGE + 1, 999, 10_000]) {
    const all = pages(count);
    expect(all.flatMap(({ rows }) => rows)).toEqual(named(count));
    for (const [at, page] of all.entries()) {
      expect(page).toMatchObject({ at, all: count, from: at * ROWS_A_PAGE + 1 });
      expect(page.rows.length).toBeLessThanOrEqual(ROWS_A_PAGE);
      expect(page.starts).toHaveLength(all.length);
    }
  }
  expect(partWords(pages(450)[2] ?? { rows: [], at: 0, from: 0, all: 0, starts: [] })).toBe('401 to 450 of 450');
});

test('each page is found by as much of its first row’s name as tells it from the row before', () => {
  expect(pages(9, 3).map(({ starts }) => starts)[0]).toEqual(['Set', 'Set 00003', 'Set 00006']);
  expect(startWords('Low Water, side 2', 'Low Water, side 1')).toBe('Low Water, side 2');
  expect(startWords('Low Water, side 1', 'Ilha Quase')).toBe('Low');
  expect(startWords('Low', 'Low')).toBe('Low');
  expect(startWords('x'.repeat(300), undefined)).toBe(`${'x'.repeat(40)}…`);
});

test('a further page says so in its title', () => {
  expect([pageTitle('Editions', 0, 3), pageTitle('Editions', 1, 3)]).toEqual(['Editions', 'Editions, page 2 of 3']);
});
