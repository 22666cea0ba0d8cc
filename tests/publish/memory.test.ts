import { setImmediate as turn } from 'node:timers/promises';
import { expect, test } from 'vitest';
import { clearHeap } from '#publish/memory.ts';

test('clearing the heap lets go of what nobody holds', async () => {
  const held = { at: 'hand' };
  const [kept, dropped] = [new WeakRef(held), new WeakRef({ at: 'nothing' })];
  // What a weak reference was made for stays until the turn ends.
  await turn();
  clearHeap();
  expect(dropped.deref()).toBeUndefined();
  expect(kept.deref()).toBe(held);
});
