import { describe, expect, test } from 'vitest';
import { measurePicture } from '#publish/images.ts';
import { readClimateLog } from '#read/climate-log.ts';
import { cameraPhotograph } from '../publish/made-photograph.ts';
import { mutations } from './mutations.ts';

/** A longer run: TAILOUT_MUTATIONS=100000 npx vitest run --config tests/vitest.config.ts tests/hostile */
const LOGS = Number(process.env['TAILOUT_MUTATIONS'] ?? 3000);
const PICTURES = Math.ceil(LOGS / 5);

const ROWS = Array.from(
  { length: 12 },
  (_, hour) => `2024-01-0${1 + (hour % 9)} ${10 + hour}:00:00,20.${hour},4${hour % 10}`,
);
const FORMS = [
  `time,temperature_C,humidity_percent\n${ROWS.join('\n')}\n`,
  `"Serial";"K-11"\nDate/Time;Temp (°C);RH (%)\r\n${ROWS.map((row) => row.replaceAll(',', ';')).join('\r\n')}\r\n`,
];

async function* inPieces(bytes: Uint8Array): AsyncGenerator<Uint8Array> {
  for (let at = 0; at < bytes.length; at += 100) yield bytes.subarray(at, at + 100);
}

describe('whatever a file beside the entries holds', () => {
  test.each(FORMS)('a changed log is read or told of, with a line that it has', { timeout: 240_000 }, async (form) => {
    for (const bytes of mutations(Buffer.from(form), 7, LOGS / FORMS.length)) {
      const lines = Buffer.from(bytes)
        .toString('latin1')
        .split(/\r\n|\r|\n/).length;
      let readings = 0;
      const faults = await readClimateLog(inPieces(bytes), {}, (line, timeMs, temperature, humidity) => {
        readings += 1;
        expect(line).toBeLessThanOrEqual(lines);
        expect([timeMs, temperature, humidity].every(Number.isFinite)).toBe(true);
      });
      for (const fault of faults) expect(fault.line).toBeLessThanOrEqual(lines + 1);
      expect(readings > 0 || faults.length > 0, JSON.stringify(Buffer.from(bytes).toString('latin1'))).toBe(true);
    }
  });

  test('a changed photograph has a size, or a fault with words', { timeout: 240_000 }, async () => {
    const sound = await cameraPhotograph(64, 48);
    for (const bytes of mutations(sound, 11, PICTURES)) {
      const found = await measurePicture(bytes);
      if ('widthPx' in found) expect(found.widthPx * found.heightPx).toBeGreaterThan(0);
      else expect(Object.values(found).every((words) => String(words).length > 0)).toBe(true);
    }
  });
});
