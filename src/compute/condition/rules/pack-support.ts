import { kindRule } from '../rule.ts';

/** What holds the pack up while it lies in store. */
export const packSupport = kindRule({
  id: 'pack-support',
  title: 'A pack that nothing holds',
  reads: ['woundOn', 'stored'],
  shownBy: [],
  sources: [
    'AES49-2005 section 4.5.5 (from memory): a bare hub leaves the edges unheld',
    'common practice, no source: reels stand upright on their hub, a pancake lies flat between plates',
  ],
  cautions: ['pancake', 'handling', 'lifting'],
  action: 'Lay a pancake flat between rigid plates with its hub supported; stand a reel upright in its box.',
  judge: ({ woundOn, stored }) => {
    if (woundOn === 'bare hub' && stored === 'upright') {
      return { outcome: 'at-risk', because: 'It is a pancake, stored upright: nothing holds the edges of the pack.' };
    }
    if (woundOn === 'reel' && stored === 'flat') {
      return {
        outcome: 'at-risk',
        because: 'It is a reel, stored flat: the pack rests on a flange, and sinks towards it.',
      };
    }
    return { outcome: 'clear', because: `A ${woundOn === 'reel' ? 'reel' : 'pancake'}, stored ${stored}.` };
  },
});
