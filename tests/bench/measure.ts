import { spawn } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';

export interface Run {
  readonly seconds: number;
  /** Of the process and all that it started, at its highest; 0 where /proc isn't there to ask. */
  readonly peakMiB: number;
  /** Processor time of the whole tree, as last seen; 0 likewise. */
  readonly cpuSeconds: number;
  readonly exit: number;
  readonly out: string;
  readonly err: string;
}

/** Runs a command as a user would, and says how long it took and how much memory the whole tree of processes held. */
export function measure(
  command: string,
  args: readonly string[],
  cwd: string,
  env: NodeJS.ProcessEnv = process.env,
): Promise<Run> {
  return new Promise((resolve, reject) => {
    const started = process.hrtime.bigint();
    const child = spawn(command, [...args], { cwd, env, stdio: ['ignore', 'pipe', 'pipe'] });
    let peak = 0;
    let cpu = 0;
    let out = '';
    let err = '';
    child.stdout.on('data', (chunk: Buffer) => {
      out += chunk.toString();
    });
    child.stderr.on('data', (chunk: Buffer) => {
      err += chunk.toString();
    });
    const sampler = setInterval(() => {
      if (child.pid === undefined) return;
      const tree = treeOf(child.pid);
      peak = Math.max(peak, tree.mib);
      cpu = Math.max(cpu, tree.cpuSeconds);
    }, 50);
    child.on('error', reject);
    child.on('close', (code) => {
      clearInterval(sampler);
      const seconds = Number(process.hrtime.bigint() - started) / 1e9;
      resolve({ seconds, peakMiB: Math.round(peak), cpuSeconds: cpu, exit: code ?? -1, out, err });
    });
  });
}

/** Clock ticks a second, which Linux has fixed at 100 for what it tells programs (proc(5)). */
const TICKS = 100;

/** Resident memory and processor time of a process and everything below it, from Linux's /proc. */
function treeOf(root: number): { mib: number; cpuSeconds: number } {
  let pids: string[];
  try {
    pids = readdirSync('/proc').filter((name) => /^\d+$/.test(name));
  } catch {
    return { mib: 0, cpuSeconds: 0 };
  }
  const parents = new Map<number, number>();
  const residentKiB = new Map<number, number>();
  const ticks = new Map<number, number>();
  for (const pid of pids) {
    try {
      const status = readFileSync(`/proc/${pid}/status`, 'utf8');
      parents.set(Number(pid), Number(/^PPid:\s+(\d+)/m.exec(status)?.[1] ?? 0));
      // Own time and that of children that have ended; the program's name may hold anything, so from behind it.
      const stat = readFileSync(`/proc/${pid}/stat`, 'utf8');
      const times = stat
        .slice(stat.lastIndexOf(')') + 2)
        .split(' ')
        .slice(11, 15);
      ticks.set(
        Number(pid),
        times.reduce((sum, time) => sum + Number(time), 0),
      );
      residentKiB.set(Number(pid), Number(/^VmRSS:\s+(\d+)/m.exec(status)?.[1] ?? 0));
    } catch {
      // It ended while we looked.
    }
  }
  const within = (pid: number): boolean =>
    pid === root || (parents.has(pid) && pid > 1 && within(parents.get(pid) ?? 0));
  let kib = 0;
  let tick = 0;
  for (const [pid, size] of residentKiB) {
    if (!within(pid)) continue;
    kib += size;
    tick += ticks.get(pid) ?? 0;
  }
  return { mib: kib / 1024, cpuSeconds: tick / TICKS };
}
