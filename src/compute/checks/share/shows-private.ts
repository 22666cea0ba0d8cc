import { itemsOf } from '#model/fact.ts';
import { privateKeyOf } from '#model/privacy.ts';
import { crossCheck } from '../check.ts';

/** A share that names a private fact among what it shows. Meaning to is said by another key. */
export const showsPrivate = crossCheck({
  code: 'share/shows-private',
  title: 'A share that names a private fact',
  severity: 'error',
  scope: 'share',
  reads: ['share', 'ownPrivate'],
  judge: ({ share, ownPrivate }) =>
    itemsOf(share.shows).flatMap((key) => {
      const covering = privateKeyOf(key.value, share.audience.value, ownPrivate);
      if (covering === undefined) return [];
      return [
        {
          place: key.place,
          message: `This share would show ${key.written}, which is private${covering === key.value ? '' : `, as ${covering} is`}.`,
          found: key.written,
          expected: `shows-private: [${key.value}], if you mean to`,
          action: `Take it out of shows, or move it to shows-private if ${share.audience.value === 'insurer' ? 'the insurer' : 'this reader'} is to see it.`,
        },
      ];
    }),
});
