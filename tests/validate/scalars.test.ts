import { describe, expect, test } from 'vitest';
import { parseDuration } from '#validate/scalars/duration.ts';
import { parseEqualisation } from '#validate/scalars/equalisation.ts';
import { parseFileName } from '#validate/scalars/file-name.ts';
import { parseFrequency } from '#validate/scalars/frequency.ts';
import { parseHumidity } from '#validate/scalars/humidity.ts';
import { parseLevel } from '#validate/scalars/level.ts';
import { parseLocalTime } from '#validate/scalars/local-time.ts';
import { parseMoney } from '#validate/scalars/money.ts';
import type { Parsed } from '#validate/scalars/parsed.ts';
import { parsePersonRef } from '#validate/scalars/person-ref.ts';
import { parseRegion } from '#validate/scalars/region.ts';
import { parseRpm } from '#validate/scalars/rpm.ts';
import { parseSize } from '#validate/scalars/size.ts';
import { parseSpeed } from '#validate/scalars/speed.ts';
import { parseTapeLength } from '#validate/scalars/tape-length.ts';
import { parseTemperature } from '#validate/scalars/temperature.ts';
import { parseThickness } from '#validate/scalars/thickness.ts';
import { parseTimeConstant } from '#validate/scalars/time-constant.ts';
import { parseYesNo } from '#validate/scalars/yes-no.ts';
import { rowOf, rowsOf } from './published-rows.ts';

function value<T>(answer: Parsed<T>): T {
  if (!answer.ok) throw new Error(answer.message);
  return answer.value;
}

/** Message and action together; fails if the text was read. */
function refusal(answer: Parsed<unknown>): string {
  if (answer.ok) throw new Error(`was read as ${JSON.stringify(answer.value)}`);
  expect(answer.expected).not.toBe('');
  return `${answer.message} ${answer.action}`;
}

describe('speeds', () => {
  test.each(rowsOf('units').filter(({ inputs }) => 'speed' in inputs))('$id: $title', ({ inputs, expected }) => {
    expect(value(parseSpeed(String(inputs['speed']))) / 10).toBeCloseTo(Number(expected['speed_cm_per_s']), 4);
  });

  // A label's rounded cm/s mean the exact nominal speed: 1 in = 25.4 mm. Common practice, no source.
  test.each([
    ['76 cm/s', 762],
    ['76.2 cm/s', 762],
    ['38 cm/s', 381],
    ['19 cm/s', 190.5],
    ['9.5 cm/s', 95.25],
    ['4.75 cm/s', 47.625],
    ['30 ips', 762],
    ['7½ in/s', 190.5],
    ['7 1/2 ips', 190.5],
    ['3¾ in/s', 95.25],
    ['1⅞ in/s', 47.625],
    ['15in/s', 381],
    ['20 cm/s', 200],
  ])('%s is %d mm/s', (text, mmPerS) => expect(value(parseSpeed(text))).toBeCloseTo(mmPerS, 9));

  test.each([
    ['30', '30 in/s or 30 cm/s'],
    ['30 kg', 'in/s or cm/s'],
    ['7,5 in/s', '7.5 in/s'],
    ['0 in/s', 'Leave the key out'],
    ['30 in/s fast', 'in/s or cm/s'],
    ['-15 in/s', 'a number and its unit'],
    ['about 15 in/s', 'a number and its unit'],
    ['', 'a number and its unit'],
  ])('%j is refused: %s', (text, says) => expect(refusal(parseSpeed(text))).toContain(says));
});

