import { casesOf } from '../cases.ts';
import { mould } from './mould.ts';

export const cases = casesOf(mould, [
  {
    when: 'mould was seen',
    given: { 'reels/a': 'condition: [{ on: "2026-03", found: [mould] }]' },
    then: 'fires',
    severity: 'warning',
    says: ['mould on 2026-03', 'respirator'],
  },
  {
    when: 'it was cleaned, and nobody has looked since',
    given: { 'reels/a': 'condition: [{ on: "2019", found: [mould] }]\nhandling: [{ what: clean, on: "2020-05" }]' },
    then: 'fires',
  },
  {
    when: 'it was cleaned by someone who does this, and a later look found nothing',
    given: {
      'reels/a':
        'condition: [{ on: "2019", found: [mould] }, { on: "2026-03", found: [none] }]\nhandling: [{ what: clean, on: "2020-05" }]',
    },
    then: 'silent',
  },
  {
    when: 'the box had dust and an edge was bent',
    given: { 'reels/a': 'condition: [{ on: "2026", found: [edge damage], note: dusty box }]' },
    then: 'silent',
  },
  { when: 'nobody looked', given: { 'reels/a': 'recorded: { on: "1971" }' }, then: 'silent' },
]);
