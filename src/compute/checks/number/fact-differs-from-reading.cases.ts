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
  {
    when: 'the day of recording isn’t the one on the label',
    given: reel('recorded: { on: 1978-02-09 }', 'of: recorded.on, written: "10 FEB 78", sure: certain'),
    then: 'fires',
    severity: 'warning',
  },
  {
    when: 'the label has another year',
    given: reel('recorded: { on: 1978 }', 'of: recorded.on, written: "MIXED 1979"'),
    then: 'fires',
  },
  {
    when: 'the date is written in one of the label’s own orders',
    given: reel(
      'recorded: { on: 1978-02-09 }',
      'of: recorded.on, written: "9-2-78"',
      'of: recorded.on, written: "2/9/78"',
      'of: recorded.on, written: "Feb 9, 1978"',
      'of: recorded.on, written: "9.II.78"',
      'of: recorded.on, written: "9th FEB 1978"',
      'of: recorded.on, written: "Thurs / 9 Feb 78"',
    ),
    then: 'silent',
  },
  {
    when: 'the label says only the month, and the fact the day',
    given: reel('recorded: { on: 1978-02-09 }', 'of: recorded.on, written: "FEBRUARY 1978"'),
    then: 'silent',
  },
  {
    when: 'the date is known to be about right',
    given: reel('recorded: { on: "1978~" }', 'of: recorded.on, written: "11 Jan 79"'),
    then: 'silent',
  },
  {
    when: 'a figure of the date can’t be read',
    given: reel('recorded: { on: 1978-02-09 }', 'of: recorded.on, written: "1? FEB 78"'),
    then: 'silent',
  },
  {
    when: 'another curve’s box is ticked',
    given: reel(
      'format: { speed: 15 in/s, equalisation: IEC }',
      'of: format.equalisation, written: "☑NAB ☐CCIR ☐AES", sure: certain',
    ),
    then: 'fires',
    severity: 'warning',
  },
  {
    when: 'the label gives the curve its other name',
    given: reel('format: { speed: 15 in/s, equalisation: IEC }', 'of: format.equalisation, written: "☐NAB ☑C.C.I.R."'),
    then: 'silent',
  },
  {
    when: 'at a slow speed the two names are one curve',
    given: reel('format: { speed: 3.75 in/s, equalisation: NAB }', 'of: format.equalisation, written: "I.E.C."'),
    then: 'silent',
  },
  {
    when: 'the box says stereo and the entry mono',
    given: reel('format: { tracks: full-track mono }', 'of: format.tracks, written: "[ ] MONO [x] STEREO"'),
    then: 'fires',
    severity: 'note',
  },
  {
    when: 'the label calls a two-track tape half-track stereo',
    given: reel('format: { tracks: two-track stereo }', 'of: format.tracks, written: "½ TRACK STEREO"'),
    then: 'silent',
  },
  {
    when: 'the label says another kind of tape',
    given: reel('kind: copy master', 'of: kind, written: "SESSION REEL 4", sure: certain'),
    then: 'fires',
    severity: 'note',
  },
  {
    when: 'the label calls a copy a copy',
    given: reel('kind: cutting master', 'of: kind, written: "E.Q. COPY"', 'of: kind, written: "TAPE MASTER"'),
    then: 'silent',
  },
  {
    when: 'the label denies the noise reduction that the entry gives',
    given: reel('format: { noise-reduction: Type Q }', 'of: format.noise-reduction, written: "NO N.R."'),
    then: 'fires',
  },
  {
    when: 'the label spells the noise reduction its own way',
    given: reel('format: { noise-reduction: Type Q }', 'of: format.noise-reduction, written: "Q-system"'),
    then: 'silent',
  },
  {
    when: 'a typewriter’s letter stands for a figure of its shape',
    given: reel('numbers: { matrix: HLX 2207-A }', 'of: numbers.matrix, written: "HLX 22O7-A", sure: likely'),
    then: 'fires',
    severity: 'note',
  },
  {
    when: 'a line of the copy log is dated otherwise than its reading',
    given: reel('copy-log: [{ on: 1978-02-09 }]', 'of: "copy-log[0].on", written: "9/3/78"'),
    then: 'fires',
  },
  {
    when: 'the side stands behind its word, in a sentence',
    given: reel('side: "2"', 'of: side, written: "SIDE TWO / A TALE"'),
    then: 'silent',
  },
]);
