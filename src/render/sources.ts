/** A source that the sheets name, and how far its text was seen when its figures were taken into the program. */
export interface NamedSource {
  /** The anchor on the page. */
  readonly slug: string;
  readonly title: string;
  readonly gives: string;
  readonly seen: string;
}

/** Sorted by title. A figure of the program that none of these gives says “from memory” or “common practice, no source”
 * where it stands. */
export const NAMED_SOURCES: readonly NamedSource[] = [
  {
    slug: 'cutting-chart',
    title: 'a cutting studio’s chart of levels and minutes',
    gives: 'how long a side can be at which level; a trade chart, not a standard',
    seen: 'confirmed',
  },
  {
    slug: 'tape-types',
    title: 'a page on tape types',
    gives: 'what standard, long, double and triple play are, and how much goes on a reel',
    seen: 'confirmed; lengths on 12½ and 14 in reels from memory',
  },
  {
    slug: 'quarter-inch',
    title: 'a restoration engineer’s page on quarter-inch formats; an engineers’ forum on two-track heads',
    gives: 'widths of tracks, heads and guard bands',
    seen: 'confirmed: 75, 82 and 234 mil; a third width is given differently by three sources',
  },
  {
    slug: 'maker-advice',
    title: 'a tape maker’s archiving advice',
    gives: 'climates of archive and studio, and when a tape must take the room’s air first',
    seen: 'confirmed',
  },
  {
    slug: 'trade-column',
    title:
      'a trade column of October 1995, two makers’ engineers; AV Media Matters list, December 1999; reports of 1998 to 2022',
    gives: 'which stocks shed, how they were baked, and what it cost them',
    seen: 'at second hand',
  },
  {
    slug: 'strips',
    title: 'A-D Strips User’s Guide (2001)',
    gives: 'what a level of an acid-detection strip means for acetate',
    seen: 'confirmed',
  },
  {
    slug: 'moldy-audiotape',
    title: 'Abbey Newsletter 21-7 (1997), “Moldy Audiotape”; the same expert on the ARSC list, 3 March 2007',
    gives: 'the humidities under which mould is dormant, how it looks, what to keep away from',
    seen: 'confirmed; the two give different limits, and both are shown',
  },
  {
    slug: 'aes49',
    title: 'AES49-2005, section 4.5.5',
    gives: 'that a bare hub leaves the edges of its pack unheld',
    seen: 'from memory',
  },
  {
    slug: 'arsc-list',
    title: 'ARSC list (Association for Recorded Sound Collections), 2004 to 2016',
    gives:
      'baking as laboratories and libraries did it (June 2005, June 2006), track widths (March 2004, March 2007), what “1.5 mil” names (19 August 2016)',
    seen: 'confirmed; what it quotes of others is at second hand',
  },
  {
    slug: 'bagit',
    title: 'BagIt, RFC 8493',
    gives: 'the form of a bag',
    seen: 'document found; section numbers from memory',
  },
  {
    slug: 'comparative-table',
    title: '“Comparative Table of Standards for 30 cm LP” and “Note on Record Specifications”',
    gives: 'grooved diameters of records by IEC 98 and 60098, DIN 45537 and 45547, BS and RIAA, year by year',
    seen: 'confirmed; itself at second hand, and critical of some figures',
  },
  {
    slug: 'distlist',
    title: 'Conservation DistList 25:9 (2011)',
    gives: 'the lowest temperature of a store by ISO 18923, and by the Media Storage Quick Reference',
    seen: 'confirmed; it quotes both',
  },
  {
    slug: 'edtf',
    title: 'Extended Date/Time Format, 4 February 2019 (ISO 8601-2)',
    gives: 'dates as vague as they need to be',
    seen: 'confirmed',
  },
  {
    slug: 'iasa-tc-03',
    title: 'IASA-TC 03, section 10',
    gives: 'the form that a transfer is captured in',
    seen: 'not noted',
  },
  {
    slug: 'iasa-tc-04',
    title: 'IASA-TC 04, sections 5.3.1.2, 5.4.3 and 5.4.10',
    gives: 'replay curves of tape by speed and year, microgrooves, the restoring of carriers',
    seen: 'confirmed; its figures for baking at second hand, as quoted on the ARSC list, June 2005',
  },
  {
    slug: 'iasa-tc-05',
    title: 'IASA-TC 05, sections 2.2.1.1.4 and 3.3',
    gives: 'the climate of a store, and how much it may change; marks of stocks that shed',
    seen: 'confirmed; the hours of acclimatising that are ascribed to it were not found there',
  },
  {
    slug: 'icalendar',
    title: 'iCalendar, RFC 5545',
    gives: 'the calendar of what falls due',
    seen: 'confirmed',
  },
  {
    slug: 'iec-60094',
    title: 'IEC 60094-1, and the NAB standard of 1965',
    gives: 'the flux on a tape as two time constants, nominal speeds',
    seen: 'as IASA-TC 04 gives them',
  },
  {
    slug: 'iec-60098',
    title: 'IEC 60098:2020, section 5.6',
    gives: 'how exact the speed of a record is',
    seen: 'confirmed in a preview',
  },
  {
    slug: 'iso-18923',
    title: 'ISO 18923:2000, polyester-base magnetic tape, storage practices',
    gives: 'the medium-term and extended-term climates',
    seen: 'as printed in a national archive’s preservation glossary',
  },
  {
    slug: 'jis-8502',
    title: 'JIS S 8502-1973, dimension table',
    gives: 'where the groove of a record begins and ends',
    seen: 'confirmed',
  },
  {
    slug: 'nab-winding',
    title: 'NAB magnetic tape standard, its advice on storing',
    gives: 'that winding before play weakens print-through, and tail out puts the stronger echo after the sound',
    seen: 'at second hand, quoted in a tape maker’s archiving advice',
  },
  {
    slug: 'new-tools',
    title: 'New Tools for Preservation (Commission on Preservation and Access, 1995)',
    gives: 'the comparison of rooms by time, fitted to acetate film',
    seen: 'the formula as a climate program’s documentation prints it, and one value of its table; the other values from memory',
  },
  {
    slug: 'smpte-rp-103',
    title: 'SMPTE RP 103-1995, section 2.1',
    gives: 'the climates of stores up to ten years, and over',
    seen: 'as printed in a national archive’s preservation glossary',
  },
  {
    slug: 'ramp',
    title: 'UNESCO RAMP study r9704e, recovery of magnetic tape',
    gives: 'a tape maker’s advice on baking, and on the time to copy in',
    seen: 'at second hand',
  },
  {
    slug: 'wmo-8',
    title: 'WMO-No. 8, Annex 4.B',
    gives: 'the dew point from temperature and humidity, over water',
    seen: 'not noted; its figures agree with a psychrometric program and with a weather station’s own',
  },
];
