import { casesOf } from '../cases.ts';
import { packSupport } from './pack-support.ts';

export const cases = casesOf(packSupport, [
  {
    when: 'a pancake is stored upright',
    given: { 'places/room': '', 'reels/a': 'pack: { wound-on: bare hub }\nplace: { at: room, stored: upright }' },
    then: 'fires',
    severity: 'note',
    says: ['pancake', 'between rigid plates'],
  },
  {
    when: 'a reel lies flat',
    given: { 'places/room': '', 'reels/a': 'pack: { wound-on: reel }\nplace: { at: room, stored: flat }' },
    then: 'fires',
    says: 'flange',
  },
  {
    when: 'a pancake lies flat',
    given: { 'reels/a': 'pack: { wound-on: bare hub }\nplace: { stored: flat }' },
    then: 'silent',
  },
  {
    when: 'a pancake hangs on its hub',
    given: { 'reels/a': 'pack: { wound-on: bare hub }\nplace: { stored: hanging }' },
    then: 'silent',
  },
  {
    when: 'a reel stands upright',
    given: { 'reels/a': 'pack: { wound-on: reel }\nplace: { stored: upright }' },
    then: 'silent',
  },
  { when: 'nobody wrote how it lies', given: { 'reels/a': 'pack: { wound-on: bare hub }' }, then: 'silent' },
  { when: 'nobody wrote what it is wound on', given: { 'reels/a': 'place: { stored: flat }' }, then: 'silent' },
]);
