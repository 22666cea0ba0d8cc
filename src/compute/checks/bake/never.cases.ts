import { casesOf } from '../cases.ts';
import { never } from './never.ts';

const BAKED = 'handling: [{ what: bake, on: "2026-03-10", temperature: 50 °C, duration: 8 h }]';

export const cases = casesOf(never, [
  {
    when: 'the base is acetate',
    given: { 'stocks/clear': 'base: acetate', 'reels/a': `stock: clear\n${BAKED}` },
    then: 'fires',
    severity: 'warning',
    says: ['acetate', 'domestic oven'],
  },
  {
    when: 'the base is paper',
    given: { 'stocks/old': 'base: paper', 'reels/a': `stock: old\n${BAKED}` },
    then: 'fires',
    says: 'paper',
  },
  {
    when: 'the base is PVC, and the bake only planned',
    given: { 'stocks/long': 'base: PVC', 'reels/a': 'stock: long\nhandling: [{ what: bake, planned: yes }]' },
    then: 'fires',
    says: ['PVC', 'planned'],
  },
  { when: 'nobody knows the base', given: { 'reels/a': BAKED }, then: 'fires', says: 'Find the base first' },
  {
    when: 'the stock is known and its base isn’t',
    given: { 'stocks/brown': 'back-coated: yes', 'reels/a': `stock: brown\n${BAKED}` },
    then: 'fires',
  },
  {
    when: 'the base is polyester',
    given: { 'stocks/brown': 'base: polyester', 'reels/a': `stock: brown\n${BAKED}` },
    then: 'silent',
  },
  {
    when: 'an acetate tape was cleaned and played cold',
    given: {
      'stocks/clear': 'base: acetate',
      'reels/a': 'stock: clear\nhandling: [{ what: clean }, { what: play, on: "2025" }]',
    },
    then: 'silent',
  },
  {
    when: 'nothing was baked, and nothing is known of the base',
    given: { 'reels/a': 'recorded: { on: "1955" }' },
    then: 'silent',
  },
]);
