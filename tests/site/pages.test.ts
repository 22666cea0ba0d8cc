import { describe, expect } from 'vitest';
import { axeFindings, test } from './harness.ts';

/** One page of each kind, by what its heading says. */
const KINDS = [
  { kind: 'the shelf', path: '', heading: 'The reels' },
  { kind: 'a reel with photographs', path: 'reels/caderno-side-1/', heading: 'Caderno de Nevoeiro, side 1' },
  { kind: 'a reel that is missing', path: 'reels/ilha-side-2/', heading: 'Ilha Quase, side 2' },
  { kind: 'the editions', path: 'editions/', heading: 'Editions' },
  { kind: 'an edition', path: 'editions/vny-208/', heading: 'Caderno de Nevoeiro (overseas)' },
  { kind: 'the lineages', path: 'lineage/', heading: 'Lineage' },
  { kind: 'a lineage', path: 'lineage/vny-231/', heading: 'The lineage of Ilha Quase' },
  { kind: 'the machines', path: 'machines/', heading: 'Machines' },
  { kind: 'a machine', path: 'machines/corridor-machine/', heading: 'Corridor machine' },
  { kind: 'the stocks', path: 'stocks/', heading: 'Stocks' },
  { kind: 'a stock', path: 'stocks/tarvo-m-longa/', heading: 'Tarvo M-Longa' },
  { kind: 'the places', path: 'places/', heading: 'Places' },
  { kind: 'a place with a log', path: 'places/spare-room/', heading: 'Spare room' },
  { kind: 'the people', path: 'people/', heading: 'People' },
  { kind: 'a person', path: 'people/rui-sarmenho/', heading: 'Rui Sarmenho' },
  { kind: 'the notes', path: 'notes/', heading: 'Notes' },
  { kind: 'a note', path: 'notes/parcel-2026/', heading: 'Where these came from' },
  { kind: 'what to mend', path: 'to-mend/', heading: 'To mend' },
  { kind: 'the plans', path: 'plan/', heading: 'Playing plan' },
  { kind: 'a plan', path: 'plan/share-transfer-day/', heading: 'Playing plan: Transfer day at Tavela' },
  { kind: 'a bake plan', path: 'plan/share-transfer-day/bake/', heading: 'Bake plan: Transfer day at Tavela' },
  { kind: 'the reckoner', path: 'reckoner/', heading: 'Reckoner' },
  { kind: 'the sources', path: 'sources/', heading: 'Sources' },
  { kind: 'the curves', path: 'curves/', heading: 'Replay curves' },
  { kind: 'the words', path: 'glossary/', heading: 'Words of the trade' },
  { kind: 'the key', path: 'how-to-read/', heading: 'How to read these sheets' },
  { kind: 'an address that leads nowhere', path: '404.html', heading: 'No such page' },
] as const;

const MODES = [
  { mode: 'in light', options: {} },
  { mode: 'in dark', options: { colorScheme: 'dark' } },
  { mode: 'on a phone', options: { viewport: { width: 360, height: 740 } } },
] as const;

describe.each(KINDS)('$kind', ({ path, heading }) => {
  test('has its one heading', async ({ open }) => {
    const page = await open(path);
    expect(await page.locator('h1').allTextContents()).toEqual([heading]);
  });

  test.for(MODES)('is open to everyone $mode', async ({ options }, { open }) => {
    const page = await open(path, options);
    await page.evaluate(() => {
      for (const details of document.querySelectorAll('details')) details.open = true;
    });
    expect(await axeFindings(page)).toEqual([]);
  });

  test('never scrolls sideways at 320 px', async ({ open }) => {
    const page = await open(path, { viewport: { width: 320, height: 700 } });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
  });
});
