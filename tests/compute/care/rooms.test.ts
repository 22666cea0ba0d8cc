import { describe, expect, test } from 'vitest';
import { roomsOf } from '#compute/care/rooms.ts';
import { catalogueOf, type Given } from '../../given/small-collection.ts';

/** Two days of steady air, an hour apart. */
function log(temperatureC: number, humidityPercent: number): string {
  const rows = Array.from({ length: 48 }, (_, hour) => {
    const time = new Date(Date.UTC(2026, 0, 1, hour)).toISOString().slice(0, 16);
    return `${time},${temperatureC + (hour % 2) * 0.0001},${humidityPercent}`;
  });
  return `time,temperature_C,humidity_percent\n${rows.join('\n')}\n`;
}

const PLACES: Given = {
  'places/cellar': 'climate: [cellar.csv]',
  'places/cellar/cellar.csv': log(20, 50),
  'places/attic': 'climate: [attic.csv]',
  'places/attic/attic.csv': log(26, 60),
  'places/nowhere': 'address: 1 Any Street',
};
const rooms = async (given: Given = {}) => roomsOf(await catalogueOf({ ...PLACES, ...given }));
const there = (stock: string) => `stock: ${stock}\nplace: { at: attic }`;

describe('a room', () => {
  test('is compared with steady air and with every other room that has a log', async () => {
    const all = await rooms();
    expect([...all.keys()].sort()).toEqual(['attic', 'cellar']);
    const against = all.get('cellar')?.compared ?? [];
    // At 20 °C and 50 % it is that steady air itself.
    expect(against[0]?.with).toBe('steady 20 °C and 50 %');
    expect(against[0]?.ratio).toBeCloseTo(1, 3);
    // By hand, 1/k with k = RH·exp(−90300/(8.314·T)): (60·exp(−36.307))/(50·exp(−37.050)) = 1.2·e^0.743 = 2.523.
    expect(against[1]?.ratio).toBeCloseTo(2.523, 2);
    const back = all.get('attic')?.compared.at(-1)?.ratio ?? 0;
    expect(back * (against[1]?.ratio ?? 0)).toBeCloseTo(1, 9);
  });

  test('at another air would be as good as that air is, whatever its own', async () => {
    const all = await rooms();
    const whatIf = (room: string) => all.get(room)?.whatIf.find((one) => one.temperatureC === 18)?.ratio ?? 0;
    // By hand: 50·exp(−37.050)/(40·exp(−37.305)) = 1.25·e^0.255 = 1.612.
    expect(whatIf('cellar')).toBeCloseTo(1.612, 2);
    expect(whatIf('attic') / whatIf('cellar')).toBeCloseTo(2.523, 2);
  });

  test('says what its air means for each stock that lies there, and that nobody recorded one', async () => {
    const all = await rooms({
      'stocks/clear': 'base: acetate',
      'stocks/gummy': 'base: polyester\nbinder: polyurethane\nback-coated: yes\nmade: 1976/1983',
      'stocks/plain': 'base: polyester\nbinder: other\nback-coated: no\nmade: 1976/1983',
      'stocks/open': 'binder: other',
      'reels/a': there('clear'),
      'reels/b': there('gummy'),
      'reels/c': there('plain'),
      'reels/d': there('open'),
      'reels/e': 'place: { at: attic }',
      'reels/f': 'stock: clear\nplace: { at: cellar }',
    });
    const stocks = all.get('attic')?.stocks ?? [];
    expect(stocks.map(({ reels, says }) => [reels, says.split(' ').slice(0, 4).join(' ')])).toEqual([
      [1, 'Acetate decays the faster'],
      [1, 'A binder of this'],
      [1, 'Its base isn’t recorded,'],
      [1, '48 h past the'],
      [1, 'What this air does'],
    ]);
    expect(stocks.slice(0, 2).every(({ source }) => source !== '')).toBe(true);
    expect(all.get('cellar')?.stocks.map(({ reels }) => reels)).toEqual([1]);
  });

  test('of wholly dry air can’t be compared, and isn’t', async () => {
    const all = await rooms({ 'places/kiln': 'climate: [kiln.csv]', 'places/kiln/kiln.csv': log(40, 0) });
    expect(all.has('kiln')).toBe(false);
    expect(all.get('cellar')?.compared.map((one) => one.with)).toHaveLength(2);
  });

  test('never says how long a tape has', async () => {
    const room = (await rooms()).get('cellar');
    expect(room?.mind).toMatch(/comparing rooms/);
    expect(room?.source).toMatch(/New Tools for Preservation/);
  });
});
