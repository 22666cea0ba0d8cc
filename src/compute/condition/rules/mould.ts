import { kindRule } from '../rule.ts';

/** Mould is seen or it isn't: the air that feeds it is the business of the place. */
export const mould = kindRule({
  id: 'mould',
  title: 'Mould',
  reads: ['looked'],
  shownBy: ['mould'],
  sources: [
    'Abbey Newsletter 21-7 (1997) “Moldy Audiotape”: most kinds are dormant under 70 % humidity, some are active down to 50 %; what smears is active',
    'the same expert, ARSC list, 3 March 2007: under 50 %, some down to 40 %. The lower is the one to plan by',
  ],
  cautions: ['mould'],
  action:
    'Close the box and leave it closed. Set it apart in dry air, and give it to a specialist; don’t clean, wind or play it. What smears is active; dry and dusty is probably dormant, and no less harmful to breathe.',
  judge: ({ looked }) => ({ outcome: 'clear', because: `The inspection of ${looked} found none.` }),
});
