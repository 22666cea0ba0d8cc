import { casesOf } from '../cases.ts';
import { packSupport } from './pack-support.ts';

export const cases = casesOf(packSupport, [
  {
    when: 'a pancake is stored upright',
    given: { woundOn: 'bare hub', stored: 'upright' },
    then: 'at-risk',
    says: 'pancake',
  },
  { when: 'a reel is stored flat', given: { woundOn: 'reel', stored: 'flat' }, then: 'at-risk', says: 'flange' },
  { when: 'a pancake lies flat', given: { woundOn: 'bare hub', stored: 'flat' }, then: 'clear' },
  { when: 'a pancake hangs by its hub', given: { woundOn: 'bare hub', stored: 'hanging' }, then: 'clear' },
  { when: 'a reel stands upright', given: { woundOn: 'reel', stored: 'upright' }, then: 'clear' },
  { when: 'nobody wrote how it is stored', given: { woundOn: 'bare hub' }, then: 'not-recorded' },
  { when: 'nobody wrote what it is wound on', given: { stored: 'upright' }, then: 'not-recorded' },
]);
