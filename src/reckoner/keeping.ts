import { workedDewPoint } from '#compute/climate/dew-point.ts';
import { STORAGE_YEARS_MIND, workedStorageYears } from '#compute/climate/storage-years.ts';
import { bakeWindow } from '#compute/condition/bake-window.ts';
import type { LocalTime } from '#model/dates.ts';
import { type Percent, percent } from '#model/units.ts';
import { parseHumidity } from '#validate/scalars/humidity.ts';
import { parseLocalTime } from '#validate/scalars/local-time.ts';
import { type Parsed, refused } from '#validate/scalars/parsed.ts';
import { parseTemperature } from '#validate/scalars/temperature.ts';
import { type Asked, stated } from './asked.ts';
import { answerOf, type Calculation } from './calculation.ts';

const AIR = [
  { name: 'temperature', form: '20 °C' },
  { name: 'humidity', form: '50 %' },
];

export const dewPointOf: Calculation = {
  name: 'dew-point',
  does: 'the temperature at which water forms on things',
  keys: AIR,
  answer: (asked) => {
    const air = askedAir(asked);
    if (air === undefined) return undefined;
    const worked = workedDewPoint(stated('temperature', air.temperature), stated('humidity', air.humidity));
    const frost =
      worked.value < 0 ? ['Below freezing this is the dew point over water; frost forms at up to 3 °C above it.'] : [];
    return answerOf(worked, [
      'A tape colder than this gets wet when its bag is opened: let it take the room’s temperature in its closed bag.',
      ...frost,
    ]);
  },
};

export const storageYearsOf: Calculation = {
  name: 'storage-years',
  does: 'a measure of a room, for comparing rooms',
  keys: AIR,
  answer: (asked) => {
    const air = askedAir(asked);
    if (air === undefined) return undefined;
    const worked = workedStorageYears(stated('temperature', air.temperature), stated('humidity', air.humidity));
    return answerOf(worked, [STORAGE_YEARS_MIND]);
  },
};

function askedAir(asked: Asked) {
  const temperature = asked.one('temperature', parseTemperature);
  const humidity = asked.one('humidity', parseSomeHumidity);
  return temperature === undefined || humidity === undefined ? undefined : { temperature, humidity };
}

function parseSomeHumidity(text: string): Parsed<Percent> {
  const read = parseHumidity(text);
  if (!read.ok || read.value > percent(0)) return read;
  return refused('Wholly dry air has no dew point and no measure.', '45 %, or 1 %', 'Give a humidity over 0 %.');
}

export const bakeWindowOf: Calculation = {
  name: 'bake-window',
  does: 'until when a baked tape plays, practice by practice',
  keys: [
    { name: 'ended', form: '2026-03-11T22:00' },
    { name: 'now', form: '2026-03-12T06:00', optional: true },
  ],
  answer: (asked) => {
    const ended = asked.one('ended', parseLocalTime);
    const now = asked.has('now') ? asked.one('now', parseLocalTime) : clockNow(asked.around.now);
    if (ended === undefined || now === undefined) return undefined;
    const windows = bakeWindow(ended.value, now.value);
    return {
      value: {
        practices: windows.map(({ practice, closesEarliest, closesLatest, state, says, source }) => ({
          practice,
          'closes-earliest': closesEarliest,
          'closes-latest': closesLatest,
          open: state === 'open' || state === 'may be closed',
          state,
          says,
          source,
        })),
      },
      unit: null,
      told: windows.map(
        ({ practice, closesEarliest, closesLatest, state, says }) =>
          `${practice === 'published' ? 'a published practice' : 'common practice'}: closes ${closesEarliest.replace('T', ' ')} to ${closesLatest.replace('T', ' ')}, ${state} (${says})`,
      ),
      inputs: [
        { name: 'ended', written: ended.written, basis: 'stated' },
        { name: 'now', written: now.written, basis: asked.has('now') ? 'stated' : 'assumed' },
      ],
      formula: 'ended + 7 to 10 h; ended + 1 to 2 weeks',
      source: windows.map((window) => `${window.practice}: ${window.source}`).join('; '),
      mind: [
        'The two rest on different things and are never merged: plan for the shorter. A window that may be closed counts as open here until its latest end.',
        'Cooling counts. Never heat acetate, paper or PVC, nor a tape whose base isn’t known; a domestic oven overshoots and can set a tape alight. Bake only what must be played, with someone experienced who agrees.',
        'Stop at the first squeal.',
      ],
    };
  },
};

/** The clock of the place, to the minute. */
function clockNow(now: Date): { value: LocalTime; written: string } {
  const two = (count: number) => String(count).padStart(2, '0');
  const day = `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  const value = `${day}T${two(now.getHours())}:${two(now.getMinutes())}` as LocalTime;
  return { value, written: value };
}
