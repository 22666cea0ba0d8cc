import { mark, none, notRecorded } from '../marks.ts';
import type { Markup } from '../markup.ts';

/** Known to shed is a risk; not known to is no proof of a sound tape, and no tick. */
export function shedWords(sheds: boolean | undefined): Markup {
  if (sheds === undefined) return notRecorded();
  return sheds ? mark('risk', 'known to shed') : none('not known to');
}
