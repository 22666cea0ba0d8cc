import type { Celsius, Percent } from '#model/units.ts';
import { type UsualStep, usualStep } from './usual-step.ts';

/** A reading with the time that it stands for. */
export interface Reading {
  readonly line: number;
  readonly timeMs: number;
  readonly temperatureC: Celsius;
  readonly humidityPercent: Percent;
}

export interface Weighing {
  readonly take: (reading: Reading) => void;
  readonly finish: () => void;
  readonly usualMs: () => number;
}

/** What happens to the readings, one by one, as soon as it is known how long each stands for. */
export interface WeighingNews {
  readonly weighed: (reading: Reading, standsForMs: number) => void;
  readonly repeated: (reading: Reading) => void;
  readonly backwards: (reading: Reading, earlier: Reading) => void;
  readonly gap: (before: Reading, after: Reading) => void;
}

/** Steps looked at before a log's usual step and its direction are settled. */
const HEAD = 49;

/** Gives each reading the time to the next one as its weight, and after a gap no more than the usual step.
 *
 * Readings must not count by number: a logger that wakes more often in the heat would count the heat twice. Memory
 * doesn't grow with the log. A log written newest first is read so; a reading that goes back in time against the rest
 * starts afresh from there (a clock set back, or summer time ending).
 */
export function weighReadings(news: WeighingNews): Weighing {
  let head: Reading[] = [];
  let step: UsualStep | undefined;
  let newestFirst = false;
  let last: Reading | undefined;
  /** Pairs over an overlong step, until a run of them shows whether that is the new usual step or each is a gap. */
  let held: { earlier: Reading; later: Reading; stepMs: number }[] = [];

  function settle() {
    const steps = head.slice(1).map((reading, index) => reading.timeMs - (head[index]?.timeMs ?? 0));
    newestFirst = steps.filter((ms) => ms < 0).length > steps.filter((ms) => ms > 0).length;
    step = usualStep(steps.map(Math.abs).filter((ms) => ms > 0));
    const readings = head;
    head = [];
    for (const reading of readings) follow(reading, step);
  }

  function follow(reading: Reading, usual: UsualStep) {
    const previous = last;
    if (previous === undefined) {
      last = reading;
      if (newestFirst) news.weighed(reading, usual.usualMs());
      return;
    }
    const stepMs = newestFirst ? previous.timeMs - reading.timeMs : reading.timeMs - previous.timeMs;
    if (stepMs === 0) return news.repeated(reading);
    last = reading;
    const earlier = newestFirst ? reading : previous;
    if (stepMs < 0) {
      news.backwards(reading, previous);
      news.weighed(earlier, usual.usualMs());
      return;
    }
    if (usual.judge(stepMs) === 'step') {
      release(usual, stepMs);
      return news.weighed(earlier, stepMs);
    }
    if (Math.abs(stepMs - (held[0]?.stepMs ?? stepMs)) > 0.1 * stepMs) release(usual, 0);
    held.push({ earlier, later: newestFirst ? previous : reading, stepMs });
  }

  /** What was held: ordinary steps when one like them has become usual, gaps otherwise. */
  function release(usual: UsualStep, acceptedMs: number) {
    for (const { earlier, later, stepMs } of held) {
      if (acceptedMs > 0 && Math.abs(stepMs - acceptedMs) <= 0.1 * acceptedMs) {
        news.weighed(earlier, stepMs);
      } else {
        news.gap(earlier, later);
        news.weighed(earlier, usual.usualMs());
      }
    }
    held = [];
  }

  return {
    take: (reading) => {
      if (step !== undefined) return follow(reading, step);
      head.push(reading);
      if (head.length >= HEAD) settle();
    },
    finish: () => {
      if (step === undefined) settle();
      if (step === undefined || last === undefined) return;
      release(step, 0);
      // A log of one reading stands for that reading, however long.
      if (!newestFirst) news.weighed(last, step.usualMs() || 1);
    },
    usualMs: () => step?.usualMs() ?? 0,
  };
}
