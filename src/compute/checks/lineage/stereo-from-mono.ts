import { valueOf } from '#model/fact.ts';
import type { TrackFormat } from '#model/words.ts';
import { between, crossCheck } from '../check.ts';

const MONO: readonly TrackFormat[] = ['full-track mono', 'half-track mono'];
const STEREO: readonly TrackFormat[] = ['two-track stereo', 'quarter-track stereo'];

/** A stereo copy of a mono tape. With one stereo parent, or one whose tracks aren't known, it may come from there. */
export const stereoFromMono = crossCheck({
  code: 'lineage/stereo-from-mono',
  title: 'A stereo copy of a mono tape',
  severity: 'warning',
  scope: 'reel',
  reads: ['reel', 'tracks', 'knownParents'],
  judge: ({ reel, tracks, knownParents }) => {
    if (!STEREO.includes(tracks.value)) return [];
    const mono = knownParents.flatMap(({ parent }) => {
      const format = parent.format.tracks;
      return format?.is === 'known' && MONO.includes(valueOf(format) ?? 'other') ? [{ parent, format }] : [];
    });
    const [first] = mono;
    if (first === undefined || mono.length < knownParents.length) return [];
    return [
      {
        ...between(
          {
            place: tracks.place,
            message: `${reel.title.written}: ${tracks.written}`,
            found: tracks.written,
            expected: first.format.written,
          },
          {
            place: first.format.place,
            message: `${first.parent.title.written}: ${first.format.written}`,
            found: first.format.written,
            expected: 'a stereo format, or another parent',
          },
        ),
        message: 'The copy is stereo, and the tape it was copied from is mono.',
        action:
          'Look at both legends again: two tracks of one mono signal are no stereo, and a stereo mix may exist beside the mono one. If it was made into stereo by a process, accept this with that as the reason.',
      },
    ];
  },
});
