import { describe, expect, test } from 'vitest';
import { catalogueOf } from '../../given/small-collection.ts';

const SIDE = `
  title: Saltwater Almanac, side 1
  status: held
  side: "1"
  edition: lp
  length: "18:52"
  gaps: none
  contents:
    - { title: Low Water, length: "9:26" }
    - { title: Marram, length: "9:26" }
  format: { speed: 30 in/s, equalisation: AES, direction: one }
  pack: { outside-diameter: 260 mm, hub-diameter: 100 mm, wound-on: bare hub }
  stock: norda`;
const GIVEN = { 'editions/lp': 'made-as: LP\nspeed: 33⅓ rpm', 'stocks/norda': 'thickness: 52 µm', 'reels/a': SIDE };

const sheetOf = async (given: Readonly<Record<string, string>>) => {
  const [sheet] = (await catalogueOf(given)).reels;
  if (sheet === undefined) throw new Error('no reel');
  return sheet;
};
const figuresOf = async (given: Readonly<Record<string, string>>) =>
  new Map((await sheetOf(given)).worked.map((one) => [one.name, one]));

describe('workOutReel', () => {
  test.each([
    // The length that 18:52 takes at 30 in/s is 2830 ft: 1132 s × 0.762 m/s, by hand.
    ['tape-length', 862.584, 'm', 0.001],
    // Published row C-015: geometry of a wound strip.
    ['pack-length', 869.98, 'm', 0.01],
    // Published row C-030: 2830 ft of 52 µm on a 100 mm hub.
    ['pack-diameter', 259.06, 'mm', 0.05],
    // By hand: 869.98 m / 0.762 m/s, and 869.98 m − 862.584 m.
    ['playing-time', 1141.7, 's', 0.05],
    ['tape-left-over', 7.4, 'm', 0.05],
    ['duration-sum', 1132, 's', 0],
    // Published row C-046: 17.5 µs.
    ['transition-frequency', 9094.57, 'Hz', 0.1],
    // Published row C-094: 52 µm at 30 in/s.
    ['print-through-frequency', 2332.2, 'Hz', 5],
    // By hand: 18.867 min × 33⅓ rpm = 628.9 grooves, over 85.725 mm = 3.375 in.
    ['grooves', 628.9, 'grooves', 0.05],
    ['lines-per-inch', 186.3, 'lines per inch', 0.1],
  ])('%s is %d %s', async (name, value, unit, within) => {
    const figure = (await figuresOf(GIVEN)).get(name);
    expect(figure?.unit).toBe(unit);
    expect(Math.abs((figure?.value ?? Number.NaN) - value)).toBeLessThanOrEqual(within);
  });

  test('every figure has inputs, a formula and a source, and a band that holds it', async () => {
    const { worked } = await sheetOf(GIVEN);
    for (const { inputs, formula, source, value, low = value, high = value } of worked) {
      expect(inputs.length).toBeGreaterThan(0);
      expect(formula).not.toBe('');
      expect(source).not.toBe('');
      expect(low).toBeLessThanOrEqual(value);
      expect(high).toBeGreaterThanOrEqual(value);
    }
  });

  test('an error that nobody wrote is assumed, stands among the inputs, and widens the band', async () => {
    const figure = (await figuresOf(GIVEN)).get('pack-length');
    expect(figure?.inputs.filter((input) => input.basis === 'assumed').map((input) => input.written)).toEqual([
      '± 1 mm',
      '± 1 mm',
      '± 1 µm',
    ]);
    expect((figure?.high ?? 0) - (figure?.low ?? 0)).toBeGreaterThan(30);
  });

  test('an error that is written is taken as written', async () => {
    const sure = {
      ...GIVEN,
      'reels/a': SIDE.replace('260 mm', '260 mm ± 0.1 mm').replace('100 mm', '100 mm ± 0.1 mm'),
    };
    const written = (await figuresOf(sure)).get('pack-length');
    const assumed = (await figuresOf(GIVEN)).get('pack-length');
    expect((written?.high ?? 0) - (written?.low ?? 0)).toBeLessThan((assumed?.high ?? 0) - (assumed?.low ?? 0));
  });

  test('an input says where it stands', async () => {
    const figure = (await figuresOf(GIVEN)).get('tape-length');
    expect(figure?.inputs[0]).toMatchObject({
      name: 'length',
      written: '18:52',
      basis: 'stated',
      place: { file: 'reels/a.md', line: 6 },
    });
  });

  test('a figure whose inputs aren’t recorded is left out', async () => {
    const without = { ...GIVEN, 'reels/a': SIDE.replace('stock: norda', '') };
    expect([...(await figuresOf(without)).keys()].sort()).toEqual(
      ['duration-sum', 'groove-pitch', 'grooves', 'lines-per-inch', 'tape-length', 'transition-frequency'].sort(),
    );
    expect((await sheetOf({ 'reels/a': '' })).worked).toEqual([]);
  });

  test('a tape recorded both ways gets no length from a time that may be both sides’ together', async () => {
    const figures = await figuresOf({ ...GIVEN, 'reels/a': SIDE.replace('direction: one', 'direction: both') });
    expect(figures.has('tape-length')).toBe(false);
    expect(figures.has('pack-length')).toBe(true);
  });

  test('a name that could mean two curves gives no turnover', async () => {
    const figures = await figuresOf({ ...GIVEN, 'reels/a': SIDE.replace('equalisation: AES', 'equalisation: IEC') });
    expect(figures.has('transition-frequency')).toBe(false);
  });
});

