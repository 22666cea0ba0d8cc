import type { Diagnostic } from '#model/diagnostic.ts';
import { el } from './element.ts';

const WORDS = {
  error: 'can’t be used as written',
  warning: 'can’t both be true, or a risk',
  note: 'worth a look',
} as const;

/** What the checks say, as slips: found, what would agree, what to do. */
export function problemsPart(problems: readonly Diagnostic[]): HTMLElement {
  if (problems.length === 0)
    return el(
      'p',
      {},
      'The checks find nothing that disagrees in what is recorded here. What isn’t recorded can’t be checked.',
    );
  return el('div', {}, ...problems.map(slip));
}

function slip({ code, severity, message, action, found, expected, place, related }: Diagnostic): HTMLElement {
  const facts = [
    ['Found', found],
    [severity === 'error' ? 'Expected' : 'Would agree', expected],
    ['Do', action],
  ].filter(([, text]) => text !== '');
  const red = severity === 'note' ? 'mk quiet' : 'mk red';
  return el(
    'article',
    { class: 'slip', 'data-code': code },
    el(
      'div',
      { class: 'hd' },
      el('h3', {}, message),
      el('span', { class: red }, `${severity === 'note' ? '≡' : '≠'} ${WORDS[severity]}`),
    ),
    el('p', { class: 'as-written small' }, `${place.field || place.file}, line ${place.line} · ${code}`),
    el(
      'dl',
      { class: 'fed' },
      ...facts.flatMap(([term, text]) => [
        el('dt', {}, term),
        el('dd', {}, term === 'Do' ? (text ?? '') : el('code', {}, text)),
      ]),
    ),
    ...related.map(({ message: sentence, place: other }) =>
      el('p', { class: 'small' }, `${sentence} (${other.file}, line ${other.line})`),
    ),
  );
}
