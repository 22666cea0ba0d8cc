import { itemsOf, valueOf } from '#model/fact.ts';
import type { Reel } from '#model/reel.ts';
import { dateWords } from '../words/date.ts';
import { capital } from '../words/number.ts';
import type { Lookup } from './lookup.ts';
import { personName } from './person-link.ts';

/** One line under the title: whose music, what kind of tape, made for whom, when. */
export function reelSubtitle(reel: Reel, lookup: Lookup): string {
  const artist = itemsOf(reel.editions)
    .map((id) => valueOf(lookup.edition(id.value)?.artist))
    .find((name) => name !== undefined);
  const kind = valueOf(reel.kind);
  const client = valueOf(reel.client);
  const on = valueOf(reel.recorded)?.on;
  const made = [kind ?? 'a tape of a kind not recorded', client && `made for ${personName(client, lookup)}`]
    .filter(Boolean)
    .join(' ');
  return [artist, [capital(made), on && dateWords(on.value)].filter(Boolean).join(', ')]
    .filter(Boolean)
    .join('. ')
    .concat('.');
}
