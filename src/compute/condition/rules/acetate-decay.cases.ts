import { casesOf } from '../cases.ts';
import { acetateDecay } from './acetate-decay.ts';

export const cases = casesOf(acetateDecay, [
  { when: 'the base is acetate', given: { base: 'acetate' }, then: 'at-risk', observed: false },
  {
    when: 'the base is acetate and the last look found nothing',
    given: { base: 'acetate', looked: '2026-03' },
    then: 'at-risk',
  },
  { when: 'the base is polyester', given: { base: 'polyester' }, then: 'clear' },
  { when: 'the base is paper, which has troubles of its own', given: { base: 'paper' }, then: 'clear', says: 'paper' },
  { when: 'the base isn’t known', given: {}, then: 'not-recorded' },
  { when: 'the base isn’t known and nothing was smelt', given: { looked: '2026-03' }, then: 'not-recorded' },
  {
    when: 'it smells, whatever the stock is said to be',
    given: { base: 'polyester', signs: [{ sign: 'vinegar smell', on: '2026-03', notFoundOn: undefined }] },
    then: 'at-risk',
    observed: true,
  },
]);
