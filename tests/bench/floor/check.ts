/** The floor of a check: every entry read and parsed, and nothing asked of it.
 *
 *     node tests/bench/floor/check.ts COLLECTION */
import { readFileSync } from 'node:fs';
import { entryFiles, parsed } from './parse.ts';

let fields = 0;
for (const file of entryFiles(process.argv[2] ?? 'collection')) {
  fields += Object.keys(parsed(readFileSync(file, 'utf8')).data as object).length;
}
process.stdout.write(`${fields} top-level fields\n`);
