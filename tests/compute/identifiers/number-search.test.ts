import fc from 'fast-check';
import { distance } from 'fastest-levenshtein';
import { describe, expect, test } from 'vitest';
import { makeNumberIndex } from '#compute/identifiers/number-index.ts';
import { type Answer, searchNumbers } from '#compute/identifiers/number-search.ts';
import { openNumberIndex } from '#compute/identifiers/open-index.ts';
import { parseNumber } from '#compute/identifiers/parse-number.ts';
import { plainForm } from '#compute/identifiers/plain.ts';
import type { NumberOf } from '#model/numbered.ts';
import { another, changed, falselyMatched, misread, missed, QUALITIES } from './find-quality.ts';
import { denseNumbers, seeded, sparseNumbers } from './invented-houses.ts';

const numberOf = (number: string, at: number): NumberOf => ({
  thing: { of: 'reel', id: `reel-${at}`, title: `Reel ${at}`, state: 'held' },
  as: 'matrix',
  number,
  from: '',
  sure: '',
});
/** Through JSON, as the page gets it. */
const indexOf = (numbers: readonly NumberOf[]) => openNumberIndex(JSON.parse(JSON.stringify(makeNumberIndex(numbers))));
const indexOfTexts = (texts: readonly string[]) => indexOf(texts.map(numberOf));

const SPARSE = sparseNumbers(20_713, 2_000, 4);
const sparse = indexOfTexts(SPARSE);
const ask = (text: string) => searchNumbers(sparse, text, 50);
const howOf = (answer: Answer, number: string) => answer.hits.find((hit) => hit.number === number)?.how;

describe('numbers of many houses, no two closer than four edits', () => {
  test.each(QUALITIES)('$name', (quality) => {
    const notFound = missed(sparse, SPARSE, quality);
    expect(notFound.length / SPARSE.length, notFound.slice(0, 5).join('; ')).toBeLessThanOrEqual(quality.allowed);
  });

  test('a misread and an unread character are called so', () => {
    const random = seeded(2);
    for (const number of SPARSE.slice(0, 500)) {
      const typed = changed(number, random, misread(random));
      if (typed !== number) expect(howOf(ask(typed), number), `${typed} for ${number}`).toBe('misread');
      expect(howOf(ask(changed(number, random, () => '?')), number)).toBe('unread');
    }
  });

  test('numbers that nobody has match nothing: every hit on them is a part or a misread, and they are few', () => {
    const strangers = sparseNumbers(99, 1_000, 1).filter((text) =>
      SPARSE.every((one) => distance(plainForm(one), plainForm(text)) > 2),
    );
    expect(strangers.length).toBeGreaterThan(950);
    // Precision: of 100 numbers that match nothing, fewer than one is shown as a match.
    expect(falselyMatched(sparse, strangers).length / strangers.length).toBeLessThan(0.01);
  });

  test('every hit is what it says it is', () => {
    const random = seeded(5);
    for (const number of SPARSE) {
      const typed = changed(number, random, another(random));
      for (const hit of ask(typed).hits) {
        const [plain, asked] = [plainForm(hit.number), plainForm(typed)];
        if (hit.how === 'as written' || hit.how === 'other spelling') expect(plain).toBe(asked);
        if (hit.how === 'misread') expect(distance(plain, asked)).toBeGreaterThan(0);
        if (hit.how !== 'part') continue;
        const stem = plainForm(parseNumber(typed).stem ?? '');
        expect(plain.includes(asked) || asked.startsWith(plain) || plain.includes(stem), `${typed}: ${plain}`).toBe(
          true,
        );
      }
    }
  });
});

describe('dense series, where several numbers are a character apart', () => {
  const DENSE = denseNumbers(7, 5_000);
  const dense = indexOfTexts(DENSE);
  const samples = DENSE.filter((_, at) => at % 10 === 0);

  test('as written, each is still found first', () => {
    for (const number of samples) expect(searchNumbers(dense, number, 50).hits[0]?.number).toBe(number);
  });
  test('with one unread character, each is still found', () => {
    const random = seeded(8);
    for (const number of samples) {
      const { hits } = searchNumbers(
        dense,
        changed(number, random, () => '?'),
        500,
      );
      expect(hits.some((hit) => hit.number === number)).toBe(true);
    }
  });
  test('equally likely answers say that they are tied', () => {
    const { hits } = searchNumbers(indexOfTexts(['QZX 4471', 'QZX 4411']), 'QZX 44?1', 10);
    expect(hits.map(({ tied }) => tied)).toEqual([true, true]);
  });
});

describe('near numbers', () => {
  test('their distance is the one that another edit-distance library finds, and none within it is left out', () => {
    const random = seeded(6);
    for (const number of SPARSE.slice(0, 400)) {
      const asked = plainForm(changed(changed(number, random, another(random)), random, another(random)));
      const { hits, near } = ask(asked);
      for (const each of near) expect(each.distance).toBe(distance(asked, plainForm(each.number)));
      const shown = new Set([...hits, ...near].map((each) => each.number));
      const within = SPARSE.filter((one) => distance(asked, plainForm(one)) <= 2);
      if (near.length < 10)
        expect(
          within.filter((one) => !shown.has(one)),
          asked,
        ).toEqual([]);
    }
  });

  test('no number near is also a hit', () => {
    fc.assert(
      fc.property(fc.constantFrom(...SPARSE), fc.nat(), (number, seed) => {
        const { hits, near } = ask(changed(number, seeded(seed), another(seeded(seed + 1))));
        expect(near.filter((each) => hits.some((hit) => hit.number === each.number))).toEqual([]);
      }),
    );
  });
});

