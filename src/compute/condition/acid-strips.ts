/** What a strip that changes colour in a closed box tells of acetate film. On tape they are used by analogy: common
 * practice, no source. How long to wait depends on temperature and humidity (the guide's table I). */
export interface AcidStripLevel {
  readonly level: number;
  readonly says: string;
  readonly action: string;
  readonly source: string;
}

const GUIDE = 'A-D Strips User’s Guide (2001), interpretation table for acetate';

export const ACID_STRIP_LEVELS: readonly AcidStripLevel[] = [
  { level: 0, says: 'good, no deterioration', action: 'cool or cold storage', source: GUIDE },
  {
    level: 1,
    says: 'fair to good, deterioration starting',
    action: 'cold storage, monitor closely',
    source: GUIDE,
  },
  {
    level: 1.5,
    says: 'rapid degradation starting, the autocatalytic point',
    action: 'cold storage or freeze',
    source: GUIDE,
  },
  { level: 2, says: 'poor, actively degrading', action: 'freeze, copying advisable', source: GUIDE },
  {
    level: 3,
    says: 'critical, shrinkage and warping imminent, possible handling hazard',
    action: 'freeze, copy',
    source: `${GUIDE}; the wording past "shrinkage" from memory`,
  },
];
