import { capital } from './number.ts';

/** What the keys of an entry are called on a sheet. */
const NAMES: Readonly<Record<string, string>> = {
  'numbers.catalogue': 'Catalogue',
  'numbers.matrix': 'Matrix',
  'numbers.job': 'Job',
  'numbers.other': 'Other number',
  'format.noise-reduction': 'Noise reduction',
  'copied-from': 'Copied from',
  'run-out-sound': 'Run-out',
  'copy-log': 'Copy log',
  'recorded.on': 'Recorded on',
  'recorded.by': 'Recorded by',
  'recorded.at': 'Recorded at',
  client: 'Made for',
  edition: 'Edition',
};

/** `format.speed` → Speed; `cuts[1].on` → Cut 2, on. */
export function keyWords(key: string): string {
  const named = NAMES[key.replace(/\[\d+\]$/, '')];
  if (named !== undefined) return named;
  const row = /^([a-z-]+)\[(\d+)\](?:\.([a-z-]+))?$/.exec(key);
  if (row !== null)
    return [`${rowName(row[1] ?? '')} ${Number(row[2]) + 1}`, row[3]?.replaceAll('-', ' ')].filter(Boolean).join(', ');
  return capital((key.split('.').at(-1) ?? key).replaceAll('-', ' '));
}

const rowName = (list: string) => NAMES[list] ?? capital(list.replaceAll('-', ' ').replace(/s$/, ''));
