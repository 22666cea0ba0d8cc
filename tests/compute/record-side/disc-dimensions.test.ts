import { describe, expect, test } from 'vitest';
import {
  bandWidth,
  DISC_DIMENSIONS,
  RECORDING_SPEED_TOLERANCE_PERCENT,
  WIDEST_BAND_MM,
} from '#compute/record-side/disc-dimensions.ts';
import { asInches, inches, millimetres } from '#model/units.ts';
import { departures, numberOf, rows } from '../../tables/published.ts';

const named = (what: string) => DISC_DIMENSIONS.find((row) => row.what.startsWith(what))?.diameterMm ?? millimetres(0);

/** The published row, and the row of ours that carries its figure. */
const SAME: Record<string, string> = {
  'C-293': 'outermost recorded groove, 12 in',
  'C-294': 'recorded surface, 30 cm, outside',
  'C-295': 'outermost recorded groove, 12 in',
  'C-296': 'innermost recorded groove, 12 in',
  'C-297': 'innermost recorded groove (IEC 98-1958',
  'C-298': 'finishing groove',
  'C-299': 'inmost recorded groove (DIN',
  'C-300': 'music groove begins inside',
  'C-301': 'music groove ends outside',
  'C-302': 'recorded surface, 25 cm',
  'C-303': 'recorded surface, 17 cm',
};

describe('a record’s dimensions', () => {
  test.each(rows('C-076'))('$id $inputs.what ($source)', ({ expected, tolerance }) => {
    expect(departures(asInches(named('outermost recorded groove, 12 in')), expected['value'], tolerance)).toEqual([]);
  });
  test.each(rows('C-077'))('$id $inputs.what ($source)', ({ expected, tolerance }) => {
    expect(departures(asInches(named('innermost recorded groove, 12 in')), expected['value'], tolerance)).toEqual([]);
  });
  test.each(rows(...Object.keys(SAME)))('$id $title ($source)', ({ id, expected, tolerance }) => {
    expect(departures(named(SAME[id] ?? ''), expected['diameter_mm'], tolerance)).toEqual([]);
  });
  test.each(rows('C-304'))('$id $title ($source)', ({ inputs, expected, tolerance }) => {
    const width = bandWidth(inches(numberOf(inputs, 'outer_in')), inches(numberOf(inputs, 'inner_in')));
    expect(departures(width, expected['band_mm'], tolerance)).toEqual([]);
    expect(WIDEST_BAND_MM).toBe(width);
  });
  test.each(rows('C-305'))('$id $title ($source)', ({ inputs, expected, tolerance }) => {
    const width = bandWidth(millimetres(numberOf(inputs, 'outer_mm')), millimetres(numberOf(inputs, 'inner_mm')));
    expect(departures(width, expected['band_mm'], tolerance)).toEqual([]);
  });
  test.each(rows('C-306'))('$id $title ($source)', ({ inputs, expected, tolerance }) => {
    const part = RECORDING_SPEED_TOLERANCE_PERCENT / 100;
    const rpm = numberOf(inputs, 'rpm');
    const answer = { tolerance_percent: 100 * part, low_rpm: rpm * (1 - part), high_rpm: rpm * (1 + part) };
    expect(departures(answer, expected, tolerance)).toEqual([]);
  });
  test.each(rows('C-307'))('$id $title ($source)', ({ expected, tolerance }) => {
    const part = RECORDING_SPEED_TOLERANCE_PERCENT / 100;
    expect(departures({ low_s: 1200 * (1 - part), high_s: 1200 * (1 + part) }, expected, tolerance)).toEqual([]);
  });
  test('each row has its source', () => expect(DISC_DIMENSIONS.filter((row) => row.source === '')).toEqual([]));
});
