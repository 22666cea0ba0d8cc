import { casesOf } from '../cases.ts';
import { editionBeforeCut } from './edition-before-cut.ts';

const LP = 'issued: "1977-05"\nrun-outs: [{ side: "1", written: QVX 101-3, cut: "3" }]';

export const cases = casesOf(editionBeforeCut, [
  {
    when: 'the run-out carries a cut made after the record was out',
    given: { 'editions/lp': LP, 'reels/side-1': 'edition: lp\nside: "1"\ncuts: [{ number: "3", on: "1977-06-02" }]' },
    then: 'fires',
    severity: 'warning',
    says: ['1977-05', '1977-06-02', 'earlier cut'],
    file: 'reels/side-1.md',
  },
  {
    when: 'there was an earlier cut, and it was not used',
    given: {
      'editions/lp': LP,
      'reels/side-1':
        'edition: lp\nside: "1"\ncuts: [{ number: "1", on: "1977-04-01", used: no }, { number: "3", on: "1977-06-02" }]',
    },
    then: 'fires',
  },
  {
    when: 'the cut names the record, which is doubtfully dated',
    given: {
      'editions/lp': 'issued: "1976~"',
      'reels/side-1': 'cuts: [{ number: "1", on: "1977-06-02", edition: lp }]',
    },
    then: 'fires',
    severity: 'note',
  },
  {
    when: 'the first pressing can have come from an earlier cut, and this one from a recut',
    given: {
      'editions/lp': LP,
      'reels/side-1':
        'edition: lp\nside: "1"\ncuts: [{ number: "1", on: "1977-04-01" }, { number: "3", on: "1977-06-02" }]',
    },
    then: 'silent',
  },
  {
    when: 'an undated first cut can have served',
    given: {
      'editions/lp': LP,
      'reels/side-1': 'edition: lp\nside: "1"\ncuts: [{ number: "1" }, { number: "3", on: "1977-06-02" }]',
    },
    then: 'silent',
  },
  {
    when: 'it was cut and out in one month',
    given: { 'editions/lp': LP, 'reels/side-1': 'edition: lp\nside: "1"\ncuts: [{ number: "3", on: "1977-05-28" }]' },
    then: 'silent',
  },
  {
    when: 'the record has no date',
    given: { 'editions/lp': 'made-as: LP', 'reels/side-1': 'cuts: [{ number: "1", on: "1977-06-02", edition: lp }]' },
    then: 'silent',
  },
  {
    when: 'no cut is known to lead to it',
    given: { 'editions/lp': LP, 'reels/side-1': 'edition: lp\nside: "1"' },
    then: 'silent',
  },
  {
    when: 'the cut has no date',
    given: { 'editions/lp': LP, 'reels/side-1': 'edition: lp\nside: "1"\ncuts: [{ number: "3" }]' },
    then: 'silent',
  },
  {
    when: 'the cut was used, and the reel is for no other record',
    given: {
      'editions/lp': 'issued: "1978-05"',
      'reels/a': 'edition: lp\nside: "1"\ncuts: [{ number: "2", on: "1978-06-27", used: yes }]',
    },
    then: 'fires',
    severity: 'warning',
  },
  {
    when: 'it is the first cut, and nobody says whether it was used',
    given: {
      'editions/lp': 'issued: "1978-05"',
      'reels/a': 'edition: lp\nside: "1"\ncuts: [{ number: "1", on: "1978-06-27" }]',
    },
    then: 'fires',
    severity: 'note',
  },
  {
    when: 'another reel of the side had been cut before',
    given: {
      'editions/lp': 'issued: "1978-05"',
      'reels/a': 'edition: lp\nside: "1"\ncuts: [{ number: "1", on: "1978-03" }]',
      'reels/b': 'edition: lp\nside: "1"\ncuts: [{ number: "1", on: "1978-06-27", used: yes }]',
    },
    then: 'silent',
  },
  {
    when: 'only a late cut is known of a record that came out long before',
    given: {
      'editions/lp': 'issued: "1968"',
      'reels/a': 'edition: lp\nside: "1"\ncuts: [{ number: "4", on: "1978" }]',
    },
    then: 'silent',
  },
]);
