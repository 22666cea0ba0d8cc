import type { Fact } from '#model/fact.ts';
import type { Place } from '#model/place.ts';
import type { MachineVerdict, PlayingReason } from '#model/playing.ts';
import type { Reel } from '#model/reel.ts';
import { listInWords } from '../../figure/in-words.ts';
import { crossCheck } from '../check.ts';

/** No machine of the collection plays it: what one must have. While one of them isn't known well enough to say no,
 * nothing is said. */
export const nothingPlaysIt = crossCheck({
  code: 'playing/nothing-plays-it',
  title: 'No machine plays it',
  severity: 'warning',
  scope: 'reel',
  reads: ['reel', 'playing', 'machinesById', 'isHere'],
  judge: ({ reel, playing, machinesById }) => {
    const { verdicts, needs } = playing;
    if (verdicts.length === 0 || verdicts.some(({ verdict }) => verdict !== 'cannot')) return [];
    const titleOf = (id: string) => machinesById.get(id)?.title.written ?? id;
    const why = verdicts.map(({ machine, reasons }) => {
      const against = reasons.filter((reason) => reason.verdict === 'cannot').map((reason) => reason.of);
      return `${titleOf(machine)}: ${listInWords(against)}`;
    });
    const known = needs.filter((need) => need.known && need.needs !== 'none').map((need) => `${need.of} ${need.needs}`);
    const unknown = needs.filter((need) => !need.known).map((need) => need.of);
    const mended = verdicts
      .filter(({ reasons }) => reasons.every(({ of, verdict }) => of === 'state' || verdict !== 'cannot'))
      .map(({ machine }) => titleOf(machine));
    const exact = verdicts.flatMap(({ machine, otherSpeeds }) =>
      otherSpeeds
        .filter((one) => one.exact)
        .map((one) => `${titleOf(machine)} at ${one.ratio === 0.5 ? 'half' : 'double'} speed on ${one.curve}`),
    );
    return [
      {
        place: placeOf(reel, verdicts),
        message: `No machine recorded here plays it (${why.join('; ')}).`,
        found: known.length === 0 ? 'nothing recorded of its format' : known.join(', '),
        expected: `a machine with ${known.length === 0 ? 'all that its format turns out to need' : known.join(', ')}`,
        action: [
          ...(mended.length === 0
            ? []
            : [`Have ${listInWords(mended, 'or')} seen to by someone licensed: it would do once it works.`]),
          'Ask for a machine that has all of it; don’t have the tape cut or wound to suit one.',
          ...(unknown.length === 0 ? [] : [`Find out first what isn’t recorded: ${listInWords(unknown)}.`]),
          ...(exact.length === 0
            ? []
            : [
                `By curve it could be played at another speed and put right in the file: ${listInWords(exact, 'or')}; the other respects stand.`,
              ]),
        ].join(' '),
      },
    ];
  },
});

/** The fact that no machine fits, where there is one; else the format as a whole. */
function placeOf(reel: Reel, verdicts: readonly MachineVerdict[]): Place {
  const { format, pack } = reel;
  const facts: Partial<Record<PlayingReason['of'], Fact<unknown> | undefined>> = {
    width: format.width,
    tracks: format.tracks,
    speed: format.speed,
    equalisation: format.equalisation,
    carrier: pack.woundOn,
    size: pack.reelSize ?? pack.outsideDiameter,
  };
  const refused = (of: PlayingReason['of']) =>
    verdicts.every(({ reasons }) => reasons.some((reason) => reason.of === of && reason.verdict === 'cannot'));
  const decisive = (Object.keys(facts) as PlayingReason['of'][]).find(refused);
  return (decisive && facts[decisive]?.place) ?? reel.keys.get('format') ?? reel.place;
}
