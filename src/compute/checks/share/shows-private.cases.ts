import { casesOf } from '../cases.ts';
import { showsPrivate } from './shows-private.ts';

const share = (audience: string, more: string, reel = 'length: "18:52"') => ({
  'reels/a': reel,
  'shares/one': `for: ${audience}\nreels: [a]\n${more}`,
});

export const cases = casesOf(showsPrivate, [
  {
    when: 'it names where the reels are kept',
    given: share('friend', 'shows: [place]'),
    then: 'fires',
    severity: 'error',
    says: 'shows-private: [place]',
  },
  {
    when: 'it names a part of what is private',
    given: share('valuer', 'shows: [custody.price]'),
    then: 'fires',
    says: 'as custody is',
  },
  {
    when: 'the reel made its client private',
    given: share('researcher', 'shows: [client]', 'client: Ostrel Overseas\nprivate: [client]'),
    then: 'fires',
    says: 'client',
  },
  {
    when: 'the whole collection made one private',
    given: { collection: 'private: [recorded.by]', ...share('friend', 'shows: [recorded.by]') },
    then: 'fires',
  },
  { when: 'it means to', given: share('insurer', 'shows-private: [place]'), then: 'silent' },
  {
    when: 'an insurer is shown valuations, which the table gives',
    given: share('insurer', 'shows: [valuations]'),
    then: 'silent',
  },
  {
    when: 'a valuer is shown how it changed hands, which the table gives',
    given: share('valuer', 'shows: [custody.how]'),
    then: 'silent',
  },
  { when: 'a friend is shown the cuts as well', given: share('friend', 'shows: [cuts, format]'), then: 'silent' },
  { when: 'it adds nothing', given: share('engineer', 'to: Ilda'), then: 'silent' },
]);
