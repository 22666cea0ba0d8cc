import { CAUTIONS } from '#model/cautions.ts';
import { USUAL_BAKES } from '../../condition/bake-practices.ts';
import { crossCheck } from '../check.ts';

/** More bakes than common practice allows. More have been reported, and that is said. */
export const count = crossCheck({
  code: 'bake/count',
  title: 'More bakes than is usual',
  severity: 'note',
  scope: 'reel',
  reads: ['bakes'],
  judge: ({ bakes }) => {
    const over = bakes[USUAL_BAKES];
    if (over === undefined) return [];
    return [
      {
        place: over.place,
        message: `This is bake ${USUAL_BAKES + 1} of ${bakes.length}; about ${USUAL_BAKES} is common practice, no source.`,
        found: `${bakes.length} bakes`,
        expected: `about ${USUAL_BAKES} in a tape’s life (common practice, no source); 20 and more have been reported, with no documented limit (UNESCO RAMP study r9704e)`,
        action: `Make the copy at this one, if there is none yet, and ask an experienced transfer engineer before the next. ${CAUTIONS.heat}`,
      },
    ];
  },
});
