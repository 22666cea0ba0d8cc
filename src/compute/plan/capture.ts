/** What a transfer is captured as. Published advice first, then practice. */
export const CAPTURE: readonly { readonly says: string; readonly source: string }[] = [
  {
    says: '48 kHz and 24 bit at the least; 96 kHz and 24 bit is what archives have widely adopted',
    source: 'IASA-TC 03 section 10; IASA-TC 04 (2nd ed.) section 2 says the same (from memory)',
  },
  { says: 'WAV or Broadcast Wave (BWF), with no data reduction', source: 'IASA-TC 03 section 10' },
  {
    says: 'flat: no noise removal, no equaliser beyond the replay curve, the whole tape with tones, gaps and leader',
    source: 'common practice, no source',
  },
  {
    says: 'a SHA-256 of each file the same day, and two copies in two places before the tape goes home',
    source: 'common practice, no source',
  },
];

/** When it squeals. */
export const AT_THE_FIRST_SQUEAL: readonly string[] = [
  'Stop at once: squeal, drag, or dust on a guide is the coat coming off.',
  'Don’t rewind, don’t wind on, don’t try again. Lift the tape off by hand and leave the pack as it lies.',
  'Write down where it stopped and what was seen. Cool air, slower speed or a wipe are for someone who does this weekly.',
];
