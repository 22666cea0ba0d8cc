import { casesOf } from '../cases.ts';
import { overSide } from './over-side.ts';

export const cases = casesOf(overSide, [
  {
    when: 'a side of an LP is longer than any usable level allows',
    given: { 'editions/lp': 'made-as: LP\nsides: [{ side: A, length: "37:40" }]' },
    then: 'fires',
    says: ['37:40', '35:00'],
    severity: 'warning',
  },
  {
    when: 'a side of an LP is unusually long',
    given: { 'editions/lp': 'made-as: LP\nspeed: 33⅓ rpm\nsides: [{ side: A, length: "31:05" }]' },
    then: 'fires',
    says: ['28:00'],
    severity: 'note',
  },
  {
    when: 'a single at 45 is longer than 7 inches hold',
    given: { 'editions/single': 'made-as: single\nspeed: 45 rpm\nsides: [{ side: A, length: "11:20" }]' },
    then: 'fires',
    says: ['10:00'],
    severity: 'warning',
  },
  {
    when: 'only the reel has a length',
    given: { 'editions/lp': 'made-as: LP\nsides: [{ side: A }]', 'reels/a': 'edition: lp\nside: "1"\nlength: "41:00"' },
    then: 'fires',
    file: 'reels/a.md',
  },
  {
    // C-317: 27:30 is possible between −3 and −6 dB.
    when: 'a long side is cut at a lower level',
    given: { 'editions/lp': 'made-as: LP\nsides: [{ side: A, length: "27:30" }]' },
    then: 'silent',
  },
  {
    when: 'a cassette has 45 minutes a side',
    given: { 'editions/tape': 'made-as: cassette\nsides: [{ side: A, length: "44:50" }]' },
    then: 'silent',
  },
  {
    when: 'an LP at 45 rpm is another format',
    given: { 'editions/lp': 'made-as: LP\nspeed: 45 rpm\nsides: [{ side: A, length: "36:00" }]' },
    then: 'silent',
  },
  {
    when: 'a single whose speed isn’t recorded may be a 12 in one',
    given: { 'editions/single': 'made-as: single\nsides: [{ side: A, length: "12:30" }]' },
    then: 'silent',
  },
]);
