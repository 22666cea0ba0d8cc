import { casesOf } from '../cases.ts';
import { outside } from './outside.ts';

/** Readings every six hours, the last few of them different. */
const place = (readings: number, usual: string, odd = 0, then = usual) => {
  const rows = Array.from({ length: readings }, (_, at) => {
    const time = new Date(Date.UTC(2025, 0, 1, at * 6)).toISOString().slice(0, 16);
    const [temperature = '', humidity = ''] = (at < readings - odd ? usual : then).split(' ');
    return `${time},${Number(temperature) + (at % 2) / 10},${Number(humidity) + (at % 2) / 10}`;
  });
  return {
    'places/room': 'climate: [room.csv]',
    'places/room/room.csv': `time,temperature_C,humidity_percent\n${rows.join('\n')}\n`,
  };
};

/** Bounds: IASA-TC 05 section 3.3 and ISO 18923:2000, published rows for storage. */
export const cases = casesOf(outside, [
  {
    when: 'a cellar is at 72 %',
    given: place(200, '14 72'),
    then: 'fires',
    severity: 'warning',
    says: ['outer bounds', '60 %'],
    file: 'places/room/index.md',
  },
  {
    when: 'a loft is hot for ten days',
    given: place(200, '20 40', 40, '37 40'),
    then: 'fires',
    severity: 'warning',
    says: '10 days',
  },
  { when: 'a shed is at 5 °C, under 8', given: place(200, '5 40'), then: 'fires', severity: 'warning' },
  {
    when: 'a living room is at 24 °C',
    given: place(200, '24 45'),
    then: 'fires',
    severity: 'note',
    says: 'medium-term',
  },
  {
    when: 'a dry room is at 22 %, between the sources',
    given: place(200, '20 22'),
    then: 'fires',
    severity: 'note',
    says: 'sources differ',
  },
  { when: 'a steady room is at 20 °C and 40 %', given: place(200, '20 40'), then: 'silent' },
  { when: 'a cold store is at 10 °C and 30 %', given: place(200, '10 30'), then: 'silent' },
  { when: 'a window stood open for half a day', given: place(200, '20 40', 2, '4 75'), then: 'silent' },
  { when: 'there is no log', given: { 'places/room': 'address: the spare room' }, then: 'silent' },
]);
