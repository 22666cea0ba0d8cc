import type { Known } from '#model/fact.ts';
import type { Measure, Micrometres } from '#model/units.ts';
import { THICKNESS_NAMES } from '../../tape/thickness-names.ts';
import { crossCheck, type Doubt } from '../check.ts';

const NOMINAL = /^(\d+(?:\.\d+)?)\s*mils?$/i;

/** A total thickness in mil that tapes are called by for their base film alone: with its coat such a tape is a third
 * thicker, and its pack that much shorter. One that was measured says so with an error. */
export const thicknessName = crossCheck({
  code: 'stock/thickness-name',
  title: 'A thickness that may be the base film’s alone',
  severity: 'note',
  scope: 'collection',
  reads: ['entries'],
  judge: ({ entries }) =>
    entries.stocks.flatMap((stock) => (stock.thickness?.is === 'known' ? doubtAbout(stock.thickness) : [])),
});

function doubtAbout(thickness: Known<Measure<Micrometres>>): readonly Doubt[] {
  const mil = Number(NOMINAL.exec(thickness.written.trim())?.[1]);
  const named = THICKNESS_NAMES.find(({ baseMil }) => baseMil === mil);
  if (named === undefined) return [];
  const [least, most] = named.totalUm;
  const total = least === most ? `${least} µm` : `${least} to ${most} µm`;
  return [
    {
      place: thickness.place,
      message: `${thickness.written} is what ${named.name} tape is called for its base film, and stands here as the total.`,
      found: thickness.written,
      expected: `${total}, if that is the base; ${thickness.written} with its error (± 0.05 mil), if the whole tape was measured`,
      action: `Measure it, or write ${most} µm if the box says no more: ${named.source}. If the whole tape is so thin, this is right as it stands.`,
    },
  ];
}