describe('sizes', () => {
  test.each(rowsOf('units').filter(({ inputs }) => 'written' in inputs))('$id: $title', ({ inputs, expected }) => {
    expect(value(parseSize(String(inputs['written']))).value).toBeCloseTo(Number(expected['value_mm']), 3);
  });

  test.each([
    ['10 1/2 in', 266.7],
    ['10.5 in', 266.7],
    ['10½in', 266.7],
    ['1/4 in', 6.35],
    ['52 µm', 0.052],
    ['52 μm', 0.052],
    ['52 um', 0.052],
    ['25 cm', 250],
  ])('%s is %d mm', (text, mm) => expect(value(parseSize(text)).value).toBeCloseTo(mm, 9));

  test.each([
    ['260 mm ± 1 mm', 260, 1],
    ['260 ± 1 mm', 260, 1],
    ['260mm +/- 0.5mm', 260, 0.5],
    ['10 in ± 2 mm', 254, 2],
  ])('%s is %d mm, give or take %d', (text, mm, plusMinus) =>
    expect(value(parseSize(text))).toEqual({ value: mm, plusMinus }),
  );

  test.each([
    ['250', '250 in or 250 mm'],
    ['250 ± 1', '1 in or 1 mm'],
    ['1/0 in', 'a number and its unit'],
    ['10 in 5', 'a number and its unit'],
    ['2,500 mm', '2500 mm if the comma sets off thousands, 2.500 mm if it is a decimal comma'],
  ])('%j is refused: %s', (text, says) => expect(refusal(parseSize(text))).toContain(says));
});

describe('thickness', () => {
  test('C-225: a mil is 25.4 µm', () => {
    const { inputs, expected } = rowOf('C-225');
    expect(value(parseThickness(`${inputs['value_mil']} mil`)).value).toBeCloseTo(Number(expected['value_um']), 3);
  });

  test('C-223: 1.5 mil is 38.1 µm, which is the base of a tape of that name and not its total', () => {
    expect(value(parseThickness('1.5 mil')).value).toBeCloseTo(Number(rowOf('C-223').expected['base_um']), 1);
  });

  test('C-224: 0.5 mil is asked about, and both totals are named', () => {
    const says = refusal(parseThickness('0.5 mil'));
    const readings = rowOf('C-224').expected['readings'] as { total_um: number | string; base_um?: number }[];
    for (const { total_um, base_um } of readings) {
      for (const figure of [total_um, base_um ?? total_um]) expect(says).toContain(String(figure).replace('–', ' to '));
    }
  });

  test.each(['C-219', 'C-220', 'C-221', 'C-222'])(
    '%s: the name of a tape is told its base, its total and its reel',
    (id) => {
      const { inputs, expected } = rowOf(id);
      const [, name = '', short = ''] = /^(.*) \((.*)\)$/u.exec(String(inputs['name'])) ?? [];
      const [from, to = from] = String(expected['total_um']).split('–');
      for (const text of [name, short]) {
        const says = refusal(parseThickness(text));
        expect(says).toContain(`base is ${expected['base_um']} µm`);
        expect(says).toContain(from === to ? `about ${from} µm` : `${from} to ${to} µm`);
        expect(says).toContain(`${expected['feetOn7inReel']} ft`);
      }
    },
  );

  test('an error of measurement is kept', () =>
    expect(value(parseThickness('52 µm ± 1 µm'))).toEqual({ value: 52, plusMinus: 1 }));
});

describe('lengths of tape', () => {
  test.each([
    ['2500 ft', 762_000],
    ['2500ft', 762_000],
    ['762 m', 762_000],
  ])('%s is %d mm', (text, mm) => expect(value(parseTapeLength(text))).toBeCloseTo(mm, 6));
  test('2,500 ft is asked about', () => expect(refusal(parseTapeLength('2,500 ft'))).toContain('2500 ft'));
});

describe('durations', () => {
  const texts = rowsOf('durations').filter(({ inputs }) => 'text' in inputs);
  test.each(texts.filter(({ expected }) => 'value_s' in expected))('$id: $title is read', ({ inputs, expected }) => {
    expect(value(parseDuration(String(inputs['text'])))).toBe(expected['value_s']);
  });
  test.each(texts.filter(({ expected }) => !('value_s' in expected)))(
    '$id: $title is refused',
    ({ inputs, expected }) => {
      const says = refusal(parseDuration(String(inputs['text'])));
      for (const form of (expected['suggest'] ?? expected['ask'] ?? []) as string[]) expect(says).toContain(form);
    },
  );

  test.each([
    ['36 h', 129_600],
    ['90 min', 5400],
    ['1 h 6 min 40 s', 4000],
    ['0 s', 0],
    ['0:00', 0],
    ['3.5 s', 3.5],
  ])('%s is %d s', (text, s) => expect(value(parseDuration(text))).toBe(s));

  test.each(['0:75', '1:75:00', '19:4', '', '4:10 approx', ':30', '19 44', 'min'])('%j is refused', (text) => {
    expect(refusal(parseDuration(text))).not.toBe('');
  });
  test('a bare number is asked about', () => expect(refusal(parseDuration('19'))).toContain('19 min or 19 s'));
  test('19.75 is no minutes and seconds, so only decimal minutes are offered', () => {
    expect(refusal(parseDuration('19.75'))).toContain('19.75 min (1185 s)');
  });
});

