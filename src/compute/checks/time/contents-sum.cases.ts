import { casesOf } from '../cases.ts';
import { contentsSum } from './contents-sum.ts';

const titles = (...lengths: readonly string[]) =>
  lengths.map((length, index) => `  - { title: Title ${index + 1}, length: "${length}" }`).join('\n');

export const cases = casesOf(contentsSum, [
  {
    // C-487: 9 s out, over 1 s a title; a swapped digit (19:45) agrees.
    when: 'two figures of the stated length are swapped',
    given: { 'reels/a': `length: "19:54"\ngaps: none\ncontents:\n${titles('3:45', '4:20', '2:58', '5:10', '3:32')}` },
    then: 'fires',
    says: ['19:54', /19:45, 5 and 4 swapped/],
    severity: 'warning',
  },
  {
    when: 'two figures of one title are swapped',
    given: { 'reels/a': `length: "11:09"\ngaps: none\ncontents:\n${titles('4:12', '3:54', '3:12')}` },
    then: 'fires',
    says: [/3:45 for Title 2 \(5 and 4 swapped\)/],
  },
  {
    when: 'swapped figures of either of two titles would do',
    given: { 'reels/a': `length: "11:07"\ngaps: none\ncontents:\n${titles('4:10', '3:54', '3:12')}` },
    then: 'fires',
    says: [/4:01 for Title 1 .* or 3:45 for Title 2/],
  },
  {
    when: 'a title is missing from the listing',
    given: { 'reels/a': `length: "18:52"\ngaps: none\ncontents:\n${titles('4:10', '3:36', '5:02', '2:59')}` },
    then: 'fires',
    says: ['15:47', /a title of about 3:05/],
  },
  {
    when: 'a title is listed that isn’t on the tape',
    given: { 'reels/a': `length: "12:48"\ngaps: none\ncontents:\n${titles('4:10', '3:36', '5:02', '2:59')}` },
    then: 'fires',
    says: [/without Title 4 \(2:59\)/],
  },
  {
    when: 'the run-out sound is said not to count, and only with it the sum agrees',
    given: {
      'reels/a': `length: "7:57"\ngaps: none\nrun-out-sound: { holds: a gull, length: 11 s, counted: no }\ncontents:\n${titles('4:10', '3:36')}`,
    },
    then: 'fires',
    says: [/run-out sound \(11 s\) is part of the stated length/],
  },
  {
    // C-554: sound in the run-out is tried before anything else is thought of.
    when: 'a few seconds over would be sound in the run-out that nobody recorded',
    given: { 'reels/a': `length: "7:53"\ngaps: none\ncontents:\n${titles('4:10', '3:36')}` },
    then: 'fires',
    says: [/7 s of sound in the run-out/],
  },
  {
    when: 'nothing is said of gaps, and swapped figures agree just as well',
    given: { 'reels/a': `length: "19:54"\ncontents:\n${titles('3:45', '4:20', '2:58', '5:10', '3:32')}` },
    then: 'fires',
    says: [/record `gaps:`/],
    severity: 'note',
  },
  {
    when: 'the titles alone are longer than the whole, whatever the gaps',
    given: { 'reels/a': `length: "17:20"\ncontents:\n${titles('4:10', '3:36', '5:02', '2:59', '3:05')}` },
    then: 'fires',
    severity: 'warning',
  },
  {
    // C-485
    when: 'titles without gaps are the stated length',
    given: { 'reels/a': `length: "18:52"\ngaps: none\ncontents:\n${titles('4:10', '3:36', '5:02', '2:59', '3:05')}` },
    then: 'silent',
  },
  {
    // C-486
    when: 'four gaps of 3 s stand between five titles',
    given: { 'reels/a': `length: "19:04"\ngaps: 3 s\ncontents:\n${titles('4:10', '3:36', '5:02', '2:59', '3:05')}` },
    then: 'silent',
  },
  {
    // C-491: 3 s out, within 1 s a title.
    when: 'every title was timed to the second by another hand',
    given: { 'reels/a': `length: "14:03"\ngaps: none\ncontents:\n${titles('3:30', '3:31', '3:29', '3:30')}` },
    then: 'silent',
  },
  {
    when: 'a sound in the run-out makes up the difference, and nobody says whether it counts',
    given: {
      'reels/a': `length: "7:52"\ngaps: none\nrun-out-sound: { holds: a foghorn, length: 6 s }\ncontents:\n${titles('4:10', '3:36')}`,
    },
    then: 'silent',
  },
  {
    when: 'a master has leader of its own length after each title',
    given: {
      'reels/a': `
        length: "11:32"
        gaps: mixed
        contents:
          - { title: Low Water, length: "4:10", gap-after: 3 s }
          - { title: Marram, length: "3:36", gap-after: 8 s }
          - { title: Ebb, length: "3:35" }`,
    },
    then: 'silent',
  },
  {
    when: 'a cassette master runs both ways and its label states one side',
    given: {
      'reels/a': `
        length: "8:00"
        gaps: none
        side: ["1", "2"]
        format: { direction: both }
        contents:
          - { title: One, length: "4:00", side: "1" }
          - { title: Two, length: "4:00", side: "1" }
          - { title: Three, length: "3:55", side: "2" }
          - { title: Four, length: "3:50", side: "2" }`,
    },
    then: 'silent',
  },
  {
    when: 'a title has no length',
    given: { 'reels/a': `length: "18:52"\ngaps: none\ncontents:\n${titles('4:10', '3:36')}\n  - { title: Unnamed }` },
    then: 'silent',
  },
  {
    when: 'one mixed gap isn’t recorded',
    given: {
      'reels/a': `
        length: "18:52"
        gaps: mixed
        contents:
          - { title: Low Water, length: "4:10" }
          - { title: Marram, length: "3:36" }`,
    },
    then: 'silent',
  },
  {
    when: 'nothing is said of gaps, and usual ones would make up the difference',
    given: { 'reels/a': `length: "19:11"\ncontents:\n${titles('4:10', '3:36', '5:02', '2:59', '3:05')}` },
    then: 'silent',
  },
]);
