import type { Photo } from '#model/entry.ts';
import { dateWords } from './date.ts';
import { capital } from './number.ts';

/** What a photograph shows, for its caption and for those who can't see it. */
export function photographWords(photo: Photo, title: string): { readonly caption: string; readonly alt: string } {
  const subject = capital(photo.shows?.value ?? 'photograph');
  const on = photo.on === undefined ? '' : `, ${dateWords(photo.on.value)}`;
  return { caption: subject + on, alt: `${subject} of ${title}` };
}
