import { kindRule } from '../rule.ts';

/** Acetate decays from the day it is made, and faster once it smells of vinegar. */
export const acetateDecay = kindRule({
  id: 'acetate-decay',
  title: 'Decaying acetate base',
  reads: ['base'],
  shownBy: ['vinegar smell'],
  sources: [
    'IASA-TC 05, acetate base',
    'A-D Strips User’s Guide (2001), levels 0 to 3, 1.5 being where decay begins to feed itself; the strips are for film, and used on tape by analogy (common practice, no source)',
  ],
  cautions: ['vinegar', 'heat', 'solvents'],
  action:
    'Keep it cool and dry, apart from other reels, and have it copied soon. Never bake it. A strip in its closed box tells how far it has gone: at level 1 watch it closely, from 1.5 on copy it without delay.',
  judge: ({ base }) =>
    base === 'acetate'
      ? { outcome: 'at-risk', because: 'Its base is acetate, which decays even in good air.' }
      : { outcome: 'clear', because: `Its base is ${base}, not acetate.` },
});
