import { CAUTIONS } from '#model/cautions.ts';
import type { LocalTime } from '#model/dates.ts';
import { bakeWindow } from '../../condition/bake-window.ts';
import { crossCheck } from '../check.ts';

/** Played after a baked tape is said to play, by the earliest that the recorded time can be: a note past the shortest
 * practice, a warning past the longest. */
export const windowClosed = crossCheck({
  code: 'bake/window-closed',
  title: 'Played after the bake’s window closed',
  severity: 'note',
  scope: 'reel',
  reads: ['playedAfterBake'],
  judge: ({ playedAfterBake }) =>
    playedAfterBake.flatMap(({ bake, play, on }) => {
      const ended = bake.ended;
      if (ended === undefined) return [];
      const earliest = play.started?.value ?? (`${on.value.earliest}T00:00` as LocalTime);
      const closed = bakeWindow(ended.value, earliest).filter((window) => window.state === 'closed');
      const longest = closed.find((window) => window.practice === 'published');
      const told = longest ?? closed[0];
      if (told === undefined) return [];
      return [
        {
          place: on.place,
          severity: longest === undefined ? ('note' as const) : ('warning' as const),
          message: `The tape was played after the window of its bake had closed: ${told.says} (${told.source}).`,
          found: `${on.written}, after a bake that ended ${ended.written}`,
          expected: `by ${told.closesLatest.replace('T', ' ')}, or after another bake`,
          action: `${longest === undefined ? 'Check the time; sources allow up to two weeks, and this may be perfectly right.' : 'Write the bake that is missing between them, if there was one.'} Look at the heads and the tape for debris before it is played again. ${CAUTIONS.playing}`,
        },
      ];
    }),
});
