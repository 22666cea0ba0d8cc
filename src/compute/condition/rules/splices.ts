import { kindRule } from '../rule.ts';

/** The adhesive of an old join dries, or bleeds on to the next turn. */
export const splices = kindRule({
  id: 'splices',
  title: 'Failing splices',
  reads: ['splices', 'looked'],
  shownBy: ['splice failing'],
  sources: ['common practice, no source: joins dry out or bleed, and are looked at before anything is wound'],
  cautions: ['playing', 'blades', 'solvents'],
  action: 'Have the joins remade by someone who does it weekly, on the bench, before the tape is played or wound.',
  judge: ({ splices: count, looked }) => ({
    outcome: 'clear',
    because:
      count === 0
        ? 'It has no splices.'
        : `${count} ${count === 1 ? 'splice is' : 'splices are'} recorded, and the inspection of ${looked} found none failing.`,
  }),
});
