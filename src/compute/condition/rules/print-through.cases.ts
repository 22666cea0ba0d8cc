import { casesOf } from '../cases.ts';
import { printThrough } from './print-through.ts';

export const cases = casesOf(printThrough, [
  { when: 'it is head out', given: { wind: 'head out' }, then: 'at-risk', observed: false },
  {
    when: 'it was heard',
    given: { wind: 'tail out', signs: [{ sign: 'print-through heard', on: '2026', notFoundOn: undefined }] },
    then: 'at-risk',
    observed: true,
  },
  { when: 'it is tail out', given: { wind: 'tail out' }, then: 'clear' },
  { when: 'nobody recorded the wind', given: { looked: '2026' }, then: 'not-recorded' },
]);