describe('packVerdict', () => {
  test('names the one speed that agrees, rules faster ones out and leaves slower ones possible', async () => {
    const { packVerdict } = await sheetOf({ ...GIVEN, 'reels/a': SIDE.replace('260 mm', '195 mm') });
    expect(packVerdict?.answers.map(({ answer, stated }) => ({ answer, stated }))).toEqual([
      { answer: 'too-short', stated: true },
      { answer: 'agrees', stated: false },
      { answer: 'unexplained', stated: false },
      { answer: 'unexplained', stated: false },
      { answer: 'unexplained', stated: false },
    ]);
    expect(packVerdict?.sure).toContain('15 in/s');
  });

  test('says nothing while the pack isn’t measured', async () => {
    const { packVerdict } = await sheetOf({ ...GIVEN, 'reels/a': SIDE.replace('outside-diameter: 260 mm, ', '') });
    expect(packVerdict).toBeUndefined();
  });
});

describe('missingFacts', () => {
  test('lists what nobody recorded, in the order in which it is looked at', async () => {
    const { missing } = await sheetOf({ 'reels/a': '' });
    expect(missing).toEqual([
      'format.speed',
      'format.equalisation',
      'format.tracks',
      'format.level',
      'format.tones',
      'format.noise-reduction',
      'length',
      'stock',
      'pack.wound-on',
      'pack.wind',
      'pack.outside-diameter',
      'recorded.on',
      'copied-from',
      'photos',
      'condition',
    ]);
  });

  test('takes none for an answer', async () => {
    const { missing } = await sheetOf({
      'reels/a': 'copied-from: none\nformat: { noise-reduction: none, tones: none }',
    });
    for (const answered of ['copied-from', 'format.noise-reduction', 'format.tones'])
      expect(missing).not.toContain(answered);
  });

  test.each([
    [
      'a title has no length',
      'contents: [{ title: Low Water, length: "4:10" }, { title: Marram }]',
      'contents[1].length',
    ],
    [
      'a mixed gap is missing',
      'gaps: mixed\ncontents: [{ title: Low Water, length: "4:10" }, { title: Marram, length: "3:36" }]',
      'contents[0].gap-after',
    ],
    [
      'a run-out sound that counts has no length',
      'run-out-sound: { holds: rain, counted: yes }\ncontents: [{ title: Low Water, length: "4:10" }]',
      'run-out-sound.length',
    ],
  ])('says what keeps the contents from being added up: %s', async (_, yaml, lacks) => {
    expect((await sheetOf({ 'reels/a': yaml })).missing.at(-1)).toBe(lacks);
  });
});
