/** The floor: the same file through a bare streaming CSV reader, its rows counted and nothing else done.
 * `node csv-stream.ts LOG` prints `{"seconds","readings"}`. */
import { createReadStream } from 'node:fs';
import { parse } from 'csv-parse';

const start = performance.now();
let rows = -1;
const reader = createReadStream(process.argv[2] ?? '').pipe(parse());
reader.on('data', () => {
  rows += 1;
});
await new Promise((resolve, reject) => reader.on('end', resolve).on('error', reject));
process.stdout.write(
  JSON.stringify({
    seconds: (performance.now() - start) / 1000,
    readings: rows,
    peak_MiB: process.resourceUsage().maxRSS / 1024,
  }),
);
