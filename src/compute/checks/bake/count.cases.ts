import { casesOf } from '../cases.ts';
import { count } from './count.ts';

const bakes = (many: number, more = '') => ({
  'stocks/brown': 'base: polyester',
  'reels/a': `stock: brown\nhandling:\n${Array.from({ length: many }, (_, at) => `  - { what: bake, on: "${2001 + at}" }`).join('\n')}${more}`,
});

export const cases = casesOf(count, [
  {
    when: 'it was baked eight times',
    given: bakes(8),
    then: 'fires',
    severity: 'note',
    says: ['8 bakes', '20 and more'],
  },
  {
    when: 'the eighth is only planned',
    given: bakes(7, '\n  - { what: bake, planned: yes }'),
    then: 'fires',
    says: 'bake 8',
  },
  { when: 'it was baked seven times', given: bakes(7), then: 'silent' },
  {
    when: 'it was baked seven times and played after each',
    given: bakes(7, `${'\n  - { what: play }'.repeat(7)}`),
    then: 'silent',
  },
  { when: 'it was never baked', given: { 'reels/a': 'handling: [{ what: clean }]' }, then: 'silent' },
]);
