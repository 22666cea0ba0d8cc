import { describe, expect, test } from 'vitest';
import type { Catalogue } from '#model/catalogue.ts';
import { catalogueOf } from '../given/small-collection.ts';
import { rows, textOf } from '../tables/published.ts';

/** Published rows that are answered by a rule or a check rather than by a figure, told as small collections and put
 * through the whole program. */

const BAKED = 'handling: [{ what: bake, on: "2026-03-10", temperature: 50 °C, duration: 8 h }]';

const finding = (catalogue: Catalogue, rule: string) => catalogue.reels[0]?.findings.find((one) => one.rule === rule);
const told = (catalogue: Catalogue, code: string) => catalogue.problems.filter((problem) => problem.code === code);
const words = (yes: unknown) => (yes === true ? 'yes' : 'no');

describe('what may be baked', () => {
  test.each(rows('C-124', 'C-408', 'C-409', 'C-410'))('$id $inputs.base: never ($source)', async ({ inputs }) => {
    const catalogue = await catalogueOf({
      'stocks/old': `base: ${textOf(inputs, 'base')}`,
      'reels/a': `stock: old\n${BAKED}`,
    });
    const [problem] = told(catalogue, 'bake/never');
    expect(problem?.severity).toBe('warning');
    expect(`${problem?.message} ${problem?.found}`).toContain(textOf(inputs, 'base'));
  });

  test.each(rows('C-125', 'C-411'))('$id a base that nobody recorded: no, find it first ($source)', async () => {
    const catalogue = await catalogueOf({ 'stocks/old': 'back-coated: yes', 'reels/a': `stock: old\n${BAKED}` });
    const [problem] = told(catalogue, 'bake/never');
    expect(`${problem?.message} ${problem?.action}`).toContain('Find the base first');
    expect(finding(catalogue, 'sticky-shed')?.outcome).toBe('not-recorded');
  });

  test.each(rows('C-415'))(
    '$id $inputs.temperature_C °C is past every practice ($source)',
    async ({ inputs, expected }) => {
      const bake = (temperature: unknown) => ({
        'stocks/brown': 'base: polyester',
        'reels/a': `stock: brown\nhandling: [{ what: bake, on: "2026-03-10", temperature: ${temperature} °C }]`,
      });
      const code = textOf(expected, 'answer');
      expect(told(await catalogueOf(bake(inputs['temperature_C'])), code)).toHaveLength(1);
      expect(told(await catalogueOf(bake(60)), code)).toHaveLength(0);
    },
  );
});

describe('what sheds', () => {
  test.each(rows('C-126'))('$id every mark of the stocks that shed ($source)', async ({ inputs, expected }) => {
    const { base, binder, made } = inputs;
    const stock = `base: ${base}\nbinder: ${binder}\nback-coated: ${inputs['back-coated']}\nmade: ${made}`;
    const catalogue = await catalogueOf({ 'stocks/brown': stock, 'reels/a': 'stock: brown' });
    expect(finding(catalogue, 'sticky-shed')?.outcome).toBe(expected['outcome']);
  });

  test.each(rows('C-412', 'C-413'))('$id $title: $expected.outcome ($source)', async ({ inputs, expected }) => {
    const binder = inputs['binder'] === undefined ? '' : `binder: ${inputs['binder']}\n`;
    const stock = `base: ${inputs['base']}\n${binder}back-coated: ${words(inputs['backCoated'])}\nmade: "${inputs['year']}"`;
    const catalogue = await catalogueOf({ 'stocks/brown': stock, 'reels/a': 'stock: brown' });
    expect(finding(catalogue, 'sticky-shed')?.outcome).toBe(expected['outcome']);
  });

  test.each(rows('C-414'))('$id $title: never clear ($source)', async ({ inputs, expected }) => {
    const stock = `base: ${inputs['base']}\nmade: "${inputs['year']}"`;
    const catalogue = await catalogueOf({ 'stocks/brown': stock, 'reels/a': 'stock: brown' });
    expect(finding(catalogue, 'sticky-shed')?.outcome).toBe(expected['outcome']);
  });
});

