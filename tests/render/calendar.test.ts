import ICAL from 'ical.js';
import { expect, test } from 'vitest';
import { day, type LocalTime } from '#model/dates.ts';
import { calendarText } from '#render/words/calendar.ts';

const LONG = `Janela; à prova, de \\ tudo\nsegunda linha ${'ção 𝄞 '.repeat(40)}`;
const TEXT = calendarText(
  [
    { uid: 'look-1', summary: 'Look again', description: '', from: day('2026-04-01') },
    {
      uid: 'bake-1',
      summary: LONG,
      description: LONG,
      from: '2026-04-01T22:00' as LocalTime,
      until: '2026-04-02T08:00' as LocalTime,
    },
  ],
  day('2026-03-20'),
);

test('another program reads the calendar back as it was meant (RFC 5545)', () => {
  const events = new ICAL.Component(ICAL.parse(TEXT)).getAllSubcomponents('vevent').map((one) => new ICAL.Event(one));
  expect(events.map((event) => [event.startDate.toString(), event.startDate.isDate])).toEqual([
    ['2026-04-01', true],
    ['2026-04-01T22:00:00', false],
  ]);
  expect(events[1]?.summary).toBe(LONG);
  expect(events[1]?.endDate.toString()).toBe('2026-04-02T08:00:00');
});

// C-545, C-546: what RFC 5545 compels (sections 3.6, 3.6.1 and 3.7; the second from memory).
test('the calendar and each of its events have what the standard compels', () => {
  const calendar = new ICAL.Component(ICAL.parse(TEXT));
  expect(calendar.getFirstPropertyValue('version')).toBe('2.0');
  expect(calendar.getFirstPropertyValue('prodid')).toBeTruthy();
  for (const event of calendar.getAllSubcomponents('vevent')) {
    for (const name of ['uid', 'dtstamp', 'dtstart']) expect(event.getFirstPropertyValue(name), name).toBeTruthy();
  }
});

// C-156: RFC 5545 section 3.1.
test('its lines end in CR LF and hold at most 75 octets', () => {
  const lines = TEXT.split('\r\n');
  expect(TEXT.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
  expect(Math.max(...lines.map((line) => Buffer.byteLength(line)))).toBeLessThanOrEqual(75);
});
