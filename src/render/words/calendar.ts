import type { CalendarEvent } from '#model/calendar-event.ts';
import type { Day } from '#model/dates.ts';

const MOST_OCTETS = 75;

/** A calendar file of events, by RFC 5545: lines end in CR LF and are folded at 75 octets, text is escaped. A time is on
 * the clock of the place, with no zone (section 3.3.5, form 1). The stamp is the catalogue's day, so that the same
 * catalogue gives the same bytes.
 * Source: RFC 5545 sections 3.1, 3.3.5, 3.3.11, 3.6.1. */
export function calendarText(events: readonly CalendarEvent[], today: Day): string {
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Tailout//Calendar//EN',
    'CALSCALE:GREGORIAN',
    ...events.flatMap((event) => eventLines(event, today)),
    'END:VCALENDAR',
  ];
  return lines.map((line) => `${folded(line)}\r\n`).join('');
}

function eventLines({ uid, summary, description, from, until }: CalendarEvent, today: Day): readonly string[] {
  return [
    'BEGIN:VEVENT',
    `UID:${escaped(uid)}@tailout.invalid`,
    `DTSTAMP:${compact(today)}T000000Z`,
    from.includes('T') ? `DTSTART:${compact(from)}00` : `DTSTART;VALUE=DATE:${compact(from)}`,
    ...(until === undefined ? [] : [`DTEND:${compact(until)}00`]),
    `SUMMARY:${escaped(summary)}`,
    ...(description === '' ? [] : [`DESCRIPTION:${escaped(description)}`]),
    'TRANSP:TRANSPARENT',
    'END:VEVENT',
  ];
}

const compact = (time: string) => time.replace(/[-:]/g, '');

/** Control characters have no place in a calendar's text; a line break is written as one. */
const escaped = (text: string): string =>
  text
    .replace(/[\\;,]/g, (character) => `\\${character}`)
    .replace(/\r\n|\r|\n/g, '\\n')
    .replace(/(?!\t)\p{Cc}/gu, '');

/** Longer lines go on in the next one, behind a space; no character is cut in two. */
function folded(line: string): string {
  const parts: string[] = [];
  let part = '';
  let octets = 0;
  for (const character of line) {
    const size = octetsOf(character);
    // The space that a folded line begins with counts.
    if (octets + size > MOST_OCTETS - (parts.length > 0 ? 1 : 0)) {
      parts.push(part);
      part = '';
      octets = 0;
    }
    part += character;
    octets += size;
  }
  return [...parts, part].join('\r\n ');
}

function octetsOf(character: string): number {
  const code = character.codePointAt(0) ?? 0;
  if (code < 0x80) return 1;
  if (code < 0x800) return 2;
  return code < 0x10000 ? 3 : 4;
}
