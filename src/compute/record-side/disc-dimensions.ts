import { inches, type Millimetres, millimetres } from '#model/units.ts';

export interface DiscDimension {
  readonly what: string;
  readonly diameterMm: Millimetres;
  readonly source: string;
}

const NOTE =
  '"Note on Record Specifications", quoting IEC 98-1958 and -1964, IEC 60098 (1987) clause 8.5, DIN 45537-1962, DIN 45547-1981';
const TABLE = '"Comparative Table of Standards for 30 cm LP"';
const JIS = 'JIS S 8502-1973, dimension table';

/** Where a record's groove may begin and end. The sources differ by some millimetres; all are shown. */
export const DISC_DIMENSIONS: readonly DiscDimension[] = [
  {
    what: 'outermost recorded groove, 12 in (IEC 98-1958; RIAA 1963: at most 11½ in)',
    diameterMm: inches(11.5),
    source: NOTE,
  },
  {
    what: 'recorded surface, 30 cm, outside (IEC 98-1964, IEC 60098-1987, DIN)',
    diameterMm: millimetres(292.6),
    source: NOTE,
  },
  { what: 'music groove begins inside, 30 cm (JIS 1973)', diameterMm: millimetres(293), source: JIS },
  { what: 'recorded surface, 25 cm, outside (IEC 60098-1987)', diameterMm: millimetres(241.8), source: NOTE },
  { what: 'recorded surface, 17 cm, outside (IEC 60098-1987)', diameterMm: millimetres(168.3), source: NOTE },
  { what: 'innermost recorded groove, 12 in (RIAA 1963: at least 4¾ in)', diameterMm: inches(4.75), source: TABLE },
  {
    what: 'innermost recorded groove (IEC 98-1958, doubted for commercial records)',
    diameterMm: millimetres(120),
    source: TABLE,
  },
  { what: 'music groove ends outside (JIS 1973)', diameterMm: millimetres(115.2), source: JIS },
  { what: 'inmost recorded groove (DIN 45547-1981)', diameterMm: millimetres(115), source: NOTE },
  { what: 'finishing groove, ± 0.8 mm (IEC 1964 to 1987, DIN, BS)', diameterMm: millimetres(106.4), source: TABLE },
];

/** Width of the band between two diameters, in mm. Source: (outer − inner) / 2. */
export const bandWidth = (outerMm: Millimetres, innerMm: Millimetres): Millimetres =>
  millimetres((outerMm - innerMm) / 2);

/** The widest band of a 12 in side, 11½ to 4¾ in: 85.7 mm; up to 88.8 mm between the other sources' limits. */
export const WIDEST_BAND_MM = bandWidth(inches(11.5), inches(4.75));

/** A cutting lathe runs within this of its speed, so a side's stated length and a stopwatch may differ by 6 s in 20 min
 * with nothing wrong. Source: IEC 60098:2020 section 5.6. */
export const RECORDING_SPEED_TOLERANCE_PERCENT = 0.5;
