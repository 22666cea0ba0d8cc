import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import type { Catalogue } from '#model/catalogue.ts';
import { scheduleExport } from '#publish/export/schedule.ts';
import { scheduleOf } from '#render/views/schedule.ts';
import { dossierOf } from '../given/share-of.ts';
import { catalogueOf } from '../given/small-collection.ts';
import { MAY_BE_TOLD, TOLD_EVERYTHING, wordsToldIn } from '../given/told-everything.ts';

const given = {
  'reels/a':
    'title: Alder\nvaluations:\n  - { on: "2020", by: A valuer, amount: 100 GBP }\n  - { on: "2026-04", by: A valuer, amount: 0.10 GBP, basis: insurance }',
  'reels/b': 'title: Beech\nvaluations: [{ on: "2025", by: owner, amount: 0.20 GBP }]',
  'reels/c': 'title: Cedar\nstatus: lent\nvaluations: [{ amount: 300 EUR }]',
  'reels/d': 'title: Dogwood',
  'reels/e': 'title: Elm\nstatus: gone\nvaluations: [{ amount: 99901 GBP }]',
  'reels/f': 'title: Fir\nprivate: [valuations]\nvaluations: [{ amount: 777 GBP }]',
};
const filesOf = (catalogue: Catalogue) => {
  const { files } = scheduleExport(catalogue);
  return { csv: String(files.get('schedule.csv')), html: String(files.get('schedule.html')) };
};

describe('the insurer’s schedule', () => {
  test('adds the last figures by currency to the cent, never two currencies, and counts what has none', async () => {
    const { totals, withoutFigure, items } = scheduleOf(await catalogueOf(given));
    // 0.10 + 0.20 = 0.30; of that 0.20 is the owner's own word. Worked by hand.
    expect(totals).toEqual([
      { currency: 'EUR', sum: 300, items: 1, byOwner: 0 },
      { currency: 'GBP', sum: 0.3, items: 2, byOwner: 0.2 },
    ]);
    expect(withoutFigure).toBe(2);
    expect(items.map(({ title }) => title)).toEqual(['Alder', 'Beech', 'Cedar', 'Dogwood', 'Fir']);
  });

  test('a figure that its entry keeps private is in neither file', async () => {
    const { csv, html } = filesOf(await catalogueOf(given));
    expect(`${csv}${html}`).not.toContain('777');
    expect(`${csv}${html}`).not.toContain('99901');
  });

  test('a spreadsheet reads as many cells in every row', async () => {
    const rows = parse(filesOf(await catalogueOf(given)).csv, { bom: true }) as string[][];
    expect(new Set(rows.map((row) => row.length))).toEqual(new Set([13]));
    expect(rows.at(-1)?.slice(8, 10)).toEqual(['0.3', 'GBP']);
  });

  test('the page loads nothing, runs nothing and shows marked-up texts as they are', async () => {
    const { html } = filesOf(await catalogueOf({ 'reels/a': 'title: "<script>x</script>"' }));
    expect(html).toContain('default-src &#39;none&#39;');
    expect(html).not.toMatch(/<script|https?:|style=/);
    expect(html).toContain('&lt;script&gt;x');
  });

  test('tells an insurer nothing that an insurer isn’t shown, with a share or without', async () => {
    const whole = await catalogueOf(TOLD_EVERYTHING);
    for (const catalogue of [whole, dossierOf(whole, 'qr13-insurer').dossier.reduced]) {
      const { csv, html } = filesOf(catalogue);
      // The title of the sheet is the owner's; every other word must be one that an insurer may be told.
      const told = wordsToldIn(`${csv}${html}`).filter((word) => word !== 'QQ01');
      const onlyHere = ['QQ77', 'QQ80', 'QQ31', 'QQ81'];
      expect(told.filter((word) => ![...(MAY_BE_TOLD['insurer'] ?? []), ...onlyHere].includes(word))).toEqual([]);
    }
  });
});