describe('temperature and humidity', () => {
  test.each(rowsOf('units').filter(({ inputs }) => 'temperature_F' in inputs))(
    '$id: $title',
    ({ inputs, expected }) => {
      expect(value(parseTemperature(`${inputs['temperature_F']} °F`))).toBeCloseTo(
        Number(expected['temperature_C']),
        2,
      );
    },
  );
  test.each([
    ['50 °C', 50],
    ['50 C', 50],
    ['50°C', 50],
    ['50 ℃', 50],
    ['-5 °C', -5],
    ['−5 °C', -5],
  ])('%s is %d °C', (text, c) => expect(value(parseTemperature(text))).toBe(c));
  test.each(['50', '50 K', '-300 °C', '50 °', 'warm'])('%j is refused', (text) =>
    expect(refusal(parseTemperature(text))).not.toBe(''),
  );
  test.each([
    ['45 %', 45],
    ['45%', 45],
    ['45 % RH', 45],
  ])('%s is %d percent', (text, percent) => expect(value(parseHumidity(text))).toBe(percent));
  test.each(['45', '101 %', '0.45'])('%j is refused', (text) => expect(refusal(parseHumidity(text))).not.toBe(''));
});

describe('money', () => {
  test('an amount with its code', () => expect(value(parseMoney('450 GBP'))).toEqual({ amount: 450, currency: 'GBP' }));
  test('a currency of the past', () =>
    expect(value(parseMoney('1200.50 DEM'))).toEqual({ amount: 1200.5, currency: 'DEM' }));
  test('C-551: a sign alone is asked about, with the codes that it can mean', () => {
    const { expected } = rowOf('C-551');
    const says = refusal(parseMoney(String(expected['text'])));
    expect(says).toContain((expected['ask'] as string[])[0]);
    expect(says).toMatch(/which code\?.*[A-Z]{3}, [A-Z]{3}/u);
  });
  test.each(['GBP 450', '450', '450 XYZ', '450 gbp', '-450 GBP', '4,50 GBP'])('%j is refused', (text) => {
    expect(refusal(parseMoney(text))).not.toBe('');
  });
});

describe('regions', () => {
  test('C-528: whole percent are read', () => {
    const text = String(rowOf('C-528').expected['text']);
    expect(value(parseRegion(text))).toEqual({ xPercent: 25, yPercent: 25, widthPercent: 50, heightPercent: 50 });
  });
  test('C-529: decimals are outside the recommendation, and read in entries all the same', () => {
    expect(value(parseRegion(String(rowOf('C-529').expected['text']))).xPercent).toBe(12.5);
  });
  test('C-530: pixels are refused, since they change with the copy', () => {
    expect(refusal(parseRegion(String(rowOf('C-530').expected['text'])))).toContain('pixels');
  });
  test('C-531: past the edge is photo/region-outside', () => {
    const { expected } = rowOf('C-531');
    expect(parseRegion(String(expected['text']))).toMatchObject({ ok: false, code: expected['code'] });
  });
  test('the whole picture is inside', () => expect(parseRegion('xywh=percent:0,0,100,100').ok).toBe(true));
  test.each(['12,40,30,8', 'xywh=percent:12,40,30', 'xywh=percent:-1,0,5,5', 'xywh=percent:0,0,0,5'])(
    '%j is refused',
    (text) => {
      expect(refusal(parseRegion(text))).not.toBe('');
    },
  );
});

