import { casesOf } from '../cases.ts';
import { longer } from './longer.ts';

const bake = (duration: string, width: string) => ({
  'stocks/brown': 'base: polyester',
  'reels/a': `stock: brown\nformat: { width: ${width} }\nhandling: [{ what: bake, on: "2026-03-10", temperature: 50 °C, duration: ${duration} }]`,
});

export const cases = casesOf(longer, [
  {
    when: 'quarter inch was baked for 48 hours',
    given: bake('48 h', '1/4 in'),
    then: 'fires',
    severity: 'warning',
    says: ['every practice', '48 h'],
  },
  {
    when: 'quarter inch was baked for 36 hours, as is common practice',
    given: bake('36 h', '1/4 in'),
    then: 'fires',
    severity: 'note',
    says: 'no source',
  },
  { when: 'wide tape was baked for three days', given: bake('72 h', '2 in'), then: 'fires', severity: 'note' },
  {
    when: 'the width isn’t recorded',
    given: { 'reels/a': 'handling: [{ what: bake, duration: 40 h }]' },
    then: 'fires',
    severity: 'note',
  },
  { when: 'quarter inch was baked for 12 hours', given: bake('12 h', '1/4 in'), then: 'silent' },
  { when: 'wide tape was baked for 36 hours, as the study allows', given: bake('36 h', '2 in'), then: 'silent' },
  {
    when: 'nobody recorded for how long',
    given: { 'reels/a': 'format: { width: 1/4 in }\nhandling: [{ what: bake, temperature: 50 °C }]' },
    then: 'silent',
  },
  {
    when: 'a transfer took a long day',
    given: { 'reels/a': 'format: { width: 1/4 in }\nhandling: [{ what: transfer, duration: 14 h }]' },
    then: 'silent',
  },
]);
