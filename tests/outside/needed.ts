import { spawnSync } from 'node:child_process';

/** The programs that these tests ask, and the Debian package of each. */
const NEEDED = [
  { program: 'age', asks: ['--version'], debian: 'age' },
  { program: 'script', asks: ['--version'], debian: 'bsdutils' },
  { program: 'exiftool', asks: ['-ver'], debian: 'libimage-exiftool-perl' },
  { program: 'ssconvert', asks: ['--version'], debian: 'gnumeric' },
] as const;

/** Throws, naming what to install, when a program isn't there: without it nothing here is shown to hold. */
export function askForPrograms(): void {
  const missing = NEEDED.filter(({ program, asks }) => spawnSync(program, [...asks]).status !== 0);
  if (missing.length === 0) return;
  throw new Error(
    `These tests need ${missing.map(({ program }) => program).join(' and ')}. On Debian: apt-get install ${NEEDED.map(({ debian }) => debian).join(' ')}`,
  );
}
