import { expect, test } from 'vitest';
import { withPlainEnvironment } from '#read/plain-environment.ts';

test('the environment says the same within, and is the real one again behind it', () => {
  const before = process.env;
  const within = withPlainEnvironment(() => process.env);
  expect(within).not.toBe(before);
  expect(within).toEqual({ ...before });
  expect(process.env).toBe(before);
});

test('the real environment is put back when the work fails', () => {
  const before = process.env;
  const failing = () => {
    throw new Error('no folder');
  };
  expect(() => withPlainEnvironment(failing)).toThrow('no folder');
  expect(process.env).toBe(before);
});
