import { casesOf } from '../cases.ts';
import { notMadeThen } from './not-made-then.ts';

const STOCK = { 'stocks/norda-verde': 'title: Norda Verde\nmade: 1972/1984' };

export const cases = casesOf(notMadeThen, [
  {
    when: 'it was recorded the year before',
    given: { ...STOCK, 'reels/a': 'stock: norda-verde\nrecorded: { on: "1971-11" }' },
    then: 'fires',
    severity: 'warning',
    says: ['1971-11', '1972/1984', 'before its stock'],
  },
  {
    when: 'it was recorded twelve years after the last',
    given: { ...STOCK, 'reels/a': 'stock: norda-verde\nrecorded: { on: "1996" }' },
    then: 'fires',
    says: 'more than 10 years',
  },
  {
    when: 'the first year is only about',
    given: { 'stocks/norda-verde': 'made: 1972~/1984', 'reels/a': 'stock: norda-verde\nrecorded: { on: "1971" }' },
    then: 'fires',
    severity: 'note',
  },
  {
    when: 'it was used up over the next few years',
    given: { ...STOCK, 'reels/a': 'stock: norda-verde\nrecorded: { on: "1988" }' },
    then: 'silent',
  },
  {
    when: 'it was recorded in the stock’s first year',
    given: { ...STOCK, 'reels/a': 'stock: norda-verde\nrecorded: { on: "1972" }' },
    then: 'silent',
  },
  {
    when: 'nobody knows when the stock ended',
    given: { 'stocks/norda-verde': 'made: 1972/..', 'reels/a': 'stock: norda-verde\nrecorded: { on: "2011" }' },
    then: 'silent',
  },
  { when: 'the tape has no date', given: { ...STOCK, 'reels/a': 'stock: norda-verde' }, then: 'silent' },
  {
    when: 'the stock has no years',
    given: { 'stocks/norda-verde': 'base: polyester', 'reels/a': 'stock: norda-verde\nrecorded: { on: "1951" }' },
    then: 'silent',
  },
  { when: 'the stock isn’t recorded', given: { ...STOCK, 'reels/a': 'recorded: { on: "1951" }' }, then: 'silent' },
]);
