import { crossCheck } from '../check.ts';

/** A share past its date. Nothing can call back a file that somebody has: that is said. */
export const ended = crossCheck({
  code: 'share/ended',
  title: 'A share past its date',
  severity: 'note',
  scope: 'share',
  reads: ['share', 'today'],
  judge: ({ share, today }) => {
    const until = share.until;
    if (until?.is !== 'known' || until.value.latest === null || until.value.latest >= today) return [];
    return [
      {
        place: until.place,
        message: `This share ended on ${until.written}.`,
        found: until.written,
        expected: `${today} or later, to seal it again`,
        action:
          'Leave it as a record of what was shown, or give it a new date to seal it again. Whoever has the file and its words can still open it.',
      },
    ];
  },
});
