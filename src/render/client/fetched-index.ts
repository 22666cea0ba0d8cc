import type { NumberIndexFile } from '#compute/identifiers/number-index.ts';
import { type OpenIndex, openNumberIndex } from '#compute/identifiers/open-index.ts';
import { siteAddress } from './site-root.ts';

let fetched: Promise<OpenIndex> | undefined;

/** The number index of the site, fetched once a page and kept; asked for again when it could not be had. */
export function numberIndex(): Promise<OpenIndex> {
  fetched ??= fetchIndex().catch((error: unknown) => {
    fetched = undefined;
    throw error;
  });
  return fetched;
}

async function fetchIndex(): Promise<OpenIndex> {
  const reply = await fetch(siteAddress('numbers.json'));
  if (!reply.ok) throw new Error(`numbers.json: ${reply.status}`);
  const file: NumberIndexFile = await reply.json();
  return openNumberIndex(file);
}
