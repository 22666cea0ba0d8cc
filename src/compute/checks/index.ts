import { count } from './bake/count.ts';
import { hotter } from './bake/hotter.ts';
import { longer } from './bake/longer.ts';
import { never } from './bake/never.ts';
import { windowClosed } from './bake/window-closed.ts';
import type { Check } from './check.ts';
import { outside } from './climate/outside.ts';
import { acetateDecay } from './condition/acetate-decay.ts';
import { edgeDamage } from './condition/edge-damage.ts';
import { mould } from './condition/mould.ts';
import { packSupport } from './condition/pack-support.ts';
import { printThrough } from './condition/print-through.ts';
import { splices } from './condition/splices.ts';
import { stickyShed } from './condition/sticky-shed.ts';
import { storage } from './condition/storage.ts';
import { wind } from './condition/wind.ts';
import { beforeItExisted } from './custody/before-it-existed.ts';
import { gap } from './custody/gap.ts';
import { overlap } from './custody/overlap.ts';
import { dateTrap } from './equalisation/date-trap.ts';
import { notAtSpeed } from './equalisation/not-at-speed.ts';
import { replayMismatch } from './equalisation/replay-mismatch.ts';
import { afterParentDestroyed } from './lineage/after-parent-destroyed.ts';
import { copyBeforeParent } from './lineage/copy-before-parent.ts';
import { cutBeforeTape } from './lineage/cut-before-tape.ts';
import { cycle } from './lineage/cycle.ts';
import { editionBeforeCut } from './lineage/edition-before-cut.ts';
import { generationDiffers } from './lineage/generation-differs.ts';
import { logLacksCopy } from './lineage/log-lacks-copy.ts';
import { logMatch } from './lineage/log-match.ts';
import { sideDiffers } from './lineage/side-differs.ts';
import { stereoFromMono } from './lineage/stereo-from-mono.ts';
import { undecoded } from './noise/undecoded.ts';
import { catalogueDiffers } from './number/catalogue-differs.ts';
import { cutGap } from './number/cut-gap.ts';
import { cutOrder } from './number/cut-order.ts';
import { factDiffersFromReading } from './number/fact-differs-from-reading.ts';
import { matrixDiffers } from './number/matrix-differs.ts';
import { restsOnGuess } from './number/rests-on-guess.ts';
import { shared } from './number/shared.ts';
import { sideLetter } from './number/side-letter.ts';
import { sidesDiffer } from './number/sides-differ.ts';
import { initialsUnknown } from './people/initials-unknown.ts';
import { notActive } from './people/not-active.ts';
import { nothingPlaysIt } from './playing/nothing-plays-it.ts';
import { sideMissing } from './set/side-missing.ts';
import { ended } from './share/ended.ts';
import { nothing } from './share/nothing.ts';
import { showsPrivate } from './share/shows-private.ts';
import { unknownFact } from './share/unknown-fact.ts';
import { copyLogAmbiguous } from './speed/copy-log-ambiguous.ts';
import { halfSpeedCut } from './speed/half-speed-cut.ts';
import { bareHub } from './stock/bare-hub.ts';
import { notMadeThen } from './stock/not-made-then.ts';
import { thicknessName } from './stock/thickness-name.ts';
import { contentsSum } from './time/contents-sum.ts';
import { editionSideLength } from './time/edition-side-length.ts';
import { gapConflict } from './time/gap-conflict.ts';
import { overReel } from './time/over-reel.ts';
import { overSide } from './time/over-side.ts';
import { packLength } from './time/pack-length.ts';
import { packLonger } from './time/pack-longer.ts';
import { twoDirections } from './tracks/two-directions.ts';
import { widths } from './tracks/widths.ts';

/** Every cross-check, one a line, sorted by code. */
export const CHECKS: readonly Check[] = [
  count,
  hotter,
  longer,
  never,
  windowClosed,
  outside,
  acetateDecay,
  edgeDamage,
  mould,
  packSupport,
  printThrough,
  splices,
  stickyShed,
  storage,
  wind,
  beforeItExisted,
  gap,
  overlap,
  dateTrap,
  notAtSpeed,
  replayMismatch,
  afterParentDestroyed,
  copyBeforeParent,
  cutBeforeTape,
  cycle,
  editionBeforeCut,
  ...generationDiffers,
  logLacksCopy,
  logMatch,
  sideDiffers,
  stereoFromMono,
  undecoded,
  catalogueDiffers,
  ...cutGap,
  cutOrder,
  factDiffersFromReading,
  matrixDiffers,
  restsOnGuess,
  shared,
  sideLetter,
  sidesDiffer,
  initialsUnknown,
  notActive,
  nothingPlaysIt,
  sideMissing,
  ended,
  nothing,
  showsPrivate,
  unknownFact,
  copyLogAmbiguous,
  halfSpeedCut,
  bareHub,
  notMadeThen,
  thicknessName,
  contentsSum,
  editionSideLength,
  ...gapConflict,
  ...overReel,
  overSide,
  ...packLength,
  packLonger,
  twoDirections,
  widths,
];
