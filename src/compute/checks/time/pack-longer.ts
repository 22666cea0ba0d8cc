import { metresInWords, speedInWords } from '../../figure/in-words.ts';
import { packAgainstSpeeds } from '../../tape/pack-decides.ts';
import { lengthPlayed } from '../../tape/playing-time.ts';
import { crossCheck } from '../check.ts';

/** A pack longer than its stated length needs, by just what another standard speed would need. Never proof. */
export const packLonger = crossCheck({
  code: 'time/pack-longer',
  title: 'The pack would agree with a faster speed',
  severity: 'note',
  scope: 'reel',
  reads: ['duration', 'speed', 'leastRun', 'mayRunBothWays', 'pack'],
  judge: ({ duration, speed, leastRun, mayRunBothWays, pack }) => {
    if (mayRunBothWays) return [];
    const neededMm = lengthPlayed(leastRun.valueS, speed.value);
    const other = packAgainstSpeeds(pack.band, leastRun).find(
      (row) => row.withinBand && row.speed.speedMmPerS > speed.value * 1.5,
    );
    if (other === undefined || neededMm >= pack.band.lowMm) return [];
    const faster = speedInWords(other.speed.speedMmPerS);
    const overMm = pack.band.valueMm - neededMm;
    return [
      {
        place: speed.place,
        message: `The wound pack is longer than the stated length needs, by what ${faster} would account for.`,
        found: `${speed.written} for ${duration.written}, which needs ${metresInWords(neededMm)} of the pack’s ${metresInWords(pack.band.valueMm)}`,
        expected: `${faster}, which needs ${metresInWords(other.neededMm)}; or ${Math.round(overMm / 1000)} m of something else`,
        action:
          'Look at the box for the speed. It may be right as it stands: leader, tones, a blank tail or another programme would explain a longer pack too. If so, accept this and say which.',
        related: [{ message: `outside-diameter: ${pack.outside.written}`, place: pack.outside.place }],
      },
    ];
  },
});
