import type { Check } from './check.ts';
import { dateTrap } from './equalisation/date-trap.ts';
import { notAtSpeed } from './equalisation/not-at-speed.ts';
import { replayMismatch } from './equalisation/replay-mismatch.ts';
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
import { copyLogAmbiguous } from './speed/copy-log-ambiguous.ts';
import { halfSpeedCut } from './speed/half-speed-cut.ts';
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
  dateTrap,
  notAtSpeed,
  replayMismatch,
  undecoded,
  catalogueDiffers,
  cutGap,
  cutOrder,
  factDiffersFromReading,
  matrixDiffers,
  restsOnGuess,
  shared,
  sideLetter,
  sidesDiffer,
  copyLogAmbiguous,
  halfSpeedCut,
  contentsSum,
  editionSideLength,
  ...gapConflict,
  overReel,
  overSide,
  packLength,
  packLonger,
  twoDirections,
  widths,
];
