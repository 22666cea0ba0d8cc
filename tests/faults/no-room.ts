import fs from 'node:fs';
import { syncBuiltinESMExports } from 'node:module';

/** Loaded before a command where no small disk can be made: below one folder, the disk is full after so many files. */
const below = process.env['NO_ROOM_BELOW'] ?? '/nowhere';
let room = Number(process.env['NO_ROOM_AFTER'] ?? 0);

function refuse(path: unknown, flags: unknown = 'w'): void {
  if (!String(path).startsWith(below) || flags === 'r' || typeof flags === 'number') return;
  room -= 1;
  if (room >= 0) return;
  const facts = { code: 'ENOSPC', errno: -28, syscall: 'write', path: String(path) };
  throw Object.assign(new Error(`ENOSPC: no space left on device, write '${path}'`), facts);
}

const { writeFile, mkdir, open, cp, copyFile, mkdtemp } = fs.promises;
Object.assign(fs.promises, {
  writeFile: async (...args: Parameters<typeof writeFile>) => {
    refuse(args[0]);
    await writeFile(...args);
  },
  mkdir: async (...args: Parameters<typeof mkdir>) => {
    refuse(args[0]);
    return await mkdir(...args);
  },
  mkdtemp: async (prefix: string) => {
    refuse(prefix);
    return await mkdtemp(prefix);
  },
  open: async (...args: Parameters<typeof open>) => {
    refuse(args[0], args[1]);
    return await open(...args);
  },
  cp: async (...args: Parameters<typeof cp>) => {
    refuse(args[1]);
    await cp(...args);
  },
  copyFile: async (...args: Parameters<typeof copyFile>) => {
    refuse(args[1]);
    await copyFile(...args);
  },
});
syncBuiltinESMExports();
