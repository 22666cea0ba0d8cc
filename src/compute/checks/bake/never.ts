import { crossCheck } from '../check.ts';

/** A bake, planned or done, of a tape that must not be heated. An unknown base is one of them. */
export const never = crossCheck({
  code: 'bake/never',
  title: 'A bake of a tape that must not be heated',
  severity: 'warning',
  scope: 'reel',
  reads: ['bakes', 'bakePermission'],
  judge: ({ bakes, bakePermission }) => {
    if (bakePermission.answer !== 'never') return [];
    return bakes.map((bake) => ({
      place: bake.what.place,
      message: `A bake is ${bake.planned?.value === true ? 'planned' : 'recorded'} for a tape that must not be heated. ${bakePermission.because}`,
      found: bake.on === undefined ? bake.what.written : `${bake.what.written}, ${bake.on.written}`,
      expected: 'no bake, or a stock whose base is recorded as polyester',
      action: `${bakePermission.action} ${bakePermission.cautions.join(' ')} Source: ${bakePermission.sources.join('; ')}.`,
    }));
  },
});
