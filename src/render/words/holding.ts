import type { ReelSheet } from '#model/catalogue.ts';
import { STATUSES, type Status } from '#model/words.ts';
import { figures } from './number.ts';

const WORDS: Readonly<Record<Status, string>> = {
  held: 'held',
  lent: 'lent',
  elsewhere: 'known of and elsewhere',
  missing: 'known of but missing',
  gone: 'no longer here',
  destroyed: 'destroyed',
};

/** `20 reels in 9 sets: 11 held, 5 known of and elsewhere, 2 known of but missing.` */
export function holdingWords(sheets: readonly ReelSheet[], sets: number): string {
  const counts = STATUSES.map(
    (status) => [status, sheets.filter(({ reel }) => reel.status.value === status).length] as const,
  );
  const parts = counts.filter(([, many]) => many > 0).map(([status, many]) => `${many} ${WORDS[status]}`);
  return `${figures(sheets.length, 'reel')} in ${figures(sets, 'set')}: ${parts.join(', ')}.`;
}
