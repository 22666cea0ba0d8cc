import { type Decibels, decibels, type Millimetres, millimetres, mils } from '#model/units.ts';

/** Widths of the recorded tracks and of the band between them on quarter-inch tape. Two families play each other's
 * tapes, with some level lost or some noise picked up; name the family, not the hundredth of a millimetre. */
export interface TrackWidth {
  readonly what: string;
  readonly widthMm: Millimetres;
  readonly source: string;
}

const QUARTER = 'a restoration engineer’s page on quarter-inch formats';
const GUARD = 'an engineers’ forum on two-track heads';
const GUIDE = 'a test-tape maker’s guide, ARSC list, March 2007';
const inMils = (count: number) => millimetres(mils(count) / 1000);

/** Narrowest first. */
export const TRACK_WIDTHS: readonly TrackWidth[] = [
  { what: 'two-track, one maker', widthMm: millimetres(1.9), source: GUIDE },
  { what: 'two-track, one maker, 75 mil', widthMm: inMils(75), source: QUARTER },
  { what: 'two-track, NAB, 82 mil', widthMm: inMils(82), source: QUARTER },
  { what: 'two-track, NAB', widthMm: millimetres(2.1), source: GUIDE },
  { what: 'two-track, 100 mil', widthMm: inMils(100), source: 'ARSC list, March 2004' },
  { what: 'two-track, IEC stereo', widthMm: millimetres(2.8), source: GUIDE },
  { what: 'full track, 234 mil', widthMm: inMils(234), source: `${QUARTER}, a paper of 1960` },
];

/** The blank band between two tracks of a quarter-inch tape. */
export const GUARD_BANDS: readonly TrackWidth[] = [
  { what: 'DIN stereo', widthMm: millimetres(0.75), source: GUARD },
  { what: 'NAB', widthMm: millimetres(2), source: GUARD },
];

/** Level of a track on a head that covers more than it, against a track that fills the head: 20·log(track / head); 0 on
 * a narrower head. Source: flux is proportional to the width that is covered. */
export const levelOnHead = (trackMm: Millimetres, headMm: Millimetres): Decibels =>
  decibels(20 * Math.log10(Math.min(1, trackMm / headMm)));

/** What a wider track gains over a narrower one, each on its own head: signals add by level, noises by power. */
export function gainOfWidth(wideMm: Millimetres, narrowMm: Millimetres) {
  const ratio = wideMm / narrowMm;
  const signalDb = decibels(20 * Math.log10(ratio));
  const noiseDb = decibels(10 * Math.log10(ratio));
  return { signalDb, noiseDb, signalToNoiseDb: decibels(signalDb - noiseDb) };
}

/** Signal to noise that a narrow track loses on a wide head, the guard band being clean: the signal falls with the track,
 * the head's own share of blank tape adds its noise. Source: a worked example posted on an engineers' list. */
export const signalToNoiseOnHead = (trackMm: Millimetres, headMm: Millimetres): Decibels =>
  decibels(trackMm >= headMm ? 0 : -gainOfWidth(headMm, trackMm).signalToNoiseDb);
