/** The step from one reading to the next, as a log is usually kept. */
export interface UsualStep {
  /** What a step of this length is. `hold`: not yet known; the next steps will tell. */
  readonly judge: (stepMs: number) => 'step' | 'hold';
  readonly usualMs: () => number;
}

/** Steps after which a run of one length is no accident but a logger set to another interval. */
const RUN = 24;
/** A step over this many usual ones is a gap, in which nobody knows what the air did. */
const USUAL_STEPS_IN_A_GAP = 3;

/** Follows what is usual: it starts from the median of a log's first steps, and changes when 24 in a row agree on
 * another length (a logger set from 10 minutes to an hour makes no thousand gaps). Common practice, no source. */
export function usualStep(firstStepsMs: readonly number[]): UsualStep {
  let usualMs = median(firstStepsMs);
  let runMs = 0;
  let runLength = 0;
  const judge = (stepMs: number) => {
    if (Math.abs(stepMs - runMs) <= 0.1 * runMs) {
      runLength += 1;
      if (runLength >= RUN) usualMs = runMs;
    } else {
      runMs = stepMs;
      runLength = 1;
    }
    return stepMs <= USUAL_STEPS_IN_A_GAP * usualMs ? 'step' : 'hold';
  };
  return { judge, usualMs: () => usualMs };
}

/** The middle one of an odd count, the shorter of the two middle ones of an even count; 0 of none. */
function median(stepsMs: readonly number[]): number {
  const sorted = [...stepsMs].sort((a, b) => a - b);
  return sorted[Math.floor((sorted.length - 1) / 2)] ?? 0;
}
