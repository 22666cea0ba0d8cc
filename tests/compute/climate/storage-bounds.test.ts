import { describe, expect, test } from 'vitest';
import {
  againstBounds,
  EXTENDED_TERM,
  LOWEST_C,
  MEDIUM_TERM,
  OTHER_BOUNDS,
  OUTER_BOUNDS,
  STEADINESS,
  type StorageBounds,
} from '#compute/climate/storage-bounds.ts';
import { celsius, percent } from '#model/units.ts';
import { numberOf, rows, textOf } from '../../tables/published.ts';

const other = (name: string) => OTHER_BOUNDS.find((row) => row.name === name);
const isoWords = (row: StorageBounds | undefined) => ({
  maxTemperature_C: row?.highC,
  temperatureTolerance_C: row?.variesC,
  humidityLow_percent: row?.lowPercent,
  humidityHigh_percent: row?.highPercent,
  humidityTolerance_percent: row?.variesPercent,
});
const ends = (row: StorageBounds | undefined) => ({
  low_C: row?.lowC,
  high_C: row?.highC,
  humidityLow_percent: row?.lowPercent,
  humidityHigh_percent: row?.highPercent,
});

describe('the published bounds', () => {
  test.each(rows('C-118'))('$id $inputs.what ($source)', ({ expected }) => {
    expect({
      temperature_C: [MEDIUM_TERM.lowC ?? null, MEDIUM_TERM.highC],
      temperature_variation_C: MEDIUM_TERM.variesC,
      humidity_percent: [MEDIUM_TERM.lowPercent, MEDIUM_TERM.highPercent],
      humidity_variation_percent: MEDIUM_TERM.variesPercent,
    }).toEqual(expected);
  });
  test.each(rows('C-119'))('$id $inputs.what ($source)', ({ expected }) => {
    const pairs = EXTENDED_TERM.map((row) => ({
      max_temperature_C: row.highC,
      humidity_percent: [row.lowPercent, row.highPercent],
    }));
    expect({ pairs }).toEqual(expected);
  });
  test.each(rows('C-120'))('$id $inputs.what ($source)', ({ expected }) => {
    expect({
      temperature_C: [OUTER_BOUNDS.lowC, OUTER_BOUNDS.highC],
      humidity_percent: [OUTER_BOUNDS.lowPercent, OUTER_BOUNDS.highPercent],
    }).toEqual(expected);
  });
  test.each(rows('C-372'))('$id $title ($source)', ({ expected }) => expect(isoWords(MEDIUM_TERM)).toEqual(expected));
  test.each(rows('C-373', 'C-374', 'C-375'))('$id $title ($source)', ({ inputs, expected }) => {
    const named = textOf(inputs, 'storage').match(/\d+ °C/)?.[0];
    expect(isoWords(EXTENDED_TERM.find((row) => row.name.endsWith(named ?? '')))).toEqual(expected);
  });
  test.each(rows('C-376', 'C-377'))('$id $title: both stand ($source)', ({ expected }) => {
    expect(LOWEST_C.map((row) => row.lowC)).toContain(expected['min_C']);
    expect(LOWEST_C).toHaveLength(2);
  });
  test.each(rows('C-378'))('$id $title ($source)', ({ expected }) => {
    expect({
      min_C: OUTER_BOUNDS.lowC,
      max_C: OUTER_BOUNDS.highC,
      minHumidity_percent: OUTER_BOUNDS.lowPercent,
      maxHumidityProlonged_percent: OUTER_BOUNDS.highPercent,
    }).toEqual(expected);
  });
  test.each(rows('C-379'))('$id $title ($source)', ({ expected }) => {
    const [middling, dry] = STEADINESS.humidities;
    const [room, cool] = STEADINESS.temperatures;
    const [narrow, relaxed] = STEADINESS.variations;
    expect({
      humidityMedium_percent: `${middling.lowPercent}–${middling.highPercent}`,
      humidityLow_percent: `${dry.lowPercent}–${dry.highPercent}`,
      room_C: `about ${room.lowC}`,
      cool_C: `${cool.lowC}–${cool.highC}`,
      narrow: `± ${narrow.variesC} °C, ± ${narrow.variesPercent} % RH`,
      relaxed: `± ${relaxed.variesC} °C, ± ${relaxed.variesPercent} % RH`,
      rule: 'range and variability are not added',
    }).toEqual(expected);
  });
  test.each(rows('C-381'))('$id $title ($source)', ({ expected }) => {
    const row = other('over 10 years');
    const middle = (low = 0, high = 0) => (low + high) / 2;
    expect({
      temperature_C: middle(row?.lowC, row?.highC),
      temperatureTolerance_C: row?.variesC,
      humidity_percent: middle(row?.lowPercent, row?.highPercent),
      humidityTolerance_percent: row?.variesPercent,
    }).toEqual(expected);
  });
  test.each(rows('C-382'))('$id $title ($source)', ({ expected }) =>
    expect(ends(other('up to 10 years'))).toEqual(expected),
  );
  test.each(rows('C-383'))('$id $title ($source)', ({ expected }) =>
    expect(ends(other('a maker’s archive'))).toEqual(expected),
  );
  test.each(rows('C-384'))('$id $title ($source)', ({ expected }) =>
    expect(ends(other('a maker’s studio'))).toEqual(expected),
  );
});

describe('a climate against the medium-term bounds', () => {
  const answered = rows('C-386', 'C-387', 'C-388', 'C-389', 'C-390');
  test.each(answered)('$id $title: $expected.answer, $expected.because ($source)', ({ id, inputs, expected }) => {
    const answer = againstBounds(
      celsius(numberOf(inputs, 'temperature_C')),
      percent(numberOf(inputs, 'humidity_percent')),
      MEDIUM_TERM,
    );
    const because = answer.is === 'inside' ? '' : answer.because;
    expect(answer.is === 'inside' ? 'inside medium-term' : 'at-risk').toBe(expected['answer']);
    const wanted: Record<string, string[]> = {
      'C-386': [],
      'C-387': ['inside only with the ±2 °C'],
      'C-388': ['25 °C'],
      'C-389': ['60 %', 'even with'],
      'C-390': ['under 8 °C', 'lubricant'],
    };
    for (const words of wanted[id] ?? ['no such row']) expect(because).toContain(words);
  });
  test('at a bound is inside', () => {
    expect(againstBounds(celsius(23), percent(50), MEDIUM_TERM)).toEqual({ is: 'inside' });
    expect(againstBounds(celsius(8), percent(20), MEDIUM_TERM)).toEqual({ is: 'inside' });
  });
});