describe('what decays', () => {
  test.each(rows('C-127'))('$id $inputs.base is at risk by itself ($source)', async ({ inputs, expected }) => {
    const catalogue = await catalogueOf({ 'stocks/clear': `base: ${inputs['base']}`, 'reels/a': 'stock: clear' });
    expect(finding(catalogue, 'acetate-decay')?.outcome).toBe(expected['outcome']);
  });

  test.each(rows('C-128'))('$id a base that nobody recorded is never clear ($source)', async ({ expected }) => {
    const catalogue = await catalogueOf({ 'reels/a': '' });
    expect(finding(catalogue, 'acetate-decay')?.outcome).toBe(expected['outcome']);
  });
});

describe('what lies on a bare hub', () => {
  test.each(rows('C-129', 'C-557'))('$id a pancake without a back coat ($source)', async ({ expected }) => {
    const code = textOf(expected, expected['code'] === undefined ? 'answer' : 'code');
    const given = { 'stocks/plain': 'back-coated: no', 'reels/a': 'stock: plain\npack: { wound-on: bare hub }' };
    const [problem] = told(await catalogueOf(given), code);
    expect(`${problem?.message} ${problem?.expected} ${problem?.action}`).toContain('AES49');
  });

  test.each(rows('C-555'))('$id $title ($source)', async () => {
    const catalogue = await catalogueOf({
      'reels/a': 'format: { width: 1/4 in, speed: 15 in/s }\npack: { wound-on: bare hub }',
      'machines/desk': 'width: 1/4 in\nspeeds: [15 in/s]\ntakes: [reel]\nstate: working',
    });
    const [verdict] = catalogue.reels[0]?.playing.verdicts ?? [];
    const reason = verdict?.reasons.find((one) => one.of === 'carrier');
    expect(reason).toMatchObject({ verdict: 'cannot', needs: expect.stringMatching(/bare hub|pancake/) });
  });
});

describe('what a machine takes', () => {
  test.each(rows('C-556'))('$id $title: $expected.answer ($source)', async () => {
    const reel = {
      'reels/a': 'format: { width: 1/4 in, speed: 30 in/s }\npack: { wound-on: reel, reel-size: 12.5 in }',
    };
    const silent = await catalogueOf({ ...reel, 'machines/home': 'width: 1/4 in\nstate: working' });
    const [unknown] = silent.reels[0]?.playing.verdicts ?? [];
    for (const of of ['speed', 'size']) {
      expect(unknown?.reasons.find((one) => one.of === of)?.verdict).toBe('not recorded');
    }
    const record = 'width: 1/4 in\nspeeds: [30 in/s]\nlargest-reel: 14 in\nstate: working';
    const [known] = (await catalogueOf({ ...reel, 'machines/big': record })).reels[0]?.playing.verdicts ?? [];
    expect(known?.reasons.filter((one) => ['speed', 'size'].includes(one.of)).map((one) => one.verdict)).not.toContain(
      'cannot',
    );
  });
});

describe('how a master is wound', () => {
  test.each(rows('C-558'))('$id $title: no warning either way ($source)', async () => {
    for (const wind of ['tail out', 'head out']) {
      const { problems } = await catalogueOf({ 'reels/a': `kind: original master\npack: { wind: ${wind} }` });
      expect(problems.filter((problem) => problem.severity !== 'note')).toEqual([]);
    }
  });
});

describe('a copy and its parent', () => {
  test.each(rows('C-467', 'C-468', 'C-469', 'C-470', 'C-471'))(
    '$id $title: $expected.answer ($source)',
    async ({ inputs, expected }) => {
      const catalogue = await catalogueOf({
        'reels/copy': `copied-from: [parent]\nrecorded: { on: "${inputs['copy']}" }`,
        'reels/parent': `recorded: { on: "${inputs['parent']}" }`,
      });
      const contradicts = expected['answer'] === 'lineage/copy-before-parent';
      expect(told(catalogue, 'lineage/copy-before-parent')).toHaveLength(contradicts ? 1 : 0);
    },
  );
});
