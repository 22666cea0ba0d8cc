import { casesOf } from '../cases.ts';
import { storage } from './storage.ts';

/** Forty days, a reading every six hours. */
const log = (temperatureC: number, humidityPercent: number) => {
  const hours = Array.from({ length: 160 }, (_, at) =>
    new Date(Date.UTC(2025, 5, 1, at * 6)).toISOString().slice(0, 16),
  );
  const rows = hours.map((time, at) => `${time},${temperatureC + (at % 2) / 10},${humidityPercent + (at % 2) / 10}`);
  return `time,temperature_C,humidity_percent\n${rows.join('\n')}\n`;
};
const room = (temperatureC: number, humidityPercent: number) => ({
  'places/room': 'climate: [room.csv]',
  'places/room/room.csv': log(temperatureC, humidityPercent),
});
const KEPT = { 'reels/a': 'place: { at: room }' };

/** The five climates: published rows for storage, ISO 18923 and IASA-TC 05. */
export const cases = casesOf(storage, [
  {
    when: 'the room is at 18 °C and 65 %',
    given: { ...KEPT, ...room(18, 65) },
    then: 'fires',
    severity: 'note',
    says: 'outer bounds',
  },
  { when: 'the room is at 6 °C and 40 %', given: { ...KEPT, ...room(6, 40) }, then: 'fires', says: 'outer bounds' },
  { when: 'the room is at 27 °C and 40 %', given: { ...KEPT, ...room(27, 40) }, then: 'fires', says: 'medium-term' },
  {
    when: 'the room is at 24 °C and 45 %, inside only with the standard’s variation',
    given: { ...KEPT, ...room(24, 45) },
    then: 'fires',
    says: 'variation',
  },
  { when: 'the room is at 21 °C and 40 %', given: { ...KEPT, ...room(21, 40) }, then: 'silent' },
  { when: 'a cool store is at 10 °C and 30 %', given: { ...KEPT, ...room(10, 30) }, then: 'silent' },
  { when: 'the place has no log', given: { ...KEPT, 'places/room': '' }, then: 'silent' },
  { when: 'nobody wrote where the reel is', given: { 'reels/a': '', ...room(18, 65) }, then: 'silent' },
]);
