import { casesOf } from '../cases.ts';
import { acetateDecay } from './acetate-decay.ts';

export const cases = casesOf(acetateDecay, [
  {
    when: 'the base is acetate',
    given: { 'stocks/clear': 'base: acetate', 'reels/a': 'stock: clear' },
    then: 'fires',
    severity: 'note',
    says: ['acetate', 'Never bake it'],
  },
  {
    when: 'it smells, and its stock isn’t known',
    given: { 'reels/a': 'condition: [{ on: "2026-03", found: [vinegar smell] }]' },
    then: 'fires',
    severity: 'warning',
    says: 'Ventilate',
  },
  {
    when: 'the base is polyester',
    given: { 'stocks/brown': 'base: polyester', 'reels/a': 'stock: brown' },
    then: 'silent',
  },
  {
    when: 'the base is PVC, which is thin and old and no acetate',
    given: { 'stocks/long': 'base: PVC', 'reels/a': 'stock: long' },
    then: 'silent',
  },
  {
    when: 'the base isn’t recorded',
    given: { 'stocks/brown': 'made: 1955', 'reels/a': 'stock: brown' },
    then: 'silent',
  },
  { when: 'the stock isn’t recorded', given: { 'reels/a': 'recorded: { on: "1955" }' }, then: 'silent' },
]);
