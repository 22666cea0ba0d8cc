import type { Answer, Hit } from '#compute/identifiers/number-search.ts';

const count = (many: number, one: string) => `${many} ${one}${many === 1 ? '' : 's'}`;

const WHY: readonly (readonly [Hit['how'], string])[] = [
  ['as written', 'as written'],
  ['other spelling', 'in another spelling'],
  ['unread', 'with an unread character filled'],
  ['misread', 'by a character that is easily misread'],
  ['part', 'as a part'],
];

/** How many numbers fit and why, for ears as well as eyes: `3 numbers fit: 1 as written, 2 as a part. 2 only near.` */
export function numbersSentence({ hits, total, near }: Answer): string {
  const whys = WHY.map(([how, words]) => [hits.filter((hit) => hit.how === how).length, words] as const);
  const parts = whys.filter(([many]) => many > 0).map(([many, words]) => `${many} ${words}`);
  const tied = hits.some((hit) => hit.tied) ? ' Some fit equally well.' : '';
  const fit =
    total === 0
      ? 'No number fits.'
      : `${count(total, 'number')} ${total === 1 ? 'fits' : 'fit'}: ${parts.join(', ')}.${tied}`;
  return near.length === 0 ? fit : `${fit} ${near.length} only near.`;
}

/** How many pages have the words. */
export const wordsSentence = (total: number): string =>
  total === 0 ? 'No entry has these words.' : `${count(total, 'entry').replace('entrys', 'entries')} with these words.`;
