import { casesOf } from '../cases.ts';
import { printThrough } from './print-through.ts';

export const cases = casesOf(printThrough, [
  {
    when: 'it is head out',
    given: { 'reels/a': 'pack: { wind: head out }' },
    then: 'fires',
    severity: 'note',
    says: 'before the sound',
  },
  {
    when: 'an echo was heard',
    given: { 'reels/a': 'pack: { wind: tail out }\ncondition: [{ on: "2026", found: [print-through heard] }]' },
    then: 'fires',
    severity: 'warning',
  },
  { when: 'it is tail out, as masters are', given: { 'reels/a': 'pack: { wind: tail out }' }, then: 'silent' },
  {
    when: 'a head-out reel is somebody else’s',
    given: { 'reels/a': 'status: elsewhere\npack: { wind: head out }' },
    then: 'silent',
  },
  { when: 'the wind isn’t recorded', given: { 'reels/a': 'pack: { wound-on: bare hub }' }, then: 'silent' },
]);
