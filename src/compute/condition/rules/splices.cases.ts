import { casesOf } from '../cases.ts';
import { splices } from './splices.ts';

export const cases = casesOf(splices, [
  {
    when: 'a splice is failing',
    given: { splices: 3, looked: '2026', signs: [{ sign: 'splice failing', on: '2026', notFoundOn: undefined }] },
    then: 'at-risk',
    observed: true,
  },
  {
    when: 'a splice is failing and none were counted',
    given: { signs: [{ sign: 'splice failing', on: '2026', notFoundOn: undefined }] },
    then: 'at-risk',
  },
  { when: 'there are splices and none fails', given: { splices: 3, looked: '2026' }, then: 'clear', says: '3 splices' },
  { when: 'it has none', given: { splices: 0, looked: '2026' }, then: 'clear' },
  { when: 'there are splices and nobody looked', given: { splices: 3 }, then: 'not-recorded' },
  { when: 'nobody counted them', given: { looked: '2026' }, then: 'not-recorded' },
]);
