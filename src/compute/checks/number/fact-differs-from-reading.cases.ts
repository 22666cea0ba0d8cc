import { casesOf } from '../cases.ts';
import { factDiffersFromReading } from './fact-differs-from-reading.ts';

const reel = (facts: string, ...readings: readonly string[]) => ({
  'reels/a': `${facts}\nreadings:\n${readings.map((reading) => `  - { ${reading} }`).join('\n')}`,
});

export const cases = casesOf(factDiffersFromReading, [
  {
    when: 'the number isn’t what its reading says',
    given: reel('numbers: { matrix: HLX 2207-A }', 'of: numbers.matrix, written: "HLX 2201-A", sure: certain'),
    then: 'fires',
    says: ['HLX 2207-A', 'HLX 2201-A'],
    severity: 'warning',
  },
  {
    when: 'the length isn’t what its reading says',
    given: reel('length: "18:52"', `of: length, written: "18'25", sure: certain`),
    then: 'fires',
    says: ['18:52'],
  },
  {
    when: 'another box than the speed’s is ticked',
    given: reel('format: { speed: 15 in/s }', 'of: format.speed, written: "☑30 in/s ☐15 ☐7½"'),
    then: 'fires',
  },
  {
    when: 'the surer of two readings says something else',
    given: reel(
      'numbers: { catalogue: HLX 2207 }',
      'of: numbers.catalogue, written: "HLX 2207", sure: guess',
      'of: numbers.catalogue, written: "HLX 2201", sure: certain',
    ),
    then: 'fires',
  },
  {
    when: 'only the spelling differs',
    given: reel('numbers: { matrix: HLX 2207-A }', 'of: numbers.matrix, written: "hlx2207 / a"'),
    then: 'silent',
  },
  {
    when: 'the reading leaves a character open, and the fact is one of those it may be',
    given: reel('numbers: { matrix: HLX 2207-A }', 'of: numbers.matrix, written: "HLX 2{2|7}?7-A"'),
    then: 'silent',
  },
  {
    when: 'a doubtful character was settled otherwise, as a shape like it',
    given: reel('numbers: { matrix: HLX 2207-A }', 'of: numbers.matrix, written: "HLX 220{1?}-A"'),
    then: 'silent',
  },
  {
    when: 'the label has more on the line than the number',
    given: reel('numbers: { matrix: HLX 2207-A }', 'of: numbers.matrix, written: "MX. No. HLX-2207-A / SIDE ONE"'),
    then: 'silent',
  },
  {
    when: 'the length is written in the label’s own way',
    given: reel('length: "18:52"', `of: length, written: "TIME 18 MIN 52 SEC"`),
    then: 'silent',
  },
  {
    when: 'the speed is ticked on a printed form, in centimetres',
    given: reel('format: { speed: 15 in/s }', 'of: format.speed, written: "[ ] 76 [x] 38 [ ] 19 cm/s"'),
    then: 'silent',
  },
  {
    when: 'the reading is of something that is told in other words',
    given: reel('client: Hollin Overseas', 'of: client, written: "H. O. Ltd"'),
    then: 'silent',
  },
]);
