import type { Entries } from '#model/entries.ts';
import type { PackAnswer, PackVerdict } from '#model/pack-verdict.ts';
import type { Reel } from '#model/reel.ts';
import { givenOf } from '../figure/given-of.ts';
import { metresInWords, speedInWords } from '../figure/in-words.ts';
import { type PackBand, packAgainstSpeeds, type SpeedAgainstPack } from '../tape/pack-decides.ts';
import { leastRun, mayRunBothWays, packOfReel, workedPack } from '../tape/pack-of-reel.ts';
import { sameSpeed } from '../tape/speeds.ts';
import { workedLengthPlayed } from '../tape/worked-tape.ts';
import { stockOf } from './reel.ts';

/** Which standard speeds a reel's measured pack allows for its stated length; undefined while one of them isn't
 * recorded, or where the tape may run both ways and the stated length says nothing of one pass. */
export function packVerdict(reel: Reel, entries: Pick<Entries, 'stocks'>): PackVerdict | undefined {
  const pack = packOfReel(reel, stockOf(reel, entries.stocks));
  const { durationS, format } = reel;
  if (pack === undefined || durationS?.is !== 'known' || mayRunBothWays(reel)) return undefined;
  const stated = format.speed?.is === 'known' ? format.speed.value : undefined;
  const rows = packAgainstSpeeds(pack.band, leastRun(reel, durationS));
  const answers = rows.map((row): PackAnswer => {
    const { speedMmPerS } = row.speed;
    const speed = { name: 'speed', value: speedMmPerS, written: speedInWords(speedMmPerS), basis: 'assumed' } as const;
    return {
      speed: speedMmPerS,
      stated: stated !== undefined && sameSpeed(stated, speedMmPerS),
      needs: workedLengthPlayed(givenOf('length', durationS), speed),
      answer: row.answer,
      leftOver: row.leftOver,
      says: inWords(row, pack.band),
    };
  });
  return { pack: workedPack(pack), answers, sure: howSure(rows, pack.band) };
}

function inWords({ speed, neededMm, answer, leftOver }: SpeedAgainstPack, band: PackBand): string {
  const needs = `${speedInWords(speed.speedMmPerS)} needs ${metresInWords(neededMm)}`;
  switch (answer) {
    case 'too-short':
      return `${needs}: more than the pack can be, ${metresInWords(band.highMm)} at most.`;
    case 'agrees':
      return `${needs}: it agrees with the pack.`;
    case 'unexplained':
      return `${needs}: it fits, and leaves ${Math.round(leftOver * 100)} % of the pack unexplained. Leader, tones, a blank tail or another programme may fill it.`;
  }
}

/** Between neighbouring speeds lies a factor of 2: a band much narrower than that can tell them apart. */
function howSure(rows: readonly SpeedAgainstPack[], { lowMm, valueMm, highMm }: PackBand): string {
  const percent = Math.max(1, Math.round(((highMm - lowMm) / 2 / valueMm) * 100));
  const band = `The pack is known to ${percent} %, and the speeds lie a factor of 2 apart`;
  const agreeing = rows.filter((row) => row.answer === 'agrees');
  const [only] = agreeing;
  if (agreeing.length !== 1 || only === undefined) return `${band}; no single speed agrees, so it decides nothing.`;
  return `${band}: of them only ${speedInWords(only.speed.speedMmPerS)} agrees. A slower one would fit with tape to spare and isn’t ruled out; a faster one is.`;
}
