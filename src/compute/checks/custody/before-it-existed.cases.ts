import { casesOf } from '../cases.ts';
import { beforeItExisted } from './before-it-existed.ts';

const reel = (recorded: string, from: string) => ({
  'reels/a': `recorded: { on: "${recorded}" }\ncustody: [{ holder: Ostrel Studio, from: "${from}", until: "1991" }]`,
});

export const cases = casesOf(beforeItExisted, [
  {
    when: 'a studio has had it since a year before',
    given: reel('1978-02-09', '1977'),
    then: 'fires',
    severity: 'warning',
    says: ['1977', '1978-02-09'],
  },
  {
    when: 'day and month turned round would agree',
    given: reel('1978-02-09', '1978-01-03'),
    then: 'fires',
    says: '1978-03-01',
  },
  { when: 'it rests on a query', given: reel('1978?', '1977'), then: 'fires', severity: 'note' },
  { when: 'the studio that recorded it had it from that year', given: reel('1978-02-09', '1978'), then: 'silent' },
  { when: 'it was bought decades later', given: reel('1978-02-09', '1989-06'), then: 'silent' },
  { when: 'it was held from some time within a span', given: reel('1978-02-09', '1970/1980'), then: 'silent' },
  {
    when: 'the tape has no date',
    given: { 'reels/a': 'custody: [{ holder: Ostrel Studio, from: "1951" }]' },
    then: 'silent',
  },
  {
    when: 'nobody knows from when',
    given: { 'reels/a': 'recorded: { on: "1978" }\ncustody: [{ holder: Ostrel Studio, until: "1991" }]' },
    then: 'silent',
  },
]);
