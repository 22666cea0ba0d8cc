import { casesOf } from '../cases.ts';
import { catalogueDiffers } from './catalogue-differs.ts';

export const cases = casesOf(catalogueDiffers, [
  {
    when: 'a figure of the reel’s number is misread',
    given: { 'editions/lp': 'catalogue: HLX 2207', 'reels/a': 'edition: lp\nnumbers: { catalogue: HLX 2201 }' },
    then: 'fires',
    says: ['HLX 2201', 'HLX 2207', /7 read as a 1/],
    severity: 'warning',
    file: 'reels/a.md',
  },
  {
    when: 'two figures of the reel’s number are swapped',
    given: { 'editions/lp': 'catalogue: HLX 2270', 'reels/a': 'edition: lp\nnumbers: { catalogue: HLX 2207 }' },
    then: 'fires',
    says: [/swapped/],
  },
  {
    when: 'the reel bears quite another number',
    given: { 'editions/lp': 'catalogue: HLX 2207', 'reels/a': 'edition: lp\nnumbers: { catalogue: DRM 88 }' },
    then: 'fires',
    says: [/another edition/],
  },
  {
    when: 'the number is written in another way, with the side on it',
    given: { 'editions/lp': 'catalogue: HLX-2207', 'reels/a': 'edition: lp\nnumbers: { catalogue: hlx2207 A }' },
    then: 'silent',
  },
  {
    when: 'the label leaves the letters in front out',
    given: { 'editions/lp': 'catalogue: HLX 2207', 'reels/a': 'edition: lp\nnumbers: { catalogue: "2207" }' },
    then: 'silent',
  },
  {
    when: 'a short number stands without its letters',
    given: { 'editions/ep': 'catalogue: TOV 88', 'reels/a': 'edition: ep\nnumbers: { catalogue: "88" }' },
    then: 'silent',
  },
  {
    when: 'the reel serves two editions and bears the number of one',
    given: {
      'editions/abroad': 'catalogue: OND 31',
      'editions/lp': 'catalogue: HLX 2207',
      'reels/a': 'edition: [abroad, lp]\nnumbers: { catalogue: HLX 2207 }',
    },
    then: 'silent',
  },
  {
    when: 'the reel was used again for a reissue and keeps its first number',
    given: {
      'editions/again': 'catalogue: HLX 5012\nreissue-of: lp',
      'editions/lp': 'catalogue: HLX 2207',
      'reels/a': 'edition: again\nnumbers: { catalogue: HLX 2207 }',
    },
    then: 'silent',
  },
  {
    when: 'the edition’s number isn’t recorded',
    given: { 'editions/lp': 'made-as: LP', 'reels/a': 'edition: lp\nnumbers: { catalogue: HLX 2201 }' },
    then: 'silent',
  },
]);
