import { casesOf } from '../cases.ts';
import { shared } from './shared.ts';

const FIRST = 'sides: [{ side: A, matrix: HLX 2207-A }]';

export const cases = casesOf(shared, [
  {
    when: 'two editions bear one matrix number, spelt two ways',
    given: { 'editions/first': FIRST, 'editions/later': 'sides: [{ side: A, matrix: hlx2207a }]' },
    then: 'fires',
    says: ['reissue-of'],
    severity: 'note',
    file: 'editions/later.md',
  },
  {
    when: 'of three editions only two are linked',
    given: {
      'editions/abroad': FIRST,
      'editions/first': FIRST,
      'editions/later': `${FIRST}\nreissue-of: first`,
    },
    then: 'fires',
  },
  {
    when: 'a reissue was pressed from the same cut and says so',
    given: { 'editions/first': FIRST, 'editions/later': `${FIRST}\nreissue-of: first` },
    then: 'silent',
  },
  {
    when: 'two reissues share the cut of the first edition, each linked to it',
    given: {
      'editions/first': FIRST,
      'editions/later': `${FIRST}\nreissue-of: first`,
      'editions/latest': `${FIRST}\nreissue-of: first`,
    },
    then: 'silent',
  },
  {
    when: 'a single was recut from another number',
    given: { 'editions/first': FIRST, 'editions/single': 'sides: [{ side: A, matrix: HLX 9101-A }]' },
    then: 'silent',
  },
]);
