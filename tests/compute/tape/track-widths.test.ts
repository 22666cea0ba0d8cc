import { describe, expect, test } from 'vitest';
import {
  GUARD_BANDS,
  gainOfWidth,
  levelOnHead,
  signalToNoiseOnHead,
  TRACK_WIDTHS,
} from '#compute/tape/track-widths.ts';
import { millimetres, mils } from '#model/units.ts';
import { departures, numberOf, rows } from '../../tables/published.ts';

const width = (what: string) => TRACK_WIDTHS.find((row) => row.what === what)?.widthMm;
const guard = (what: string) => GUARD_BANDS.find((row) => row.what === what)?.widthMm;
const inMm = (mil: number) => millimetres(mils(mil) / 1000);

describe('track widths', () => {
  test.each(rows('C-131'))('$id $inputs.format ($source)', ({ expected }) => {
    const named = expected['track_width_mil'] as number[];
    for (const mil of named) expect(TRACK_WIDTHS.some((row) => Math.abs(row.widthMm - inMm(mil)) < 1e-9)).toBe(true);
    expect(guard('NAB')).toBe(expected['guard_mm_NAB']);
    expect(guard('DIN stereo')).toBe(expected['guard_mm_DIN']);
  });

  test.each(rows('C-281'))('$id $title ($source)', ({ expected, tolerance }) => {
    const widths = ['two-track, one maker, 75 mil', 'two-track, NAB, 82 mil', 'two-track, 100 mil'].map(width);
    expect(departures(widths, expected['widths_mm'], tolerance)).toEqual([]);
  });

  test.each(rows('C-282'))('$id $title ($source)', ({ expected, tolerance }) => {
    expect(departures(width('full track, 234 mil'), expected['width_mm'], tolerance)).toEqual([]);
  });

  test.each(rows('C-283'))('$id $title ($source)', ({ expected, tolerance }) => {
    const bands = { nab_mm: guard('NAB'), dinStereo_mm: guard('DIN stereo') };
    expect(departures(bands, expected, tolerance)).toEqual([]);
  });

  test.each(rows('C-284'))('$id $title ($source)', ({ expected, tolerance }) => {
    const widths = {
      oneMaker_mm: width('two-track, one maker'),
      NAB_mm: width('two-track, NAB'),
      IECstereo_mm: width('two-track, IEC stereo'),
    };
    expect(departures(widths, expected, tolerance)).toEqual([]);
  });

  test.each(rows('C-285'))('$id $title ($source)', ({ inputs, expected, tolerance }) => {
    const gain = gainOfWidth(millimetres(numberOf(inputs, 'wide_mm')), millimetres(numberOf(inputs, 'narrow_mm')));
    const answer = { signal_dB: gain.signalDb, noise_dB: gain.noiseDb, netSignalToNoise_dB: gain.signalToNoiseDb };
    expect(departures(answer, expected, tolerance)).toEqual([]);
  });

  test.each(rows('C-286'))('$id $title ($source)', ({ inputs, expected, tolerance }) => {
    const lost = signalToNoiseOnHead(
      millimetres(numberOf(inputs, 'recorded_mm')),
      millimetres(numberOf(inputs, 'head_mm')),
    );
    expect(departures(lost, expected['value'], tolerance)).toEqual([]);
  });

  test.each(rows('C-288'))('$id $title ($source)', ({ inputs, expected, tolerance }) => {
    const level = levelOnHead(inMm(numberOf(inputs, 'recorded_mil')), inMm(numberOf(inputs, 'head_mil')));
    expect(departures(level, expected['value'], tolerance)).toEqual([]);
  });

  test('a head no wider than the track loses nothing of it', () => {
    expect(levelOnHead(millimetres(2.1), millimetres(1.9))).toBe(0);
  });
});
