import { itemsOf } from '#model/fact.ts';
import { listInWords } from '../../figure/in-words.ts';
import { crossCheck } from '../check.ts';

/** Noise reduction on the tape, and none of that name on any machine that plays it. */
export const undecoded = crossCheck({
  code: 'noise/undecoded',
  title: 'No machine that plays it decodes its noise reduction',
  severity: 'warning',
  scope: 'reel',
  reads: ['noiseReduction', 'playersByNoiseReduction'],
  judge: ({ noiseReduction, playersByNoiseReduction }) => {
    if (playersByNoiseReduction.some(({ reason }) => reason.verdict !== 'plays with care')) return [];
    const has = [...new Set(playersByNoiseReduction.flatMap(({ reason }) => reason.has))];
    return [
      {
        place: noiseReduction.place,
        message: 'The tape was made with noise reduction that no machine which plays it decodes.',
        found: `noise-reduction: ${noiseReduction.written}; on the machines: ${has.length === 0 ? 'none' : listInWords(has)}`,
        expected: `a decoder for ${noiseReduction.written}`,
        action:
          'Borrow the decoder, or capture the tape undecoded with its level tones and have the file decoded; write into the settings which it was. Look at the legend as well: the name may stand for another system.',
        related: playersByNoiseReduction.map(({ entry }) => ({
          message: `${entry.title.written}: ${listInWords(itemsOf(entry.noiseReduction).map((one) => one.written)) || 'none'}`,
          place: entry.keys.get('noise-reduction') ?? entry.place,
        })),
      },
    ];
  },
});
