import { expect, test } from 'vitest';
import { ACCLIMATISING, PLAYS_AT_ONCE_WITHIN } from '#compute/climate/acclimatising.ts';
import { rows } from '../../tables/published.ts';

test.each(rows('C-130'))('$id from a cold store to the room, as a band ($source)', ({ expected }) => {
  const bands = ACCLIMATISING.map((row) => [row.fromHours, row.toHours]);
  expect(bands).toContainEqual(expected['hours']);
});

test.each(rows('C-385'))('$id $title ($source)', ({ expected }) => {
  expect(PLAYS_AT_ONCE_WITHIN).toEqual({
    temperatureC: expected['ifTemperatureDiffers_C'],
    humidityPercent: expected['ifHumidityDiffers_percent'],
  });
  const said = ACCLIMATISING.map((row) => row.says).join('; ');
  expect(said).toContain('a few hours');
  expect(said).toContain('24 hours');
});

test('each says who says so', () => expect(ACCLIMATISING.filter((row) => row.source === '')).toEqual([]));
