import { casesOf } from '../cases.ts';
import { undecoded } from './undecoded.ts';

export const cases = casesOf(undecoded, [
  {
    when: 'the tape was made with noise reduction and the machine has none',
    given: { 'machines/desk': 'noise-reduction: none', 'reels/a': 'format: { noise-reduction: Hushline B }' },
    then: 'fires',
    says: ['Hushline B', 'none'],
    severity: 'warning',
    file: 'reels/a.md',
  },
  {
    when: 'the machine decodes another system',
    given: { 'machines/desk': 'noise-reduction: [Stillwave]', 'reels/a': 'format: { noise-reduction: Hushline B }' },
    then: 'fires',
    says: ['Stillwave', 'decoder for Hushline B'],
  },
  {
    when: 'one machine of two decodes it, written another way',
    given: {
      'machines/attic': 'noise-reduction: none',
      'machines/desk': 'noise-reduction: [hushline-b]',
      'reels/a': 'format: { noise-reduction: Hushline B }',
    },
    then: 'silent',
  },
  {
    when: 'the tape was made without',
    given: { 'machines/desk': 'noise-reduction: none', 'reels/a': 'format: { noise-reduction: none }' },
    then: 'silent',
  },
  {
    when: 'nobody recorded what the machine decodes',
    given: { 'machines/desk': 'state: working', 'reels/a': 'format: { noise-reduction: Hushline B }' },
    then: 'silent',
  },
]);
