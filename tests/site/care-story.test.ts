import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ICAL from 'ical.js';
import type { Locator, Page } from 'playwright-core';
import { describe, expect } from 'vitest';
import { axeFindings, siteTest } from './harness.ts';

/** The day on which the demo's two sticky sides come out of the warmth, and are copied. */
const STORY = '2026-10-17';
const test = siteTest(STORY);

const text = async (part: Locator) => ((await part.textContent()) ?? '').replaceAll(/\s+/g, ' ');
const words = (page: Page, part: string) => text(page.locator(part));
/** A row of a sheet's table, by the reel that it is about. */
const rowOf = (page: Page, table: string, reel: string) => page.locator(`${table} tbody tr`, { hasText: reel }).first();

describe('a shedding set, baked and transferred in its window', () => {
  test('its sheet says what was seen, done and copied', async ({ open }) => {
    const page = await open('reels/lanterna-side-a/');
    const told = await words(page, 'main');
    for (const part of ['squeal', '50 °C', 'lanterna-a-2026-10-17.wav', 'never heat acetate'])
      expect(told).toContain(part);
  });

  test('is chosen on the page of plans, and the plan holds its window open by both practices', async ({ open }) => {
    const page = await open('plan/');
    await page.getByLabel('Lanterna e Cal, side A').check();
    await page.getByLabel('Lanterna e Cal, side B').check();
    await page.getByRole('button', { name: 'Work out' }).click();
    await page.locator('#plan table').first().waitFor();
    expect(page.url()).toContain('reels=lanterna-side-a&reels=lanterna-side-b');
    const told = await words(page, '#plan');
    // By hand, from the end of the bake at 08:00 and 7 to 10 h, 7 to 14 days.
    expect(told).toContain('by common practice it closes 2026-10-17 15:00 to 18:00');
    expect(told).toContain('by a published practice it closes 2026-10-24 08:00 to 2026-10-31 08:00');
    expect(told).toContain('Transferred on 2026-10-17: the files are the copy');
    expect(await words(page, '#order tbody tr:nth-child(2)')).toContain('as No. 1');
    expect(await words(page, '#order tbody tr:nth-child(1)')).toContain('15 in/s · NAB, 3180/50 µs');
    // Cautions stand before everything else, and once.
    expect(await page.locator('.cautions:visible').count()).toBe(1);
    expect(await page.locator('#plan > :first-child').getAttribute('class')).toContain('cautions');
    // The same as the plan that stood ready, and again from its address alone.
    const ready = await open('plan/set-lanterna/');
    expect(await words(ready, '#order')).toBe(await words(page, '#order'));
    const again = await open(page.url().replace(/^http:\/\/[^/]*\//, ''));
    await again.locator('#plan table').first().waitFor();
    expect(await words(again, '#order')).toBe(await words(page, '#order'));
    expect(await again.getByLabel('Lanterna e Cal, side B').isChecked()).toBe(true);
  });

  test('its bake plan counts its bakes and lays the practices out in time from any start', async ({ open }) => {
    const page = await open('plan/bake/?reels=lanterna-side-a,lanterna-side-b&start=2026-11-02T09:00');
    await page.locator('#plan table').first().waitFor();
    expect(await words(page, '#may tbody tr:nth-child(1)')).toMatch(/may be considered.*1: 2026-10-16, 50 °C, 12 h/);
    expect(await words(page, '#may tbody tr:nth-child(2)')).toMatch(/2: 2012-05, 50 °C, 8 h, no transfer recorded/);
    expect(await words(page, '#may')).toContain('An experienced practitioner should do this');
    const rows = page.locator('table.practices tbody tr');
    // By hand: 8 to 12 h from 09:00; 36 h, and 7 to 10 h after them.
    expect(await text(rows.first())).toContain('2 Nov, 17:00 to 2 Nov, 21:00');
    expect(await text(rows.last())).toMatch(/3 Nov, 21:00[\s\S]*4 Nov, 04:00 to 4 Nov, 07:00/);
    expect(await words(page, '#practices')).toContain('they disagree');
    // The drawing has a bar of heat for each row of the table, its name and its words.
    const drawing = page.locator('svg.bakes[role=img]');
    expect(await drawing.locator('rect.heat').count()).toBe(await rows.count());
    expect(await page.locator('svg.bakes.names text.no').allTextContents()).toEqual(
      Array.from({ length: await rows.count() }, (_, at) => String(at + 1)),
    );
    expect(await drawing.locator('title').first().textContent()).toBe('The practices in time, from 2 Nov 2026, 09:00');
    expect(await drawing.locator('desc').textContent()).toContain('heat ends 2 Nov 2026, 17:00 to 2 Nov 2026, 21:00');
    expect(await page.locator('#log tbody tr').count()).toBe(12);
    expect(await words(page, '.cautions:visible')).toMatch(/Heat: never heat acetate/);
  });

  test('a bar is as long as its time', async ({ open }) => {
    const page = await open('plan/bake/?reels=lanterna-side-a&start=2026-11-02T08:00');
    await page.locator('svg.bakes').first().waitFor();
    const widths = await page
      .locator('svg.bakes[role=img] rect.heat')
      .evaluateAll((bars) => bars.map((bar) => bar.getBoundingClientRect().width));
    // Rows 1, 6 and 9: 8, 5 and 36 h of heat for certain.
    expect((widths[5] ?? 0) / (widths[0] ?? 1)).toBeCloseTo(5 / 8, 1);
    expect((widths[8] ?? 0) / (widths[0] ?? 1)).toBeCloseTo(36 / 8, 1);
  });

  test('a start that can’t be read is told, with one that can', async ({ open }) => {
    const page = await open('plan/bake/?reels=lanterna-side-a&start=tomorrow');
    await expect.poll(() => words(page, '#plan')).toMatch(/A start looks like \d{4}-/);
  });

  test('an id that no reel has is told', async ({ open }) => {
    const page = await open('plan/?reels=lanterna-side-a,nobody');
    await expect.poll(() => words(page, '#plan')).toContain('No reel that is here has the id nobody');
  });

  test('the calendar has both windows of each side, what is to be looked at again, and the shares that end', ({
    demo,
  }) => {
    const parsed = ICAL.parse(readFileSync(join(demo.folder, 'calendar.ics'), 'utf8'));
    const events = new ICAL.Component(parsed).getAllSubcomponents('vevent').map((one) => new ICAL.Event(one));
    const side = events.filter(({ uid }) => uid.startsWith('bake-lanterna-side-a'));
    expect(side.map(({ startDate, endDate }) => [startDate.toString(), endDate.toString()])).toEqual([
      ['2026-10-17T08:00:00', '2026-10-17T18:00:00'],
      ['2026-10-17T08:00:00', '2026-10-31T08:00:00'],
    ]);
    expect(side.map(({ summary }) => summary)).toEqual([
      'Playback window, common practice: Lanterna e Cal, side A',
      'Playback window, a published practice: Lanterna e Cal, side A',
    ]);
    // Looked at on 2 March 2026, and a year later again; the share for the engineer ends as it says.
    const acetate = events.find(({ description }) => description?.includes('Café do Farol Novo'));
    expect(acetate?.startDate.toString()).toBe('2027-03-02');
    const share = events.find(({ uid }) => uid.startsWith('share-transfer-day'));
    expect(share?.startDate.toString()).toBe('2027-06-30');
  });
});

describe('an acetate reel that must not be baked', () => {
  test('its sheet says so, with its cautions', async ({ open }) => {
    const told = await words(await open('reels/farol-original/'), 'main');
    expect(told).toMatch(/Acetic vapour: decaying acetate/);
    expect(told).toMatch(/Never bake it/);
  });

  test('the playing plan leaves it in its box, and says what it would take', async ({ open }) => {
    const page = await open('plan/?reels=farol-original');
    await page.locator('#plan table').first().waitFor();
    expect(await page.locator('#order table').count()).toBe(0);
    const row = await text(rowOf(page, '#not', 'Café do Farol Novo'));
    expect(row).toContain('leave it in its box');
    expect(row).toMatch(/Never to be baked: Its base is acetate: heat destroys it/);
    expect(await words(page, '#plan .cautions')).toMatch(/Acetic vapour/);
  });

  test('the bake plan says never: no practice, no bar, no log', async ({ open }) => {
    const page = await open('plan/bake/?reels=farol-original');
    await page.locator('#plan table').first().waitFor();
    expect(await words(page, '#may')).toMatch(/never.*Its base is acetate: heat destroys it/);
    for (const part of ['#practices', '#log', '#plan svg.bakes']) expect(await page.locator(part).count()).toBe(0);
    expect(await words(page, '#plan .cautions')).toMatch(/Heat: never heat acetate/);
  });

  test('beside the shedding set it is still never, and has no part in the time of a pass', async ({ open }) => {
    const page = await open('plan/share-transfer-day/bake/');
    expect(await text(rowOf(page, '#may', 'Café do Farol Novo'))).toContain('never');
    expect(await words(page, '#log')).not.toContain('Café do Farol Novo');
  });
});

const BETWEEN_MARGINS_PX = 710;

/** Pages of a PDF, by the objects in it that are pages. */
const pagesIn = (pdf: Buffer) => pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;

describe('on paper', () => {
  test.for([
    { path: 'plan/share-transfer-day/', sheets: 1 },
    { path: 'plan/set-lanterna/', sheets: 1 },
    { path: 'plan/?reels=lanterna-side-a,farol-original', sheets: 1 },
    { path: 'plan/bake/?reels=farol-original', sheets: 1 },
    // The second is the log that is filled in at the oven.
    { path: 'plan/set-lanterna/bake/', sheets: 2 },
    { path: 'plan/bake/?reels=lanterna-side-a,lanterna-side-b', sheets: 2 },
    { path: 'plan/share-transfer-day/bake/', sheets: 3 },
  ])('$path is $sheets of A4, with nothing cut off and no word under 8 pt', async ({ path, sheets }, { open }) => {
    const page = await open(path);
    await page.locator('.one table').first().waitFor();
    expect(pagesIn(await page.pdf({ format: 'A4', preferCSSPageSize: true }))).toBe(sheets);
    // The paper is 210 mm wide; the page between its margins 22 mm less.
    await page.setViewportSize({ width: 794, height: 1123 });
    await page.emulateMedia({ media: 'print' });
    await page.evaluate((most) => {
      document.documentElement.style.width = `${most}px`;
    }, BETWEEN_MARGINS_PX);
    const found = await page.evaluate((most) => {
      const spoken = [...document.querySelectorAll<HTMLElement>('.one *')].filter((part) =>
        [...part.childNodes].some((node) => node.nodeType === Node.TEXT_NODE && (node.textContent ?? '').trim() !== ''),
      );
      const seen = spoken.filter((part) => part.getBoundingClientRect().width > 0);
      return {
        small: seen.filter((part) => Number.parseFloat(getComputedStyle(part).fontSize) < (8 / 72) * 96 - 0.05).length,
        cut: seen.filter((part) => part.getBoundingClientRect().right > most + 1).map((part) => part.outerHTML),
        over: [...document.querySelectorAll('.one :is(td, th)')]
          .filter((cell) => cell.scrollWidth > cell.clientWidth + 1)
          .map((cell) => cell.textContent),
        seen: seen.length,
      };
    }, BETWEEN_MARGINS_PX);
    expect(found.seen).toBeGreaterThan(20);
    expect(found).toMatchObject({ small: 0, cut: [], over: [] });
  });

  test('the log begins a sheet of its own', async ({ open }) => {
    const page = await open('plan/set-lanterna/bake/');
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.further').evaluate((part) => getComputedStyle(part).breakBefore)).toBe('page');
  });
});

describe('a place', () => {
  test('draws its year in three traces of at most 40 kB, each with its words', async ({ open }) => {
    const page = await open('places/loft/');
    const traces = page.locator('.plot svg[role=img]');
    const drawn = await traces.evaluateAll((all) => all.map((one) => one.outerHTML));
    expect(drawn).toHaveLength(3);
    expect(Buffer.byteLength(drawn.join(''))).toBeLessThan(40_000);
    expect(await traces.first().getAttribute('aria-label')).toMatch(/^Temperature, °C: between .* and .* °C; shaded/);
    expect(await words(page, '#trace')).toMatch(/Within a day, on average of 355 days/);
    expect(await words(page, '#compared')).toMatch(/Readings are missing for a while.*232 h without a reading/);
  });

  test('answers what another air would make of the room, as its table does', async ({ open }) => {
    const page = await open('places/spare-room/');
    await page.getByRole('textbox', { name: 'Temperature' }).fill('18 °C');
    await page.getByRole('textbox', { name: 'Humidity' }).fill('40 %');
    await page.locator('#what-if button').click();
    const row = await text(page.locator('#compared tr', { hasText: '18 °C and 40 %' }));
    const factor = /([\d.]+) times as good/.exec(row)?.[1];
    expect(factor).toBeDefined();
    expect(await words(page, '#what-if .ans')).toContain(`would be ${factor} times as good`);
    await page.getByRole('textbox', { name: 'Humidity' }).fill('0 %');
    await page.locator('#what-if button').click();
    expect(await words(page, '#what-if .ans')).toContain('give a humidity over 0 %');
    await page.getByRole('textbox', { name: 'Temperature' }).fill('warm');
    await page.locator('#what-if button').click();
    expect(await words(page, '#what-if .ans')).toContain('Write it as');
  });

  test('two rooms are each the inverse of the other', async ({ open }) => {
    const factor = async (place: string, other: string) => {
      const row = (await open(place)).locator('#compared tr', { hasText: other }).first();
      return Number(/([\d.]+) times as good/.exec(await text(row))?.[1]);
    };
    expect((await factor('places/spare-room/', 'Loft')) * (await factor('places/loft/', 'Spare room'))).toBeCloseTo(
      1,
      1,
    );
  });

  test('says what its air means for the stocks that lie there', async ({ open }) => {
    const told = await words(await open('places/spare-room/'), '#compared');
    expect(told).toMatch(/Sirga Azul 90.*A binder of this kind takes up water/);
    expect(told).toMatch(/stock not recorded.*can’t be told until their stock is recorded/);
  });
});

describe('the reckoner', () => {
  const LENGTH = '#tape-length';

  test('works out what is typed, keeps it in the address, and finds it there again', async ({ open }) => {
    const page = await open('reckoner/');
    await page.locator(`${LENGTH} [name=outside-diameter]`).fill('260 mm ± 1 mm');
    await page.locator(`${LENGTH} [name=hub-diameter]`).fill('100 mm');
    await page.locator(`${LENGTH} [name=thickness]`).fill('52 µm');
    await page.locator(`${LENGTH} button`).click();
    // By hand: π(260² − 100²)/(4·0.052) mm = 869.98 m, in four figures 870.
    await expect.poll(() => words(page, `${LENGTH} .ans`)).toMatch(/^870 m, /);
    const told = await words(page, `${LENGTH} .answer`);
    for (const part of ['Formula', 'Source']) expect(told).toContain(part);
    expect(page.url()).toContain('reckon=tape-length');
    const sent = await open(page.url().replace(/^http:\/\/[^/]*\//, ''));
    await expect.poll(() => words(sent, `${LENGTH} .answer`)).toBe(told);
    expect(await sent.locator(`${LENGTH} [name=outside-diameter]`).inputValue()).toBe('260 mm ± 1 mm');
  });

  test('goes on without a network once it is open', async ({ open }) => {
    const page = await open('reckoner/');
    await page.context().setOffline(true);
    await page.locator('#dew-point [name=temperature]').fill('25 °C');
    await page.locator('#dew-point [name=humidity]').fill('50 %');
    await page.locator('#dew-point button').click();
    // C-359: 13.85 °C.
    await expect.poll(() => words(page, '#dew-point .ans')).toMatch(/13\.8[45]\d* /);
  });

  test('says what couldn’t be read, and how to write it', async ({ open }) => {
    const page = await open('reckoner/');
    await page.locator(`${LENGTH} [name=thickness]`).fill('thin');
    await page.locator(`${LENGTH} button`).click();
    await expect.poll(() => words(page, `${LENGTH} .answer`)).toMatch(/can’t be read.*Thickness.*µm/);
  });

  test('reads without its script: each form has an example that is worked out', async ({ open }) => {
    const page = await open('reckoner/', { javaScriptEnabled: false });
    const answers = await page.locator('form.calc .answer').allInnerTexts();
    expect(answers.length).toBeGreaterThanOrEqual(15);
    for (const answer of answers) expect(answer).toMatch(/Formula[\s\S]*Source/);
  });
});

describe('the pages of care', () => {
  const SHEETS = ['plan/?reels=lanterna-side-a,farol-original', 'plan/bake/?reels=lanterna-side-a,farol-original'];

  test.for(SHEETS)(
    '%s, worked out in the browser, is open to everyone and never scrolls sideways',
    async (path, { open }) => {
      for (const options of [{}, { colorScheme: 'dark', viewport: { width: 360, height: 740 } }] as const) {
        const page = await open(path, options);
        await page.locator('#plan table').first().waitFor();
        expect(await axeFindings(page)).toEqual([]);
      }
      const page = await open(path, { viewport: { width: 320, height: 700 } });
      await page.locator('#plan table').first().waitFor();
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
    },
  );

  test('lead to plans that stand ready where scripts are off', async ({ open }) => {
    const page = await open('plan/', { javaScriptEnabled: false });
    await page.getByRole('link', { name: 'lanterna' }).click();
    expect(await words(page, '#order')).toContain('Lanterna e Cal, side A');
  });

  test('name no source by a key that nothing explains', ({ demo }) => {
    const keyed = globSync('**/*.html', { cwd: demo.folder }).filter((file) =>
      /\[S-[A-Z]+\]/.test(readFileSync(join(demo.folder, file), 'utf8')),
    );
    expect(keyed).toEqual([]);
  });
});
