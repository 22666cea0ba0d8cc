const STUCK_MS = 48 * 3_600_000;

export interface StuckSensor {
  readonly take: (line: number, value: number, standsForMs: number) => void;
  readonly finish: () => void;
}

/** Tells of a value that doesn't move for 48 hours of readings; gaps count for nothing. */
export function stuckSensor(tell: (line: number, hours: number, value: number) => void): StuckSensor {
  let value = Number.NaN;
  let sinceLine = 0;
  let lastedMs = 0;
  const finish = () => {
    if (lastedMs >= STUCK_MS) tell(sinceLine, Math.round(lastedMs / 3_600_000), value);
  };
  return {
    take: (line, next, standsForMs) => {
      if (next !== value) {
        finish();
        [value, sinceLine, lastedMs] = [next, line, 0];
      }
      lastedMs += standsForMs;
    },
    finish,
  };
}
