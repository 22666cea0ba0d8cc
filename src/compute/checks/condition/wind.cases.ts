import { casesOf } from '../cases.ts';
import { wind } from './wind.ts';

export const cases = casesOf(wind, [
  {
    when: 'the pack has spokes',
    given: { 'reels/a': 'condition: [{ on: "2026", found: [spoking] }]' },
    then: 'fires',
    severity: 'warning',
    says: 'spoking on 2026',
  },
  {
    when: 'it cinched, and was rewound before anybody looked again',
    given: { 'reels/a': 'condition: [{ on: "2024", found: [cinching] }]\nhandling: [{ what: rewind, on: "2025" }]' },
    then: 'fires',
  },
  {
    when: 'it cinched, was rewound, and lies even now',
    given: {
      'reels/a':
        'condition: [{ on: "2024", found: [cinching] }, { on: "2026", found: [none] }]\nhandling: [{ what: rewind, on: "2025" }]',
    },
    then: 'silent',
  },
  {
    when: 'it is head out, which is another thing',
    given: { 'reels/a': 'pack: { wind: head out }\ncondition: [{ on: "2026", found: [none] }]' },
    then: 'silent',
  },
  { when: 'nobody looked', given: { 'reels/a': 'pack: { wind: tail out }' }, then: 'silent' },
]);
