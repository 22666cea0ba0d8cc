import type { LogFault, LogFaultCode } from '#model/climate.ts';

export interface FaultCounter {
  readonly note: (code: LogFaultCode, line: number, found: string | (() => string)) => void;
  readonly faults: () => readonly LogFault[];
}

interface Words {
  readonly message: string;
  readonly expected: string;
  readonly action: string;
}

/** What each kind of damage means, and what to do. The figures are told by `found`. */
const WORDS: Record<Exclude<LogFaultCode, 'climate/columns' | 'climate/empty' | 'climate/row-unread'>, Words> = {
  'climate/time-repeated': {
    message: 'Two readings have the same time.',
    expected: 'one reading a time',
    action: 'Look whether the log was copied together from overlapping files. The second of the two is left out.',
  },
  'climate/time-backwards': {
    message: 'The time goes backwards.',
    expected: 'each reading later than the one before it',
    action:
      'Look for the end of summer time (an hour comes twice), a clock that was set, or files joined in the wrong order. The readings are kept.',
  },
  'climate/gap': {
    message: 'Readings are missing for a while.',
    expected: 'no step over three usual ones',
    action:
      'Look for a flat battery, a full memory or the start of summer time. What the air did in the gap is not known, and counts for nothing.',
  },
  'climate/stuck': {
    message: 'A sensor gave the same value for two days and more.',
    expected: 'some change within 48 hours',
    action: 'Breathe on the sensor and see whether it moves. A steady room and a coarse logger can do this too.',
  },
  'climate/impossible': {
    message: 'A reading can’t be the air of a room.',
    expected: '-40 to 80 °C and 0 to 100 %',
    action: 'Look at the unit of the column, or at the sensor. Such readings are left out.',
  },
};

/** Counts each kind of damage, and keeps where it was met first. */
export function faultCounter(): FaultCounter {
  const seen = new Map<LogFaultCode, { line: number; count: number; found: string }>();
  return {
    note: (code, line, found) => {
      const known = seen.get(code);
      if (known !== undefined) known.count += 1;
      else seen.set(code, { line, count: 1, found: typeof found === 'string' ? found : found() });
    },
    faults: () =>
      [...seen].map(([code, { line, count, found }]) => {
        const words = WORDS[code as keyof typeof WORDS];
        const often = count === 1 ? 'once' : `${count} times`;
        return { code, line, count, ...words, found: `${found}, first in line ${line}; ${often} in all` };
      }),
  };
}
