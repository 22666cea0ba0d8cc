import { casesOf } from '../cases.ts';
import { thicknessName } from './thickness-name.ts';

export const cases = casesOf(thicknessName, [
  {
    when: 'the total is given as the name of standard tape',
    given: { 'stocks/s': 'thickness: 1.5 mil' },
    then: 'fires',
    says: ['50 to 52 µm', 'standard play'],
    severity: 'note',
  },
  {
    when: 'the total is given as the name of long-play tape',
    given: { 'stocks/s': 'thickness: 1 mil' },
    then: 'fires',
    says: ['35 µm'],
  },
  {
    when: 'the whole tape was measured, in mil',
    given: { 'stocks/s': 'thickness: 1.5 mil ± 0.05 mil' },
    then: 'silent',
  },
  { when: 'it is a total that no base has', given: { 'stocks/s': 'thickness: 2.05 mil' }, then: 'silent' },
  { when: 'it is given in micrometres', given: { 'stocks/s': 'thickness: 38 µm' }, then: 'silent' },
]);