describe('curves and time constants', () => {
  test.each(['AES', 'IEC', 'IEC1', 'IEC2', 'NAB', 'CCIR', 'DIN'])('%s is a name', (name) => {
    expect(value(parseEqualisation(name))).toEqual({ is: 'name', name });
  });
  test.each([
    ['3180/50', 3180, 50],
    ['inf/35', Number.POSITIVE_INFINITY, 35],
    ['∞/17.5 µs', Number.POSITIVE_INFINITY, 17.5],
    ['3180 us / 90 us', 3180, 90],
  ])('%s is %d and %d µs', (text, lowUs, highUs) => {
    expect(value(parseEqualisation(text))).toEqual({ is: 'time-constants', lowUs, highUs });
  });
  test.each([
    ['50/3180', '3180/50'],
    ['35', 'inf/35'],
    ['NAB 15', 'leave the key out'],
    ['0/0', 'Look at the curve again'],
  ])('%s is refused: %s', (text, says) => expect(refusal(parseEqualisation(text))).toContain(says));
  test.each([
    ['35us', 35],
    ['35 µs', 35],
    ['3.18 ms', 3180],
    ['inf', Number.POSITIVE_INFINITY],
  ])('%s is %d µs', (text, us) => expect(value(parseTimeConstant(text))).toBe(us));
});

describe('people', () => {
  test.each([
    ['ansel-vekke', { is: 'entry', id: 'ansel-vekke' }],
    ['owner', { is: 'owner' }],
    ['T.K.', { is: 'initials', text: 'T.K.' }],
    ['A dealer in Ostrava', { is: 'text', text: 'A dealer in Ostrava' }],
    ['a friend', { is: 'text', text: 'a friend' }],
  ])('%s', (text, ref) => expect(value(parsePersonRef(text))).toEqual(ref));
  test('none names nobody', () => expect(refusal(parsePersonRef('none'))).toContain('Leave the key out'));
});

describe('the rest', () => {
  test.each([
    ['33⅓ rpm', 100 / 3],
    ['33 1/3 rpm', 100 / 3],
    ['33.333', 100 / 3],
    ['33 rpm', 100 / 3],
    ['45 rpm', 45],
    ['78', 78],
  ])('%s turns at %d', (text, rpm) => expect(value(parseRpm(text))).toBeCloseTo(rpm, 9));
  test('320 nWb/m', () => expect(value(parseLevel('320 nWb/m'))).toBe(320));
  test.each([
    ['1 kHz', 1000],
    ['100 Hz', 100],
    ['10 kc/s', 10_000],
  ])('%s is %d Hz', (text, hz) => expect(value(parseFrequency(text))).toBe(hz));
  test.each([
    ['2026-03-11T22:00', '2026-03-11T22:00'],
    ['2026-03-11 22:00:30', '2026-03-11T22:00'],
  ])('%s is a time on the local clock', (text, time) => expect(value(parseLocalTime(text))).toBe(time));
  test.each(['2026-02-30T10:00', '2026-03-11T25:00', '2026-03-11', '2026-03-11T22:00Z'])(
    '%s is no local time',
    (text) => {
      expect(refusal(parseLocalTime(text))).not.toBe('');
    },
  );
  test.each(['true', '1', 'y'])('%s is neither yes nor no', (text) => expect(refusal(parseYesNo(text))).not.toBe(''));
  test.each(['box-front.jpg', 'details/spine.jpg', '100%.jpg', 'Zoë 1.jpg'])(
    '%s is a file beside the entry',
    (text) => {
      expect(value(parseFileName(text))).toBe(text);
    },
  );
  test.each([
    '../x.jpg',
    '/etc/hostname',
    'a/../../x',
    '%2e%2e/x.jpg',
    '..%2fx.jpg',
    'c:\\x.jpg',
    'C:x.jpg',
    'a\\b',
    '~/x',
    'a//b',
    './a',
    'a\u0000b',
    '.',
  ])('%j leads out of the folder or is no name, and is refused', (text) =>
    expect(refusal(parseFileName(text))).toContain('folder'),
  );
});
