import type { BenchRow } from './row.ts';

const HEAD = ['work', 'size', 'seconds', 'floor', 'ratio', 'goal', 'cpu ratio', 'peak MiB', ''];

/** Rows as a table for the eye; a ratio over its goal is marked. */
export function tableOf(rows: readonly BenchRow[]): string {
  const cells = rows.map((row) => [
    row.work,
    String(row.size),
    row.seconds.toFixed(2),
    row.floor.toFixed(2),
    row.ratio.toFixed(3),
    String(row.goal),
    row.cpu_ratio?.toFixed(2) ?? '',
    String(row.peak_MiB),
    row.ratio > row.goal ? 'over its goal' : '',
  ]);
  const all = [HEAD, ...cells];
  const widths = HEAD.map((_, column) => Math.max(...all.map((line) => line[column]?.length ?? 0)));
  return all
    .map((line) => line.map((cell, at) => (at === 0 ? cell.padEnd(widths[at] ?? 0) : cell.padStart(widths[at] ?? 0))))
    .map((line) => line.join('  ').trimEnd())
    .join('\n');
}
