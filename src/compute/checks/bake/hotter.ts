import { CAUTIONS } from '#model/cautions.ts';
import { HOTTEST_C } from '../../condition/bake-practices.ts';
import { crossCheck } from '../check.ts';

/** Hotter than anybody's practice. */
export const hotter = crossCheck({
  code: 'bake/hotter',
  title: 'A bake hotter than every practice',
  severity: 'warning',
  scope: 'reel',
  reads: ['bakes'],
  judge: ({ bakes }) =>
    bakes.flatMap(({ temperatureC, planned }) => {
      if (temperatureC === undefined || temperatureC.value <= HOTTEST_C) return [];
      return [
        {
          place: temperatureC.place,
          message: `The bake ${planned?.value === true ? 'is planned to be' : 'was'} hotter than the hottest practice listed, ${HOTTEST_C} °C.`,
          found: temperatureC.written,
          expected: `45 to ${HOTTEST_C} °C; practices differ, and the cooler are the published ones`,
          action: `Check the figure: °F written as °C is the likeliest cause. If it was so hot, look at the tape before anything else, and let nobody play it who hasn’t been told. ${CAUTIONS.heat}`,
        },
      ];
    }),
});
