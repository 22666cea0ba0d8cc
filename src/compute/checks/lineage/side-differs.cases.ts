import { casesOf } from '../cases.ts';
import { sideDiffers } from './side-differs.ts';

export const cases = casesOf(sideDiffers, [
  {
    when: 'side 1 is copied from side 2',
    given: { 'reels/copy': 'side: "1"\ncopied-from: [master]', 'reels/master': 'side: "2"' },
    then: 'fires',
    severity: 'warning',
    says: 'Side 1 is copied from side 2',
  },
  {
    when: 'side B is copied from side 1, as a log has it',
    given: { 'reels/copy': 'side: B', 'reels/master': 'side: "1"\ncopy-log: [{ reel: copy }]' },
    then: 'fires',
  },
  {
    when: 'A goes with 1',
    given: { 'reels/copy': 'side: A\ncopied-from: [master]', 'reels/master': 'side: "1"' },
    then: 'silent',
  },
  {
    when: 'the parent holds both sides',
    given: { 'reels/copy': 'side: "2"\ncopied-from: [master]', 'reels/master': 'side: ["1", "2"]' },
    then: 'silent',
  },
  {
    when: 'a compilation takes its side 1 from two side 2s',
    given: {
      'reels/best-of': 'side: "1"\ncopied-from: [first, second]',
      'reels/first': 'side: "2"',
      'reels/second': 'side: "2"',
    },
    then: 'silent',
  },
  {
    when: 'another territory’s edition ordered the sides anew',
    given: {
      'editions/home': '',
      'editions/overseas': '',
      'reels/copy': 'side: "1"\nedition: overseas\ncopied-from: [master]',
      'reels/master': 'side: "2"\nedition: home',
    },
    then: 'silent',
  },
  {
    when: 'the copy has no side',
    given: { 'reels/copy': 'copied-from: [master]', 'reels/master': 'side: "2"' },
    then: 'silent',
  },
  {
    when: 'the parent has no side',
    given: { 'reels/copy': 'side: "1"\ncopied-from: [master]', 'reels/master': '' },
    then: 'silent',
  },
  {
    when: 'nothing is said of its parent',
    given: { 'reels/copy': 'side: "1"', 'reels/master': 'side: "2"' },
    then: 'silent',
  },
]);
