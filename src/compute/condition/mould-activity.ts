import { type Percent, percent } from '#model/units.ts';

/** Under which humidity mould sleeps. One expert, ten years apart; the lower is the safer. */
export interface MouldDormancy {
  readonly mostDormantUnderPercent: Percent;
  readonly someActiveDownToPercent: Percent;
  readonly source: string;
}

export const MOULD_DORMANCY: readonly MouldDormancy[] = [
  {
    mostDormantUnderPercent: percent(70),
    someActiveDownToPercent: percent(50),
    source: 'Abbey Newsletter 21-7 (1997), Moldy Audiotape',
  },
  {
    mostDormantUnderPercent: percent(50),
    someActiveDownToPercent: percent(40),
    source: 'ARSC list, 3 March 2007',
  },
];

/** How mould looks, and what that means. Source: Abbey Newsletter 21-7 (1997). */
export const MOULD_SIGNS = {
  smears: 'active: do not clean or play, isolate and dry first',
  dryAndDusty: 'probably dormant',
  protection: 'gloves and mask always; isolate; do not clean or decontaminate without experience',
  source: 'Abbey Newsletter 21-7 (1997), Moldy Audiotape',
} as const;
