import { casesOf } from '../cases.ts';
import { ended } from './ended.ts';

const share = (more: string) => ({
  'reels/a': 'length: "18:52"',
  'shares/to-ilda': `for: engineer\nreels: [a]\n${more}`,
});

export const cases = casesOf(ended, [
  {
    when: 'it ended yesterday',
    given: share('until: "2026-03-31"'),
    then: 'fires',
    severity: 'note',
    says: ['2026-03-31', 'can still open it'],
  },
  { when: 'it ended with last month', given: share('until: "2026-03"'), then: 'fires' },
  { when: 'today is its last day', given: share('until: "2026-04-01"'), then: 'silent' },
  { when: 'it ends some time this year', given: share('until: "2026"'), then: 'silent' },
  { when: 'it has no end', given: share('to: Ilda'), then: 'silent' },
  { when: 'its end is left open', given: share('until: "2026-01/.."'), then: 'silent' },
]);
