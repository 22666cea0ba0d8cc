import { itemsOf } from '#model/fact.ts';
import { listInWords } from '../../figure/in-words.ts';
import { headFit } from '../../playback/head-fit.ts';
import { crossCheck } from '../check.ts';
import type { Candidate } from '../replay-facts.ts';

/** A track format that no machine has the head for: what is lost or picked up with the best of those there are. */
export const widths = crossCheck({
  code: 'tracks/widths',
  title: 'No machine has a head for its tracks',
  severity: 'note',
  scope: 'reel',
  reads: ['tracks', 'runs', 'playersByTracks'],
  judge: ({ tracks, runs, playersByTracks }) => {
    const verdicts = playersByTracks.map(({ reason }) => reason.verdict);
    if (verdicts.includes('plays') || verdicts.includes('not recorded')) return [];
    const fits = playersByTracks.flatMap((player) =>
      itemsOf(player.entry.tracks).flatMap((head) => {
        const fit = headFit(tracks.value, runs === 'not recorded' ? undefined : runs, head.value);
        return fit === undefined ? [] : [{ player, fit }];
      }),
    );
    const best =
      fits.find(({ fit }) => fit.verdict === 'plays with care') ?? fits.find(({ fit }) => fit.direction === undefined);
    if (best === undefined) return [];
    const { fit } = best;
    return [
      {
        place: tracks.place,
        message: `A ${fit.head} head is the best there is for this ${fit.recorded} tape.`,
        found: `${tracks.written} on ${article(fit.head)} head: ${fit.says}`,
        expected: `a head for ${tracks.value}`,
        action:
          fit.verdict === 'cannot'
            ? 'Find a machine with that head before the tape is played for a copy that is to last.'
            : 'Play it so for listening, and note the head in the settings. For a copy that is to last, look for a machine with the right head.',
        related: playersByTracks.map(related),
      },
    ];
  },
});

const article = (head: string) => `a ${head}`;

const related = ({ entry }: Candidate) => ({
  message: `${entry.title.written}: ${listInWords(itemsOf(entry.tracks).map((head) => head.written))}`,
  place: entry.keys.get('tracks') ?? entry.place,
});
