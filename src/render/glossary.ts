/** The trade's words as these sheets use them. Common usage, from memory, where no source is named. */
export interface Term {
  /** The anchor on the page. */
  readonly slug: string;
  readonly word: string;
  readonly means: string;
}

/** Sorted by word. */
export const TERMS: readonly Term[] = [
  {
    slug: 'acetate',
    word: 'acetate',
    means:
      'A base film of cellulose acetate, used until about the early 1970s. It is brittle, gives off acid as it decays (a vinegar smell), and must never be baked.',
  },
  {
    slug: 'azimuth',
    word: 'azimuth',
    means:
      'The angle of the head’s gap to the tape. Set wrong, the treble of a stereo or full-track tape is lost; tones on the tape are there to set it by.',
  },
  {
    slug: 'back-coat',
    word: 'back coat',
    means:
      'A thin, usually black and matt layer on the side of the tape away from the heads. It helps a pack to wind evenly; many tapes that shed have one.',
  },
  {
    slug: 'bake',
    word: 'bake',
    means:
      'Long, gentle, controlled heating of a tape whose binder has taken up water, so that it plays for a while. For someone who has done it before; never for acetate or paper, nor for a base that isn’t known.',
  },
  {
    slug: 'base',
    word: 'base',
    means:
      'The film that carries everything else: polyester, acetate, PVC or paper. It decides how a tape breaks, shrinks and ages.',
  },
  {
    slug: 'binder',
    word: 'binder',
    means:
      'What holds the magnetic particles to the base. Some take up water from the air over the years and come off on the heads.',
  },
  {
    slug: 'copy-log',
    word: 'copy log',
    means: 'The list, on a master’s own box, of the copies run off from it: date, for whom, speed, remarks.',
  },
  {
    slug: 'copy-master',
    word: 'copy master',
    means: 'A copy made so that another plant or an affiliate abroad can cut from it.',
  },
  {
    slug: 'cut',
    word: 'cut',
    means: 'One lacquer made from a tape. Cuts of a side are counted by the dash number: the 3 of -3.',
  },
  { slug: 'cutting-master', word: 'cutting master', means: 'The tape that discs are actually cut from.' },
  { slug: 'dash-number', word: 'dash number', means: 'The figure after the matrix number that says which cut it is.' },
  { slug: 'edition', word: 'edition', means: 'A record or a cassette that was made from the reels, as it was sold.' },
  {
    slug: 'entry',
    word: 'entry',
    means: 'One file of this collection: a reel, an edition, a machine, a stock, a place, a person, a note.',
  },
  {
    slug: 'equalisation',
    word: 'equalisation',
    means:
      'The curve by which treble (and bass) was raised in recording and must be lowered in replay, given by one or two time constants in microseconds. A tape played on another curve sounds too bright or too dull by a known amount.',
  },
  {
    slug: 'generation',
    word: 'generation',
    means: 'How many copyings a tape is from the first: the first tape with a programme is 1, a copy of it 2.',
  },
  {
    slug: 'half-speed',
    word: 'half speed',
    means:
      'Cutting with tape and lathe both at half their speed, for a better top end. The tape then needs double its time constants.',
  },
  { slug: 'hub', word: 'hub', means: 'The core that tape is wound on. With flanges on it, it is a reel.' },
  {
    slug: 'lacquer',
    word: 'lacquer',
    means: 'The soft disc that a groove is cut into, from which the metal parts for pressing are grown.',
  },
  {
    slug: 'leader',
    word: 'leader',
    means: 'Tape without magnetic coating, at an end or between titles, to thread by or to find a title by eye.',
  },
  { slug: 'legend', word: 'legend', means: 'The sheet in or on the box: contents, times, technical notes.' },
  {
    slug: 'level',
    word: 'level',
    means: 'The reference fluxivity that the tape was lined up to, in nanowebers a metre.',
  },
  { slug: 'lineage', word: 'lineage', means: 'What was copied from what, from the first tape to the record.' },
  {
    slug: 'matrix-number',
    word: 'matrix number',
    means:
      'The number of one side’s cut, on the box and in the run-out of the record. A catalogue number is what the whole was sold under.',
  },
  {
    slug: 'noise-reduction',
    word: 'noise reduction',
    means:
      'A system that changes the sound in recording and must undo it in replay. Unless it is undone, the tape doesn’t sound as it should; “none” has to be known, not supposed.',
  },
  {
    slug: 'original-master',
    word: 'original master',
    means: 'The tape that a programme was mixed to; the first with this programme.',
  },
  {
    slug: 'pack',
    word: 'pack',
    means: 'The tape as it is wound: its diameter, its hub, and whether the head or the tail is outside.',
  },
  {
    slug: 'pancake',
    word: 'pancake',
    means:
      'A pack on a bare hub, without flanges, to save freight. Nothing holds its edges: lift it flat, with the whole pack supported.',
  },
  {
    slug: 'print-through',
    word: 'print-through',
    means: 'Sound magnetised from one turn of a pack into the next: an echo before or after loud passages.',
  },
  {
    slug: 'production-master',
    word: 'production master',
    means: 'The tape assembled from the original masters and approved, side by side with the record.',
  },
  {
    slug: 'reading',
    word: 'reading',
    means: 'What a photograph shows, letter by letter, with how sure the reader was.',
  },
  {
    slug: 'reel',
    word: 'reel',
    means: 'One tape as an object that is kept: tape, carrier and box, whether it has flanges or not.',
  },
  {
    slug: 'run-out',
    word: 'run-out',
    means:
      'The groove after a side’s last title; the numbers, initials and signs etched beside it; and any sound in it.',
  },
  {
    slug: 'running-master',
    word: 'running master',
    means: 'The tape that duplicating machines run to make cassettes, many times faster than it plays.',
  },
  { slug: 'safety-copy', word: 'safety copy', means: 'A copy kept against loss of its parent.' },
  {
    slug: 'shedding',
    word: 'shedding',
    means:
      'Oxide or back coat coming off on guides and heads. Stop at once: each turn takes some of the recording with it.',
  },
  {
    slug: 'splice',
    word: 'splice',
    means: 'A join in the tape, made with adhesive tape, which dries out or creeps with the years.',
  },
  {
    slug: 'sticky',
    word: 'sticky',
    means: 'Of a binder that has taken up water: the tape squeals, drags and leaves itself on the heads.',
  },
  { slug: 'stock', word: 'stock', means: 'A maker’s type of tape: base, binder, back coat, thickness.' },
  {
    slug: 'tail-out',
    word: 'tail out',
    means:
      'Wound with the end of the programme outside, so that the tape is wound back before it is played. It lies more evenly that way, and print-through falls behind the sound.',
  },
  {
    slug: 'tones',
    word: 'tones',
    means: 'Steady notes at the head of a tape, to line the machine up by: level, azimuth, treble, bass.',
  },
  {
    slug: 'tracks',
    word: 'tracks',
    means:
      'How the width of the tape is divided: full-track, half-track, two-track, quarter-track. A head for one misses part of another, or picks up what belongs to the other direction.',
  },
];
