import { readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Diagnostic } from '#model/diagnostic.ts';
import { check } from '../../src/commands/check.ts';

const ROOT = join(import.meta.dirname, '../..');

interface Planted {
  readonly code: string;
  readonly severity: string;
  readonly file: string;
  readonly field: string;
  readonly why: string;
  /** The owner has accepted it, with a reason. */
  readonly accepted?: boolean;
}

/** Written by hand, from the entries: what the program is meant to say of the demo collection, and why. */
const PLANTED = JSON.parse(
  readFileSync(join(ROOT, 'tests/collections/demo-planted.json'), 'utf8'),
) as readonly Planted[];

async function checkDemo(): Promise<{ problems: Diagnostic[]; accepted: { code: string }[]; exit: number }> {
  const out: string[] = [];
  const exit = await check(
    [
      '--collection',
      'collection',
      '--today',
      '2026-11-25',
      '--format',
      'json',
      '--cache',
      join(tmpdir(), 'demo-check'),
    ],
    {
      out: (text) => void out.push(text),
      err: () => {},
      cwd: ROOT,
      now: new Date('2026-11-25T12:00:00Z'),
      env: {},
      terminal: false,
    },
  );
  return { ...JSON.parse(out.join('')), exit };
}

const line = ({ severity, code, file, field }: { severity: string; code: string; file: string; field: string }) =>
  `${severity} ${code} ${file} ${field}`;

describe('the demo collection', () => {
  test('says exactly what was planted in it', async () => {
    const { problems, accepted, exit } = await checkDemo();
    const said = problems.map(({ severity, code, place }) =>
      line({ severity, code, file: place.file, field: place.field ?? '' }),
    );
    expect(said.sort()).toEqual(
      PLANTED.filter((one) => one.accepted !== true)
        .map(line)
        .sort(),
    );
    expect(accepted).toHaveLength(PLANTED.filter((one) => one.accepted === true).length);
    for (const one of PLANTED.filter(({ accepted: isAccepted }) => isAccepted === true))
      expect(accepted).toContainEqual(
        expect.objectContaining({ code: one.code, severity: one.severity, why: expect.stringMatching(/\p{L}/u) }),
      );
    expect(exit).toBe(0);
  });

  test('holds two contradictions, and names the reading that would agree', async () => {
    const { problems } = await checkDemo();
    const of = (code: string) => problems.find((problem) => problem.code === code);
    expect(of('number/sides-differ')).toMatchObject({
      found: 'WQX 4412',
      expected: expect.stringContaining('WQX 4472'),
    });
    expect(of('time/gap-conflict')).toMatchObject({ expected: expect.stringContaining('3 s') });
  });
});
