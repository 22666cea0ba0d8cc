import { itemsOf } from '#model/fact.ts';
import type { TrackFormat } from '#model/words.ts';
import { listInWords } from '../../figure/in-words.ts';
import { headFit } from '../../playback/head-fit.ts';
import { crossCheck } from '../check.ts';
import type { Candidate } from '../replay-facts.ts';

/** A tape recorded in both directions, where every machine that could play it has a head that covers both. */
export const twoDirections = crossCheck({
  code: 'tracks/two-directions',
  title: 'The head would play both directions at once',
  severity: 'warning',
  scope: 'reel',
  reads: ['tracks', 'direction', 'playersByTracks'],
  judge: ({ tracks, direction, playersByTracks }) => {
    if (direction.value !== 'both' || playersByTracks.some(({ reason }) => reason.verdict !== 'cannot')) return [];
    const covering = playersByTracks.filter((player) => coversBoth(tracks.value, player));
    if (covering.length === 0) return [];
    const heads = [...new Set(covering.flatMap(({ entry }) => itemsOf(entry.tracks).map((head) => head.written)))];
    return [
      {
        place: direction.place,
        message: 'The tape is recorded in both directions, and the head that would play it covers both at once.',
        found: `${tracks.written}, direction: ${direction.written}; heads: ${listInWords(heads)}`,
        expected: `a head for ${tracks.value}`,
        action:
          'Find a machine with that head: both directions would sound together, one of them backwards. Before that, look at the legend: a tape with one side only was recorded in one direction.',
        related: covering.map(({ entry }) => ({
          message: `${entry.title.written}: ${listInWords(itemsOf(entry.tracks).map((head) => head.written))}`,
          place: entry.keys.get('tracks') ?? entry.place,
        })),
      },
    ];
  },
});

function coversBoth(tracks: TrackFormat, { entry }: Candidate): boolean {
  return itemsOf(entry.tracks).some((head) => {
    const fit = headFit(tracks, 'both', head.value);
    return fit?.direction === 'both' && fit.verdict === 'cannot';
  });
}
