import { casesOf } from '../cases.ts';
import { cutBeforeTape } from './cut-before-tape.ts';

export const cases = casesOf(cutBeforeTape, [
  {
    when: 'the lacquer is a year older than the tape',
    given: { 'reels/side-1': 'recorded: { on: "1978-02-09" }\ncuts: [{ number: "1", on: "1977-02-20" }]' },
    then: 'fires',
    severity: 'warning',
    says: ['1977-02-20', '1978-02-09'],
  },
  {
    when: 'one of two cuts is too early, by a month turned round',
    given: {
      'reels/side-1':
        'recorded: { on: "1978-02-09" }\ncuts: [{ number: "1", on: "1978-01-06" }, { number: "2", on: "1978-06-27" }]',
    },
    then: 'fires',
    says: ['cut 1', '1978-06-01'],
  },
  {
    when: 'it rests on a query',
    given: { 'reels/side-1': 'recorded: { on: "1978?" }\ncuts: [{ number: "1", on: "1977-12" }]' },
    then: 'fires',
    severity: 'note',
  },
  {
    when: 'the tape was cut on the day that it was copied',
    given: { 'reels/side-1': 'recorded: { on: "1978-02-09" }\ncuts: [{ number: "1", on: "1978-02-09" }]' },
    then: 'silent',
  },
  {
    when: 'the tape was recut for a reissue twenty years on',
    given: {
      'reels/side-1':
        'recorded: { on: "1978-02-09" }\ncuts: [{ number: "1", on: "1978-06-27" }, { number: "2", on: "1998" }]',
    },
    then: 'silent',
  },
  {
    when: 'the cut has no date',
    given: { 'reels/side-1': 'recorded: { on: "1978" }\ncuts: [{ number: "1" }]' },
    then: 'silent',
  },
  { when: 'the tape has no date', given: { 'reels/side-1': 'cuts: [{ number: "1", on: "1977" }]' }, then: 'silent' },
  { when: 'nothing was cut from it', given: { 'reels/side-1': 'recorded: { on: "1978" }' }, then: 'silent' },
]);
