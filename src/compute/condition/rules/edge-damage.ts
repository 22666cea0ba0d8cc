import { kindRule } from '../rule.ts';

export const edgeDamage = kindRule({
  id: 'edge-damage',
  title: 'Damaged edges',
  reads: ['looked'],
  shownBy: ['edge damage'],
  sources: ['IASA-TC 05, mechanical integrity of tape packs (section from memory)'],
  cautions: ['handling', 'playing'],
  action:
    'Leave it as it lies. An edge that is bent or stretched loses the track that runs along it, and gets worse with each wind: have it played slowly wound, once, by someone experienced.',
  judge: ({ looked }) => ({ outcome: 'clear', because: `The inspection of ${looked} found none.` }),
});
