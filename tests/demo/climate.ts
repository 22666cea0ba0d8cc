/** Writes the two climate logs of the demo collection. Run by hand, from the project's root:
 *
 *      node tests/demo/climate.ts
 *
 * The rooms are invented; the same seed gives the same bytes. The spare room stays inside the bounds all year; the loft
 * is damp and cold in winter and hot in summer, and its logger's battery died for nine days in May. */
import { renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { seededNoise } from './noise.ts';

const COLLECTION = join(import.meta.dirname, '../../collection');
const START = Date.UTC(2025, 10, 1);
const DAYS = 365;
const HOUR_MS = 3_600_000;

interface Room {
  readonly file: string;
  readonly header: string;
  readonly seed: number;
  readonly everyMinutes: number;
  /** Mean over the year, °C; half of summer's distance from winter; half of a clear day's swing; spread of the weather. */
  readonly temperature: { mean: number; season: number; day: number; weather: number };
  /** The same in %, the season's sign turned: winter is the damp time. */
  readonly humidity: { mean: number; season: number; day: number; weather: number };
  readonly limits: { t: readonly [number, number]; rh: readonly [number, number] };
  readonly stamp: (moment: Date) => string;
  readonly isMissing: (moment: Date) => boolean;
}

const iso = (moment: Date) => moment.toISOString().slice(0, 16);

const ROOMS: readonly Room[] = [
  {
    file: 'places/spare-room/spare-room.csv',
    header: 'time,temperature_C,humidity_percent',
    seed: 4471,
    everyMinutes: 60,
    temperature: { mean: 19.3, season: 2.1, day: 0.35, weather: 0.45 },
    humidity: { mean: 42, season: 2.6, day: 0.8, weather: 1.5 },
    limits: { t: [16.4, 22.8], rh: [35, 48.9] },
    stamp: iso,
    isMissing: () => false,
  },
  {
    file: 'places/loft/loft.csv',
    header: 'stamp_UTC+0,T_air,RH',
    seed: 2093,
    everyMinutes: 30,
    temperature: { mean: 17.6, season: 8.2, day: 4.6, weather: 2.3 },
    humidity: { mean: 56, season: 10, day: 5.5, weather: 5 },
    limits: { t: [1.5, 38.5], rh: [21, 88] },
    stamp: (moment) => iso(moment).replace('T', ' '),
    isMissing: (moment) =>
      moment.getTime() >= Date.UTC(2026, 4, 12, 3) && moment.getTime() < Date.UTC(2026, 4, 21, 18, 30),
  },
];

const clamp = (value: number, [low, high]: readonly [number, number]) => {
  // Soft at both ends: a hard stop would look like a sensor that sticks.
  const middle = (low + high) / 2;
  const half = (high - low) / 2;
  return middle + half * Math.tanh((value - middle) / half);
};

function rowsOf(room: Room): string[] {
  const noise = seededNoise(room.seed);
  const rows = [room.header];
  const steps = (DAYS * 24 * 60) / room.everyMinutes;
  // A walk that forgets within about three days: what a spell of weather does.
  const memory = Math.exp(-room.everyMinutes / (3 * 24 * 60));
  const push = Math.sqrt(1 - memory * memory);
  let warm = 0;
  let damp = 0;
  for (let step = 0; step < steps; step += 1) {
    const moment = new Date(START + (step * room.everyMinutes * HOUR_MS) / 60);
    const ofYear = Math.cos(2 * Math.PI * ((moment.getTime() - Date.UTC(2026, 6, 27)) / (365.25 * 24 * HOUR_MS)));
    const hour = moment.getUTCHours() + moment.getUTCMinutes() / 60;
    const ofDay = Math.cos((2 * Math.PI * (hour - 15.5)) / 24);
    const sun = 0.75 + 0.45 * ofYear; // summer days swing further
    warm = memory * warm + push * noise.normal();
    damp = memory * damp + push * noise.normal();
    const { temperature: t, humidity: rh } = room;
    const celsius = t.mean + t.season * ofYear + t.day * sun * ofDay + t.weather * warm + 0.06 * noise.normal();
    const percent =
      rh.mean - rh.season * ofYear - rh.day * sun * ofDay + rh.weather * (damp - 0.3 * warm) + 0.25 * noise.normal();
    if (room.isMissing(moment)) continue;
    rows.push(
      `${room.stamp(moment)},${clamp(celsius, room.limits.t).toFixed(1)},${clamp(percent, room.limits.rh).toFixed(1)}`,
    );
  }
  return rows;
}

for (const room of ROOMS) {
  const path = join(COLLECTION, room.file);
  writeFileSync(`${path}.new`, `${rowsOf(room).join('\n')}\n`);
  renameSync(`${path}.new`, path);
}
