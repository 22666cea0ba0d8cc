import { casesOf } from '../cases.ts';
import { matrixDiffers } from './matrix-differs.ts';

const LP = { 'editions/lp': 'sides: [{ side: A, matrix: HLX 2207-A }, { side: B, matrix: HLX 2207-B }]' };

export const cases = casesOf(matrixDiffers, [
  {
    when: 'the reel’s number is a misread character away from the record’s',
    given: { ...LP, 'reels/a': 'edition: lp\nside: "1"\nnumbers: { matrix: HLX 2201-A }' },
    then: 'fires',
    says: ['HLX 2207-A', /7 read as a 1/],
    severity: 'warning',
    file: 'reels/a.md',
  },
  {
    when: 'the reel bears another number of the same house',
    given: { ...LP, 'reels/a': 'edition: lp\nside: "2"\nnumbers: { matrix: HLX 3518-B }' },
    then: 'fires',
    severity: 'warning',
  },
  {
    when: 'a plant abroad gave the side a number of its own',
    given: { ...LP, 'reels/a': 'edition: lp\nside: "2"\nnumbers: { matrix: "774102" }' },
    then: 'fires',
    severity: 'note',
  },
  {
    when: 'only the cut number and the spelling differ',
    given: { ...LP, 'reels/a': 'edition: lp\nside: "1"\nnumbers: { matrix: hlx2207a-3 }' },
    then: 'silent',
  },
  {
    when: 'the reel’s cut has the number of the plant abroad',
    given: {
      ...LP,
      'reels/a':
        'edition: lp\nside: "1"\nnumbers: { matrix: "774101" }\ncuts: [{ number: "1", matrix: HLX 2207-A, edition: lp }]',
    },
    then: 'silent',
  },
  {
    when: 'one of two reels for the side has the number',
    given: {
      ...LP,
      'reels/a': 'edition: lp\nside: "1"\nkind: production master\nnumbers: { matrix: "774101" }',
      'reels/b': 'edition: lp\nside: "1"\nkind: copy master\nnumbers: { matrix: HLX 2207-A }',
    },
    then: 'silent',
  },
  { when: 'the reel’s number isn’t recorded', given: { ...LP, 'reels/a': 'edition: lp\nside: "1"' }, then: 'silent' },
]);
