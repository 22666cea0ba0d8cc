import { casesOf } from '../cases.ts';
import { bareHub } from './bare-hub.ts';

const PLAIN = { 'stocks/plain': 'back-coated: no' };

export const cases = casesOf(bareHub, [
  {
    when: 'a pancake has no back coat',
    given: { ...PLAIN, 'reels/a': 'stock: plain\npack: { wound-on: bare hub }' },
    then: 'fires',
    severity: 'warning',
    says: ['AES49', 'rigid plates'],
  },
  {
    when: 'it lies flat, as it should, and is still a pancake without a back coat',
    given: { ...PLAIN, 'reels/a': 'stock: plain\npack: { wound-on: bare hub }\nplace: { stored: flat }' },
    then: 'fires',
  },
  {
    when: 'the stock is back-coated',
    given: { 'stocks/brown': 'back-coated: yes', 'reels/a': 'stock: brown\npack: { wound-on: bare hub }' },
    then: 'silent',
  },
  { when: 'it is on a reel', given: { ...PLAIN, 'reels/a': 'stock: plain\npack: { wound-on: reel }' }, then: 'silent' },
  {
    when: 'the back coat isn’t recorded',
    given: { 'stocks/plain': 'base: polyester', 'reels/a': 'stock: plain\npack: { wound-on: bare hub }' },
    then: 'silent',
  },
  { when: 'nobody wrote what it is wound on', given: { ...PLAIN, 'reels/a': 'stock: plain' }, then: 'silent' },
  { when: 'the stock isn’t recorded', given: { ...PLAIN, 'reels/a': 'pack: { wound-on: bare hub }' }, then: 'silent' },
]);
