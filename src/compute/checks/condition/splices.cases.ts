import { casesOf } from '../cases.ts';
import { splices } from './splices.ts';

export const cases = casesOf(splices, [
  {
    when: 'a splice is failing',
    given: { 'reels/a': 'splices: [{ at: "4:10" }]\ncondition: [{ on: "2026-03", found: [splice failing] }]' },
    then: 'fires',
    severity: 'warning',
    says: 'remade by someone',
  },
  {
    when: 'it was mended before the last look, which found another failing',
    given: {
      'reels/a':
        'condition: [{ on: "2019", found: [splice failing] }, { on: "2026", found: [splice failing] }]\nhandling: [{ what: splice repair, on: "2020-05" }]',
    },
    then: 'fires',
  },
  {
    when: 'a master is full of splices, and they hold',
    given: {
      'reels/a':
        'splices: [{ at: "0:00" }, { at: "4:10" }, { at: "7:46" }]\ncondition: [{ on: "2026", found: [none] }]',
    },
    then: 'silent',
  },
  {
    when: 'they were remade, and looked at since',
    given: {
      'reels/a':
        'splices: [{ at: "4:10" }]\ncondition: [{ on: "2019", found: [splice failing] }, { on: "2026-03", found: [none] }]\nhandling: [{ what: splice repair, on: "2020-05" }]',
    },
    then: 'silent',
  },
  { when: 'nobody looked at them', given: { 'reels/a': 'splices: [{ at: "4:10", note: dry }]' }, then: 'silent' },
  { when: 'nobody counted them', given: { 'reels/a': 'condition: [{ on: "2026", found: [none] }]' }, then: 'silent' },
]);
