import type { Finding } from '#model/finding.ts';

/** Each source once, in the order in which the findings name them. */
export const sourcesOf = (findings: readonly Finding[]): readonly string[] => [
  ...new Set(findings.flatMap((finding) => finding.sources)),
];
