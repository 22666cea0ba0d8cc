import { casesOf } from '../cases.ts';
import { restsOnGuess } from './rests-on-guess.ts';

export const cases = casesOf(restsOnGuess, [
  {
    when: 'the speed was read with a guess, and the length is stated',
    given: {
      'reels/a': `
        length: "18:52"
        format: { speed: 30 in/s }
        readings: [{ of: format.speed, written: "{3?}0", sure: guess }]`,
    },
    then: 'fires',
    says: ['how it is played'],
    severity: 'note',
  },
  {
    when: 'a number that its set is paired by was read with a guess',
    given: {
      'reels/a': `
        set: tide
        numbers: { matrix: HLX 2207-A }
        readings: [{ of: "numbers.matrix[0]", written: "HLX 22?7-A", sure: guess }]`,
      'reels/b': 'set: tide',
    },
    then: 'fires',
    says: ['pairing'],
  },
  {
    when: 'a second reading is likely',
    given: {
      'reels/a': `
        length: "18:52"
        format: { speed: 30 in/s }
        readings:
          - { of: format.speed, written: "{3?}0", sure: guess }
          - { of: format.speed, written: "30 IPS", sure: likely }`,
    },
    then: 'silent',
  },
  {
    when: 'nothing is compared with the number',
    given: {
      'reels/a': `
        numbers: { other: [box 12] }
        readings: [{ of: numbers.other, written: "BOX 1{2?}", sure: guess }]`,
    },
    then: 'silent',
  },
  {
    when: 'the reader was certain',
    given: {
      'reels/a':
        'length: "18:52"\nformat: { speed: 30 in/s }\nreadings: [{ of: length, written: "18.52", sure: certain }]',
    },
    then: 'silent',
  },
]);
