import { describe, expect, test } from 'vitest';
import { assessCondition } from '#compute/condition/assess.ts';
import { bakePermission } from '#compute/condition/bake-permission.ts';
import { shedMarks } from '#compute/condition/shed-marks.ts';
import type { Handling, Inspection, Reel } from '#model/reel.ts';
import type { Stock } from '#model/stock.ts';
import type { BaseFilm, Binder, Sign } from '#model/words.ts';
import { date, entriesOf, known, none, reel, stock } from '../../given/entries.ts';

const place = { file: 'given.md', line: 1, column: 1, field: '' };
const made = (from: number, until = from) => date(`${from}-01-01`, `${until}-12-31`);

function find(rule: string, reelFacts: Partial<Reel>, stockFacts: Partial<Stock> | undefined) {
  const reels = [reel('tape', { ...(stockFacts !== undefined && { stock: known('stock') }), ...reelFacts })];
  const stocks = stockFacts === undefined ? [] : [stock('stock', stockFacts)];
  return assessCondition(entriesOf({ reels, stocks }), new Map())
    .get('tape')
    ?.find((one) => one.rule === rule);
}

const POLYESTER = { base: known<BaseFilm>('polyester') };
const SHEDS = {
  ...POLYESTER,
  binder: known<Binder>('polyurethane'),
  backCoated: known(true),
  made: known(made(1974, 1979)),
};

/** Rows of the published checks: IASA-TC 05; trade column October 1995 [S-BAKE]; the contract's own for what is missing. */
describe('sticky shed, from the stock', () => {
  test('polyester, polyurethane, back-coated, made 1974 to 1979, not known to shed: at risk (row 126)', () => {
    expect(find('sticky-shed', {}, SHEDS)).toMatchObject({ outcome: 'at-risk', observed: false });
  });
  test('the same of 1978: at risk (row 412)', () => {
    expect(find('sticky-shed', {}, { ...SHEDS, made: known(made(1978)) })?.outcome).toBe('at-risk');
  });
  test('polyester without a back coat, 1966: clear, whatever its binder (row 413)', () => {
    expect(find('sticky-shed', {}, { ...POLYESTER, backCoated: known(false), made: known(made(1966)) })?.outcome).toBe(
      'clear',
    );
  });
  test('polyester of 1978 whose back coat nobody recorded: not recorded (row 414)', () => {
    expect(find('sticky-shed', {}, { ...POLYESTER, made: known(made(1978)) })?.outcome).toBe('not-recorded');
  });
  test('the year of recording stands in where the stock’s isn’t known', () => {
    const { made: _left, ...undated } = SHEDS;
    expect(find('sticky-shed', {}, undated)?.outcome).toBe('not-recorded');
    expect(find('sticky-shed', { recorded: known({ on: known(made(1978)) }) }, undated)?.outcome).toBe('at-risk');
  });
});

describe('acetate decay, from the stock', () => {
  test('an acetate base: at risk (row 127)', () => {
    expect(find('acetate-decay', {}, { base: known<BaseFilm>('acetate') })?.outcome).toBe('at-risk');
  });
  test('a base that isn’t recorded: not recorded (row 128)', () => {
    expect(find('acetate-decay', {}, {})?.outcome).toBe('not-recorded');
    expect(find('acetate-decay', {}, undefined)?.outcome).toBe('not-recorded');
  });
});

describe('inspections', () => {
  const look = (on: string, ...found: Sign[]): Inspection => ({
    place,
    on: known(date(on), on),
    found: found.length === 0 ? none : known(found.map((sign) => known(sign))),
  });
  const did = (what: Handling['what']['value'], on: string): Handling => ({
    place,
    what: known(what),
    on: known(date(on), on),
  });

  test('none found is clear, and no inspection is not recorded', () => {
    expect(find('mould', { condition: known([look('2026-03-02')]) }, undefined)?.outcome).toBe('clear');
    expect(find('mould', {}, undefined)?.outcome).toBe('not-recorded');
    expect(find('mould', { condition: known([{ place, on: known(date('2026-03-02')) }]) }, undefined)?.outcome).toBe(
      'not-recorded',
    );
  });

  test('a sign stays when a later look doesn’t find it, and both are said', () => {
    const finding = find('mould', { condition: known([look('2019-05-01', 'mould'), look('2026-03-02')]) }, undefined);
    expect(finding).toMatchObject({ outcome: 'at-risk', observed: true });
    expect(finding?.because).toContain('2019-05-01');
    expect(finding?.because).toContain('2026-03-02');
  });

  test('a splice that was mended and looked at since is no risk any more', () => {
    const condition = known([look('2019-05-01', 'splice failing'), look('2026-03-02')]);
    const splices = known([{ place }]);
    expect(
      find('splices', { condition, splices, handling: known([did('splice repair', '2020-01-10')]) }, undefined)
        ?.outcome,
    ).toBe('clear');
    expect(
      find('splices', { condition, splices, handling: known([did('splice repair', '2018-01-10')]) }, undefined)
        ?.outcome,
    ).toBe('at-risk');
    expect(find('splices', { condition, splices }, undefined)?.outcome).toBe('at-risk');
  });
});

describe('bakePermission', () => {
  const signs = [] as const;
  test.each(['acetate', 'paper', 'PVC'] as const)('%s is never heated (rows 124, 408 to 410)', (base) => {
    expect(bakePermission({ base, signs, shedMarks: { are: 'present', marks: [] } })).toMatchObject({
      answer: 'never',
      outcome: 'at-risk',
    });
  });
  test('a base that isn’t known means no: find the base first (rows 125, 411)', () => {
    const permission = bakePermission({ signs: [{ sign: 'sticky', on: undefined, notFoundOn: undefined }] });
    expect(permission).toMatchObject({ answer: 'never', outcome: 'not-recorded' });
    expect(permission.action).toMatch(/^Find the base first/);
  });
  test('polyester with the marks may be considered (row 412), without them there is no reason (row 413)', () => {
    const shedding = shedMarks({ base: 'polyester', binder: 'polyurethane', backCoated: true, made: made(1978) });
    const sound = shedMarks({ base: 'polyester', binder: undefined, backCoated: false, made: made(1966) });
    expect(bakePermission({ base: 'polyester', signs, ...(shedding && { shedMarks: shedding }) })).toMatchObject({
      answer: 'may be considered',
      outcome: 'at-risk',
    });
    expect(bakePermission({ base: 'polyester', signs, ...(sound && { shedMarks: sound }) })).toMatchObject({
      answer: 'no reason to',
      outcome: 'clear',
    });
  });
  test('polyester of 1978 whose back coat nobody recorded isn’t known (row 414)', () => {
    expect(
      shedMarks({ base: 'polyester', binder: undefined, backCoated: undefined, made: made(1978) }),
    ).toBeUndefined();
    expect(bakePermission({ base: 'polyester', signs })).toMatchObject({
      answer: 'not known',
      outcome: 'not-recorded',
    });
  });
  test('polyester that squeals may be considered, whatever its stock', () => {
    expect(
      bakePermission({ base: 'polyester', signs: [{ sign: 'squeal', on: '2026', notFoundOn: undefined }] }).answer,
    ).toBe('may be considered');
  });
  test('the caution on heat stands beside every answer', () => {
    for (const base of ['polyester', 'acetate', undefined] as const) {
      expect(bakePermission({ ...(base && { base }), signs }).cautions.join(' ')).toContain('domestic oven');
    }
  });
});
