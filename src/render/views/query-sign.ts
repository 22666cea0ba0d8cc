import type { Diagnostic } from '#model/diagnostic.ts';
import { mark, severityMark } from '../marks.ts';
import type { Markup } from '../markup.ts';

const WORDS = { error: 'can’t be used', warning: 'disagrees', note: 'worth a look' };

/** The sign over a query. A tape at risk, a side that isn't here and a reel that nothing plays disagree with nothing. */
export function querySign({ code, severity }: Pick<Diagnostic, 'code' | 'severity'>): Markup {
  if (severity === 'warning') {
    if (code.startsWith('condition/') || code === 'climate/outside') return mark('risk', 'at risk');
    if (code === 'set/side-missing') return mark('missing', 'missing');
    if (code === 'playing/nothing-plays-it') return mark('cannot', 'nothing plays it');
  }
  return severityMark(severity, WORDS[severity]);
}
