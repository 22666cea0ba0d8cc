import { kindRule } from '../rule.ts';

/** A pack that has slipped or been pulled into spokes. */
export const wind = kindRule({
  id: 'wind',
  title: 'A pack that has slipped',
  reads: ['looked'],
  shownBy: ['cinching', 'spoking'],
  sources: ['IASA-TC 05, wind and tension of tape packs (section from memory)'],
  cautions: ['handling', 'playing'],
  action:
    'Leave the pack as it is, and don’t pull or press it straight. If its binder is sound, have it wound slowly, once, at even tension; if that isn’t known, leave it until it is.',
  judge: ({ looked }) => ({ outcome: 'clear', because: `The inspection of ${looked} found an even pack.` }),
});
