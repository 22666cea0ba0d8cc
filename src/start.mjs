// The door to every command. Plain JavaScript, so that an old Node gets a sentence and not a stack.
import { spawnSync } from 'node:child_process';
import module, { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const NEEDED = 24;
const [name = '', ...rest] = process.argv.slice(2);
const here = dirname(fileURLToPath(import.meta.url));

if (Number(process.versions.node.split('.')[0]) < NEEDED) {
  const own = packagedNode();
  if (own === undefined) {
    process.stderr.write(
      `This needs Node ${NEEDED} or newer; this is Node ${process.versions.node}. Run "npm ci" here, or install Node ${NEEDED}.\n`,
    );
    process.exit(2);
  }
  const run = spawnSync(own, [fileURLToPath(import.meta.url), name, ...rest], { stdio: 'inherit' });
  process.exit(run.status ?? 3);
}

// Taking the types out of the program and compiling it is half of a short command. What came of it is kept for the next
// one; where nothing can be written, nothing is kept.
module.enableCompileCache?.(join(here, '..', '.cache', 'compiled'));
const { runCommand } = await import(new URL('./commands/run.ts', import.meta.url).href);
process.exitCode = await runCommand(name, rest);

/** The Node that npm ci brought, resolved as a package: on Windows the link in .bin can't be started directly. */
function packagedNode() {
  const require = createRequire(join(here, 'start.mjs'));
  const windows = process.platform === 'win32';
  const packageName = `node-${windows ? 'win' : process.platform}-${process.arch}`;
  try {
    const folder = dirname(require.resolve(`${packageName}/package.json`));
    return join(folder, 'bin', windows ? 'node.exe' : 'node');
  } catch {
    return undefined;
  }
}
