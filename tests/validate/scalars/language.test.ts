import { expect, test } from 'vitest';
import { parseLanguage } from '#validate/scalars/language.ts';

// Source: RFC 5646, appendix A, examples of language tags; section 2.1.1 for the case of letters.
test.each([
  ['de', 'de'],
  ['en-US', 'en-US'],
  ['EN-us', 'en-US'],
  ['zh-Hant', 'zh-Hant'],
  ['de-DE-1996', 'de-DE-1996'],
  ['es-419', 'es-419'],
])('%s is a language', (text, tag) => expect(parseLanguage(text)).toEqual({ ok: true, value: tag }));

// The first three: RFC 5646, appendix A, tags that are no tags.
test.each([
  'de-419-DE',
  'a-DE',
  'ar-a-aaa-b-bbb-a-ccc',
  'English',
  'none',
  '',
  'en "><script>',
  'en_GB',
  'zh-cmn-Hans-CN-x-abcdefgh-abcdefgh',
])('%s is none', (text) => expect(parseLanguage(text)).toMatchObject({ ok: false }));
