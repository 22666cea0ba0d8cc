import { casesOf } from '../cases.ts';
import { mould } from './mould.ts';

export const cases = casesOf(mould, [
  {
    when: 'mould was seen',
    given: { looked: '2026-03', signs: [{ sign: 'mould', on: '2026-03', notFoundOn: undefined }] },
    then: 'at-risk',
    observed: true,
  },
  {
    when: 'mould was seen, and a later look did not find it',
    given: { looked: '2026-03', signs: [{ sign: 'mould', on: '2020', notFoundOn: '2026-03' }] },
    then: 'at-risk',
  },
  { when: 'somebody looked and found nothing', given: { looked: '2026-03' }, then: 'clear', says: '2026-03' },
  {
    when: 'somebody looked and found edge damage',
    given: { looked: '2026-03', signs: [{ sign: 'edge damage', on: '2026-03', notFoundOn: undefined }] },
    then: 'clear',
  },
  { when: 'nobody looked', given: {}, then: 'not-recorded' },
]);
