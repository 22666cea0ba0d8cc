import { casesOf } from '../cases.ts';
import { wind } from './wind.ts';

export const cases = casesOf(wind, [
  {
    when: 'the pack has spokes',
    given: { looked: '2026', signs: [{ sign: 'spoking', on: '2026', notFoundOn: undefined }] },
    then: 'at-risk',
    observed: true,
  },
  {
    when: 'the pack has cinched',
    given: { looked: '2026', signs: [{ sign: 'cinching', on: '2026', notFoundOn: undefined }] },
    then: 'at-risk',
    says: 'cinching',
  },
  { when: 'somebody looked and found nothing', given: { looked: '2026' }, then: 'clear' },
  { when: 'it is head out, which is no slipping', given: { looked: '2026', wind: 'head out' }, then: 'clear' },
  { when: 'nobody looked', given: { wind: 'tail out' }, then: 'not-recorded' },
]);
