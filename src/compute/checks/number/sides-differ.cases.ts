import { casesOf } from '../cases.ts';
import { sidesDiffer } from './sides-differ.ts';

const set = (one: string, two: string, more: Readonly<Record<string, string>> = {}) => ({
  'reels/a': `set: tide\nside: "1"\nnumbers: { matrix: "${one}" }`,
  'reels/b': `set: tide\nside: "2"\nnumbers: { matrix: "${two}" }`,
  ...more,
});

export const cases = casesOf(sidesDiffer, [
  {
    when: 'a 7 read as a 1 keeps the sides from pairing',
    given: set('HLX 2207-A', 'HLX 2201-B'),
    then: 'fires',
    says: ['HLX 2207-B', /7 read as a 1/],
    severity: 'warning',
    file: 'reels/b.md',
  },
  {
    when: 'a 0 stands for an O',
    given: set('GYO 417-A', 'GY0 417-B'),
    then: 'fires',
    says: ['GYO 417-B', /O read as a 0/],
    severity: 'warning',
  },
  {
    // C-483: 12346 and 12347 would be consecutive.
    when: 'a 6 read as a 9 keeps the sides from being consecutive',
    given: set('12349', '12347'),
    then: 'fires',
    says: ['12346', /6 read as a 9/],
    severity: 'warning',
  },
  {
    when: 'the reading allows the character that pairs',
    given: {
      'reels/a': 'set: tide\nside: "1"\nnumbers: { matrix: HLX 2207-A }',
      'reels/b': `
        set: tide
        side: "2"
        numbers: { matrix: HLX 2201-B }
        photos: [{ file: label.jpg }]
        readings: [{ of: numbers.matrix, photo: label.jpg, written: "HLX 220{1|7}-B" }]`,
      'reels/b/label.jpg': '',
    },
    then: 'fires',
    says: ['HLX 2207-B'],
    severity: 'warning',
  },
  {
    // C-482: no single misread character makes them a pair.
    when: 'the numbers have nothing to do with each other',
    given: set('12871', '12345'),
    then: 'fires',
    says: [/No single misread character/],
    severity: 'note',
  },
  {
    // C-478, C-560: other houses skip numbers, so this is a note and no more.
    when: 'the second number is the next but one',
    given: set('12345', '12347'),
    then: 'fires',
    severity: 'note',
  },
  // C-477
  { when: 'the numbers are consecutive', given: set('12345', '12346'), then: 'silent' },
  // C-479
  { when: 'one number has two side letters', given: set('HLX 2207-A', 'HLX 2207-B'), then: 'silent' },
  // C-480
  { when: 'the sides carry different cuts', given: set('12345-3', '12346-1'), then: 'silent' },
  // C-481
  { when: 'only one of the sides has a dash', given: set('12345', '12346-2'), then: 'silent' },
  {
    when: 'four sides are numbered for automatic coupling',
    given: {
      'reels/a': 'set: tide\nside: "1"\nnumbers: { matrix: HLX 2207-A }',
      'reels/b': 'set: tide\nside: "2"\nnumbers: { matrix: HLX 2208-A }',
      'reels/c': 'set: tide\nside: "3"\nnumbers: { matrix: HLX 2208-B }',
      'reels/d': 'set: tide\nside: "4"\nnumbers: { matrix: HLX 2207-B }',
    },
    then: 'silent',
  },
  {
    when: 'a safety copy of side 1 bears the same number as side 1',
    given: set('12345', '12346', {
      'reels/c': 'set: tide\nside: "1"\nkind: safety copy\nnumbers: { matrix: "12345" }',
    }),
    then: 'silent',
  },
  {
    when: 'a box bears an older number as well',
    given: {
      'reels/a': 'set: tide\nside: "1"\nnumbers: { matrix: ["90871", "12345"] }',
      'reels/b': 'set: tide\nside: "2"\nnumbers: { matrix: "12346" }',
    },
    then: 'silent',
  },
  {
    when: 'one side’s number isn’t recorded',
    given: { 'reels/a': 'set: tide\nside: "1"\nnumbers: { matrix: "12871" }', 'reels/b': 'set: tide\nside: "2"' },
    then: 'silent',
  },
]);
