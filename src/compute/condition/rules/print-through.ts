import { kindRule } from '../rule.ts';

/** Signal that one turn has magnetised into the next. No published level applies to a tape that isn't known, so none is
 * given: only where it would be heard. */
export const printThrough = kindRule({
  id: 'print-through',
  title: 'Print-through, before the sound or after it',
  reads: ['wind'],
  shownBy: ['print-through heard'],
  sources: [
    'Bertram, The print-through phenomenon, JAES 28, 1980: worst at a wavelength of 2π times the tape’s thickness',
    'common practice, no source: masters are kept tail out, so that the stronger echo falls after the sound and is covered by it',
  ],
  cautions: ['playing'],
  action:
    'Leave it as it is wound until it is next played, then store it tail out. Don’t wind it for this alone while its binder isn’t known to be sound.',
  judge: ({ wind }) =>
    wind === 'tail out'
      ? { outcome: 'clear', because: 'It is tail out: the stronger echo falls after the sound.' }
      : {
          outcome: 'at-risk',
          because:
            'It is head out: the stronger echo comes before the sound, where it is heard. Usual for tapes in daily use.',
        },
});
