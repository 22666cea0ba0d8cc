import type { Severity } from '#model/diagnostic.ts';
import type { Outcome } from '#model/finding.ts';
import type { Verdict } from '#model/playing.ts';
import type { Status, Sureness } from '#model/words.ts';
import { html, Markup, type Printable } from './markup.ts';

const BOX = 'd="M2 2h12v12H2z" fill="none" stroke="currentColor" stroke-width="1.6"';

/** Each has its own silhouette, so that it survives a black-and-white copy; its word always stands beside it. */
const SHAPES = {
  clear: `<path ${BOX}/><path d="M4.4 8.2l2.7 3L12.2 4" fill="none" stroke="currentColor" stroke-width="2.1"/>`,
  risk: '<path d="M8 .4L15.6 8 8 15.6.4 8z" fill="currentColor"/><path d="M8 4v5M8 10.6v1.8" class="mk-paper" stroke-width="1.9"/>',
  'not-recorded': `<path ${BOX} stroke-dasharray="2.5 2.3"/>`,
  none: '<path d="M2 2h12v12H2zM2 14L14 2" fill="none" stroke="currentColor" stroke-width="1.6"/>',
  differs:
    '<circle cx="8" cy="8" r="7.6" fill="currentColor"/><path d="M4 6.2h8M4 9.8h8M10.2 3.6l-4.4 8.8" class="mk-paper" stroke-width="1.6"/>',
  agrees:
    '<circle cx="8" cy="8" r="6.8" fill="none" stroke="currentColor" stroke-width="1.6"/><path d="M4.6 6.4h6.8M4.6 9.6h6.8" stroke="currentColor" stroke-width="1.7"/>',
  care: `<path ${BOX}/><path d="M2 14V2l12 12z" fill="currentColor"/>`,
  cannot:
    '<path d="M1.2 1.2h13.6v13.6H1.2z" fill="currentColor"/><path d="M4.4 4.4l7.2 7.2M11.6 4.4l-7.2 7.2" class="mk-paper" stroke-width="2"/>',
  missing:
    '<circle cx="8" cy="8" r="6.6" fill="none" stroke="currentColor" stroke-width="1.7" stroke-dasharray="2.6 2.2"/>',
  unread: `<path ${BOX}/><path d="M5.8 6.2a2.3 2.3 0 1 1 3.3 2.1c-.8.4-1.1.8-1.1 1.5M8 11.2v1.6" fill="none" stroke="currentColor" stroke-width="1.7"/>`,
  note: '<path d="M2 4h12M2 8h12M2 12h7" stroke="currentColor" stroke-width="1.7"/>',
  held: '<circle cx="8" cy="8" r="7.2" fill="currentColor"/><circle cx="8" cy="8" r="2.8" class="mk-hole"/>',
  away: '<circle cx="8" cy="8" r="6.8" fill="none" stroke="currentColor" stroke-width="1.6"/><circle cx="8" cy="8" r="2.4" fill="none" stroke="currentColor" stroke-width="1.4"/>',
  new: '<path d="M2 2h12v12H2zM8 4.6v6.8M4.6 8h6.8" fill="none" stroke="currentColor" stroke-width="1.7"/>',
} as const;

export type Shape = keyof typeof SHAPES;
type Tone = 'red' | 'ok' | 'quiet' | 'plain';

/** How a mark is coloured; red only where someone should look. */
const TONES: Partial<Record<Shape, Tone>> = {
  clear: 'ok',
  agrees: 'ok',
  held: 'ok',
  risk: 'red',
  differs: 'red',
  cannot: 'red',
  'not-recorded': 'quiet',
  none: 'quiet',
};

/** The shapes of a page, once; every mark points at its own. */
export const SPRITE = new Markup(
  `<svg class="sprite" width="0" height="0" aria-hidden="true" focusable="false"><defs>${Object.entries(SHAPES)
    .map(([name, shape]) => `<symbol id="mk-${name}" viewBox="0 0 16 16">${shape}</symbol>`)
    .join('')}</defs></svg>`,
);

/** A shape with its word beside it. */
export function mark(shape: Shape, words: Printable, tone: Tone = TONES[shape] ?? 'plain'): Markup {
  return html`<span class="mk ${tone}"><svg aria-hidden="true"><use href="#mk-${shape}"/></svg>${words}</span>`;
}

export const notRecorded = (words: Printable = 'not recorded'): Markup => mark('not-recorded', words);
export const none = (words: Printable = 'none'): Markup => mark('none', words);

/** The line of how sure: solid, dashed, dotted. */
export const sure = (sureness: Sureness): Markup =>
  html`<span class="sure ${sureness}"><i aria-hidden="true"></i>${sureness}</span>`;

/** The number that joins a fact to the region of the photograph that it was read from. */
export const regionNumber = (region: number, target: string): Markup =>
  html`<a class="reg" href="#${target}" aria-label="Region ${region}" data-region="${region}">${region}</a>`;

const OUTCOMES: Readonly<Record<Outcome, readonly [Shape, string]>> = {
  'at-risk': ['risk', 'at risk'],
  'not-recorded': ['not-recorded', 'not recorded'],
  clear: ['clear', 'clear'],
};

export const outcomeMark = (outcome: Outcome): Markup => mark(...OUTCOMES[outcome]);

const VERDICTS: Readonly<Record<Verdict, Shape>> = {
  plays: 'clear',
  'plays with care': 'care',
  cannot: 'cannot',
  'not recorded': 'not-recorded',
};

export const verdictMark = (verdict: Verdict, words: Printable = verdict): Markup => mark(VERDICTS[verdict], words);

const SEVERITIES: Readonly<Record<Severity, Shape>> = { error: 'cannot', warning: 'differs', note: 'note' };

export const severityMark = (severity: Severity, words: Printable = severity): Markup =>
  mark(SEVERITIES[severity], words);

const STATUSES: Readonly<Record<Status, Shape>> = {
  held: 'held',
  lent: 'away',
  elsewhere: 'away',
  missing: 'missing',
  gone: 'none',
  destroyed: 'none',
};

export const statusMark = (status: Status): Markup => mark(STATUSES[status], status);