describe('what a collector has in one hand', () => {
  const thing = (id: string, of: NumberOf['thing']['of'], state: NumberOf['thing']['state']) => ({
    of,
    id,
    title: id,
    state,
  });
  const held = thing('side-1', 'reel', 'held');
  const rows: readonly NumberOf[] = [
    { thing: held, as: 'matrix', number: 'HLX 2207-A', from: 'box front', sure: 'likely' },
    { thing: held, as: 'catalogue', number: 'HLX 2207', from: '', sure: '' },
    {
      thing: { ...held, of: 'cut', title: 'side-1: cut 3', state: 'known' },
      as: 'cut',
      number: 'HLX 2207-A-3',
      from: '',
      sure: '',
    },
    {
      thing: thing('record', 'edition', 'known'),
      as: 'run-out',
      number: 'HLX 2207-A-3  ‖  T.V.',
      from: 'run-out',
      sure: '',
    },
    { thing: thing('record', 'edition', 'known'), as: 'catalogue', number: 'HLX 2207', from: '', sure: '' },
    { thing: thing('other', 'reel', 'elsewhere'), as: 'matrix', number: 'WQX 44?1', from: 'spine', sure: 'guess' },
    { thing: thing('doubtful', 'reel', 'held'), as: 'matrix', number: 'WQX 457{1|7}', from: 'spine', sure: 'guess' },
  ];
  const index = indexOf(rows);
  const find = (text: string) => searchNumbers(index, text, 50);
  const first = (text: string) => find(text).hits.map(({ of, as, number, how }) => [of, as, number, how].join(' | '));

  test('a whole run-out etching finds itself, its cut, the side’s number and the catalogue number, in that order', () => {
    expect(first('HLX 2207-A-3 ‖ TV')).toEqual([
      'edition | run-out | HLX 2207-A-3  ‖  T.V. | other spelling',
      'cut | cut | HLX 2207-A-3 | as written',
      'reel | matrix | HLX 2207-A | part',
      'reel | catalogue | HLX 2207 | part',
      'edition | catalogue | HLX 2207 | part',
    ]);
  });

  test('an etching with other initials finds the cut within it first', () => {
    expect(first('HLX 2207-A-3 △ QQ')[0]).toBe('cut | cut | HLX 2207-A-3 | as written');
  });

  test('a number that two entries share shows both, the held reel first, and neither is called doubtful', () => {
    const { hits } = find('hlx2207');
    expect(hits.slice(0, 2).map(({ of, how, tied }) => [of, how, tied])).toEqual([
      ['reel', 'other spelling', false],
      ['edition', 'other spelling', false],
    ]);
  });

  test('a part is found from three characters on, and not before', () => {
    expect(first('207').length).toBeGreaterThan(3);
    expect(first('07')).toEqual([]);
  });

  test('`*` is an unread stretch', () => {
    expect(first('HLX*A')[0]).toBe('reel | matrix | HLX 2207-A | unread');
    expect(first('*2207*').length).toBeGreaterThan(3);
    expect(first('***')).toEqual([]);
    expect(first('???')).toEqual([]);
  });

  test('an unread character of a stored reading fits what is typed there', () => {
    expect(find('WQX 4471').hits[0]).toMatchObject({ number: 'WQX 44?1', how: 'unread' });
    expect(find('WQX 4471').hits[0]?.because).toMatch(/nobody could read .* 7/i);
  });

  test('a reading that allows two characters is found by either', () => {
    expect(find('WQX4571').hits[0]).toMatchObject({ number: 'WQX 457{1|7}', how: 'unread' });
    expect(find('WQX4577').hits[0]).toMatchObject({ number: 'WQX 457{1|7}', how: 'unread' });
    expect(find('WQX4577').hits[0]?.because).toMatch(/^The reading allows it/);
    expect(find('WQX4577').hits[0]?.because).toMatch(/guess/);
  });

  test('alternatives may be typed as in a reading', () =>
    expect(first('HLX 22{1|0}7-A')[0]).toBe('reel | matrix | HLX 2207-A | unread'));

  test('a misread names both characters and why', () => {
    const hit = find('HLX 22O7-A').hits[0];
    expect(hit).toMatchObject({ number: 'HLX 2207-A', how: 'misread' });
    expect(hit?.because).toBe('0 there for your O: the letter O and the figure 0 have one shape.');
  });

  test('a number within a line of words is found', () => {
    expect(first('two boxes, HLX-2207-A lacquer, dusty')[0]).toBe('reel | matrix | HLX 2207-A | other spelling');
  });

  test('a number nobody has gives only near ones', () => {
    const { hits, near } = find('HLX 2298-A');
    expect(hits).toEqual([]);
    expect(near[0]).toMatchObject({ number: 'HLX 2207-A', distance: 2 });
    expect(near[0]?.because).toMatch(/^Only near, 2 characters away/);
  });

  test.each(['', ' ', '‖', '{', '-'])('%j asks nothing', (text) =>
    expect(find(text)).toMatchObject({ hits: [], near: [], total: 0 }),
  );

  test('hits past the limit are counted', () => {
    expect(searchNumbers(index, 'HLX', 2).hits).toHaveLength(2);
    expect(searchNumbers(index, 'HLX', 2).total).toBe(5);
  });

  test('the same numbers in any order make the same file', () => {
    expect(makeNumberIndex(rows.toReversed())).toEqual(makeNumberIndex(rows));
  });

  test('no numbers at all make an index that answers nothing', () => {
    expect(searchNumbers(indexOf([]), 'HLX', 5)).toMatchObject({ hits: [], near: [], total: 0 });
  });

  test('no text stops the search', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 60 }), (text) => void find(text)),
      { numRuns: 500 },
    );
    fc.assert(
      fc.property(fc.stringMatching(/^[HLX207?*{}|A -]{0,40}$/), (text) => void find(text)),
      { numRuns: 500 },
    );
  });
});
