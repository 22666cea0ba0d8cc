import { casesOf } from '../cases.ts';
import { edgeDamage } from './edge-damage.ts';

export const cases = casesOf(edgeDamage, [
  {
    when: 'an edge is damaged',
    given: { 'reels/a': 'condition: [{ on: "2026", found: [edge damage] }]' },
    then: 'fires',
    severity: 'warning',
    says: 'edge damage on 2026',
  },
  {
    when: 'an edge was damaged once, and a later look doesn’t name it',
    given: { 'reels/a': 'condition: [{ on: "2011", found: [edge damage] }, { on: "2026", found: [none] }]' },
    then: 'fires',
    says: 'both stand here',
  },
  {
    when: 'the flange is bent and the tape isn’t',
    given: { 'reels/a': 'condition: [{ on: "2026", found: [none], note: bent flange }]' },
    then: 'silent',
  },
  {
    when: 'a splice is failing',
    given: { 'reels/a': 'condition: [{ on: "2026", found: [splice failing] }]' },
    then: 'silent',
  },
  { when: 'nobody looked', given: { 'reels/a': 'recorded: { on: "1971" }' }, then: 'silent' },
]);
