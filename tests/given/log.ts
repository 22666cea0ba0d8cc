import { summariseLog } from '#compute/climate/summarise-log.ts';
import { type LogForm, readClimateLog } from '#read/climate-log.ts';

/** Bytes as a file gives them: in pieces of a few bytes, so that lines and characters are cut anywhere. */
export async function* inPieces(bytes: Uint8Array, size = 7): AsyncGenerator<Uint8Array> {
  for (let at = 0; at < bytes.length; at += size) yield bytes.subarray(at, at + size);
}

/** What a log comes to, and every fault that it has. */
export async function readLog(log: string | Uint8Array, form: LogForm = {}, size?: number) {
  const bytes = typeof log === 'string' ? new TextEncoder().encode(log) : log;
  const readings: (readonly [line: number, time: string, temperatureC: number, humidityPercent: number])[] = [];
  const summary = summariseLog();
  const unread = await readClimateLog(inPieces(bytes, size), form, (line, timeMs, temperatureC, humidityPercent) => {
    const time = new Date(timeMs).toISOString().slice(0, 19);
    readings.push([line, time, Number(temperatureC.toFixed(9)), humidityPercent]);
    summary.take(line, timeMs, temperatureC, humidityPercent);
  });
  const sums = summary.finish();
  return { readings, sums, faults: [...unread, ...summary.faults()] };
}
