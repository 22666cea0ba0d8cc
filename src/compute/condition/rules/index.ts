import type { ConditionRule } from '../rule.ts';
import { acetateDecay } from './acetate-decay.ts';
import { edgeDamage } from './edge-damage.ts';
import { mould } from './mould.ts';
import { packSupport } from './pack-support.ts';
import { printThrough } from './print-through.ts';
import { splices } from './splices.ts';
import { stickyShed } from './sticky-shed.ts';
import { storage } from './storage.ts';
import { wind } from './wind.ts';

/** Every condition rule, one a line, what endangers the tape most first. */
export const CONDITION_RULES: readonly ConditionRule[] = [
  stickyShed,
  acetateDecay,
  mould,
  splices,
  printThrough,
  wind,
  edgeDamage,
  packSupport,
  storage,
];
