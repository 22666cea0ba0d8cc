import type { Accepted, Diagnostic } from '#model/diagnostic.ts';
import { isMapWritten } from '#read/written-value.ts';
import type { Checked } from '../desk.ts';
import { button, el, freshId } from './element.ts';
import type { SheetState } from './sheet-state.ts';

const WORDS = {
  error: 'can’t be used as written',
  warning: 'can’t both be true, or a risk',
  note: 'worth a look',
} as const;

/** What the checks say, as slips: found, what would agree, what to do, and a way to accept it with a reason.
 *
 * @param redrawn  Called after one was accepted or taken back, so that the form shows it. */
export function problemsPart({ problems, accepted }: Checked, state: SheetState, redrawn: () => void): HTMLElement {
  const none = el(
    'p',
    {},
    'The checks find nothing that disagrees in what is recorded here. What isn’t recorded can’t be checked.',
  );
  return el(
    'div',
    {},
    ...(problems.length === 0 ? [none] : problems.map((problem) => slip(problem, accepting(problem, state, redrawn)))),
    ...accepted.map((one) => acceptedSlip(one, state, redrawn)),
  );
}

function slip(problem: Diagnostic, accept: HTMLElement | undefined): HTMLElement {
  const { code, severity, message, action, found, expected, place, related } = problem;
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
    accept,
  );
}

/** What can't be used as written has to be mended; all else may be accepted, for a reason that is typed. */
function accepting({ code, severity, message }: Diagnostic, state: SheetState, redrawn: () => void) {
  if (severity === 'error' || state.kind === 'collection') return undefined;
  const why = el('input', { class: 'entry', id: freshId(), autocomplete: 'off' });
  const said = el('p', { role: 'alert', class: 'small' });
  const accept = () => {
    if (why.value.trim() === '') {
      said.textContent = 'Write why it is right all the same.';
      why.focus();
      return;
    }
    state.put(['accepted'], [...state.linesAt(['accepted']), { code, why: why.value.trim(), on: today() }]);
    redrawn();
  };
  why.addEventListener('keydown', (event) => {
    if (event.key !== 'Enter') return;
    event.preventDefault();
    accept();
  });
  const fields = el(
    'div',
    { class: 'accepting', hidden: true },
    el('label', { class: 'cap', for: why.id }, 'Why it is right all the same'),
    why,
    said,
    button('Accept it', accept),
  );
  const begin = button(
    'Accept, with a reason',
    () => {
      begin.hidden = true;
      fields.hidden = false;
      why.focus();
    },
    true,
    { 'aria-label': `Accept, with a reason: ${message}` },
  );
  return el('div', { class: 'row' }, begin, fields);
}

function acceptedSlip({ problem, why, on }: Accepted, state: SheetState, redrawn: () => void): HTMLElement {
  const lines = state.linesAt(['accepted']);
  const own = lines.findIndex((line) => isMapWritten(line) && line['code'] === problem.code);
  const takeBack = button('No longer accept it', () => {
    state.takeLine(['accepted'], own);
    redrawn();
  });
  return el(
    'article',
    { class: 'slip accepted', 'data-accepted': problem.code },
    el(
      'div',
      { class: 'hd' },
      el('h3', {}, problem.message),
      el('span', { class: 'mk quiet' }, on === undefined ? 'accepted' : `accepted, ${on}`),
    ),
    el('p', {}, why === '' ? 'No reason is written.' : why),
    own < 0 ? el('p', { class: 'small' }, 'Accepted in the other entry.') : takeBack,
  );
}

/** By the clock of who sits at the desk. */
function today(): string {
  const now = new Date();
  const two = (figure: number) => String(figure).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
