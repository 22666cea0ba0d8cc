import { casesOf } from '../cases.ts';
import { sideMissing } from './side-missing.ts';

const ONE = 'set: pair\nside: "1"\nnumbers: { catalogue: [QVX 101], matrix: [QVX 101-A] }';

export const cases = casesOf(sideMissing, [
  {
    when: 'one side is here and nothing tells of the other',
    given: { 'reels/one': ONE },
    then: 'fires',
    severity: 'warning',
    says: ['Side 2', 'No entry tells', 'QVX 101-B', 'QVX 101'],
    file: 'reels/one.md',
  },
  {
    when: 'the other side is known and was sold',
    given: { 'reels/one': ONE, 'reels/two': 'set: pair\nside: "2"\nstatus: gone\nnumbers: { job: [4472] }' },
    then: 'fires',
    says: ['gone', '4472'],
  },
  {
    when: 'consecutive numbers give the other’s, and the record’s run-out another',
    given: {
      'reels/one': 'set: pair\nside: "1"\nedition: lp\nnumbers: { matrix: [WQX 4471] }',
      'editions/lp':
        'sides: [{ side: "1" }, { side: "2", matrix: WQX 4472 }]\nrun-outs: [{ side: "2", written: WQX 4472-1 }]',
    },
    then: 'fires',
    says: ['WQX 4472', 'WQX 4472-1'],
  },
  {
    when: 'the sides are written as letters, and the record has none listed',
    given: { 'reels/one': 'set: pair\nside: A\nnumbers: { matrix: [QVX 101-A] }' },
    then: 'fires',
    says: ['Side B', 'No entry tells of side B', 'QVX 101-B'],
  },
  {
    when: 'one of four is lost',
    given: {
      'reels/one': 'set: box\nside: A',
      'reels/two': 'set: box\nside: B',
      'reels/three': 'set: box\nside: C',
      'reels/four': 'set: box\nside: D\nstatus: destroyed',
    },
    then: 'fires',
    says: ['destroyed', 'Look for another copy of side D'],
  },
  { when: 'both sides are here', given: { 'reels/one': ONE, 'reels/two': 'set: pair\nside: "2"' }, then: 'silent' },
  {
    when: 'somebody else has the other side',
    given: { 'reels/one': ONE, 'reels/two': 'set: pair\nside: "2"\nstatus: elsewhere' },
    then: 'silent',
  },
  { when: 'one tape holds both', given: { 'reels/whole': 'set: pair\nside: ["1", "2"]' }, then: 'silent' },
  {
    when: 'the record has one side only',
    given: { 'reels/one': `${ONE}\nedition: flexi`, 'editions/flexi': 'made-as: single\nsides: [{ side: "1" }]' },
    then: 'silent',
  },
  {
    when: 'an automatically coupled pair of discs is whole',
    given: {
      'reels/one': 'set: box\nside: "1"',
      'reels/two': 'set: box\nside: "4"',
      'reels/three': 'set: box\nside: "2"',
      'reels/four': 'set: box\nside: "3"',
    },
    then: 'silent',
  },
  {
    when: 'none of the set is here',
    given: { 'reels/one': `${ONE}\nstatus: gone`, 'reels/two': 'set: pair\nside: "2"\nstatus: gone' },
    then: 'silent',
  },
  { when: 'no side is recorded', given: { 'reels/one': 'set: pair' }, then: 'silent' },
  {
    when: 'another reel of the set has no side recorded, and may be it',
    given: { 'reels/one': ONE, 'reels/other': 'set: pair' },
    then: 'silent',
  },
  { when: 'it belongs to no set', given: { 'reels/one': 'side: "1"' }, then: 'silent' },
]);
