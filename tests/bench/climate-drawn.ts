/** Our side: a log streamed, reduced and drawn. `node climate-drawn.ts LOG` prints `{"seconds","readings","chart_bytes"}`. */
import { createReadStream } from 'node:fs';
import { summariseLog } from '#compute/climate/summarise-log.ts';
import { readClimateLog } from '#read/climate-log.ts';
import { drawClimate } from '#render/drawings/climate.ts';

const start = performance.now();
const summary = summariseLog();
const unread = await readClimateLog(createReadStream(process.argv[2] ?? ''), {}, summary.take);
const sums = summary.finish();
if (sums === undefined) throw new Error('the log has no reading');
const chart = drawClimate({ ...sums, faults: [...unread, ...summary.faults()] });
const told = {
  seconds: (performance.now() - start) / 1000,
  readings: sums.readings,
  chart_bytes: Buffer.byteLength(chart.map(({ drawing }) => String(drawing)).join('')),
  peak_MiB: process.resourceUsage().maxRSS / 1024,
};
process.stdout.write(JSON.stringify(told));
