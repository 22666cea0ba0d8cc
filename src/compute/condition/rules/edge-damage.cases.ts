import { casesOf } from '../cases.ts';
import { edgeDamage } from './edge-damage.ts';

export const cases = casesOf(edgeDamage, [
  {
    when: 'an edge is damaged',
    given: { looked: '2026', signs: [{ sign: 'edge damage', on: '2026', notFoundOn: undefined }] },
    then: 'at-risk',
    observed: true,
  },
  {
    when: 'an edge was damaged before the last look',
    given: { looked: '2026', signs: [{ sign: 'edge damage', on: '2011', notFoundOn: '2026' }] },
    then: 'at-risk',
    says: '2011',
  },
  { when: 'somebody looked and found nothing', given: { looked: '2026' }, then: 'clear' },
  {
    when: 'somebody looked and found spoking',
    given: { looked: '2026', signs: [{ sign: 'spoking', on: '2026', notFoundOn: undefined }] },
    then: 'clear',
  },
  { when: 'nobody looked', given: {}, then: 'not-recorded' },
]);
