import { kindRule } from '../rule.ts';
import { SHED_SOURCES, shedInWords } from '../shed-marks.ts';

/** A binder that has taken up water comes off on the heads. The marks of the stocks that do are held against this one;
 * what its own entry says is told beside them. The one that warns is gone by, until a look at the tail end decides. */
export const stickyShed = kindRule({
  id: 'sticky-shed',
  title: 'Sticky or shedding binder',
  reads: ['shedMarks'],
  shownBy: ['sticky', 'shedding', 'squeal'],
  sources: SHED_SOURCES,
  cautions: ['playing', 'heat'],
  action:
    'Leave it unplayed and unwound. Have the tail end looked at, off the machine, by someone who knows the signs; whether it may be baked depends on its base.',
  judge: ({ shedMarks }) =>
    shedMarks.are === 'present'
      ? {
          outcome: 'at-risk',
          because: `${shedInWords(shedMarks)} Not tested is not clear.`,
        }
      : { outcome: 'clear', because: `It lacks a mark of the stocks that shed: ${shedMarks.because}.` },
});
