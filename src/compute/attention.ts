import type { Attention, ReelSheet } from '#model/catalogue.ts';
import { byText, type Diagnostic } from '#model/diagnostic.ts';

/** Codes whose cost is the tape itself; they come before what only disagrees. */
const RISK_AREAS = new Set(['bake', 'condition', 'climate', 'stock']);

/** Rules whose finding, unless it was seen or heard, rests on how the tape lies ready for use: a tape kept head out loses
 * nothing by it, and many are. It stands on the reel's page and among the notes, and asks for nothing first. */
const USUAL_IN_USE = new Set(['print-through']);

/** What needs attention first among held reels: unaccepted warnings and at-risk findings; risk to the tape first,
 * then by reel and code. */
export function gatherAttention(sheets: readonly ReelSheet[]): readonly Attention[] {
  const here = sheets.filter(({ reel }) => reel.status.value === 'held' || reel.status.value === 'lent');
  const files = new Set(here.map(({ reel }) => reel.file));
  const lines = here.flatMap((sheet) => [...warningsOf(sheet, files), ...risksOf(sheet)]);
  return lines.sort(
    (a, b) =>
      Number(b.risk) - Number(a.risk) ||
      byText(a.reel, b.reel) ||
      byText(a.code, b.code) ||
      byText(a.message, b.message),
  );
}

/** A warning that stands in the entry of a reel that isn't here, such as a missing side, is told with the first reel
 * that is. */
function warningsOf(sheet: ReelSheet, here: ReadonlySet<string>): Attention[] {
  const toldWith = ({ place, related }: Diagnostic) =>
    [place.file, ...related.map((one) => one.place.file)].find((file) => here.has(file));
  return sheet.problems
    .filter((problem) => problem.severity === 'warning' && toldWith(problem) === sheet.reel.file)
    .map((problem) => attentionOf(problem, sheet.reel.id));
}

function attentionOf(problem: Diagnostic, reel: string): Attention {
  const risk = RISK_AREAS.has(problem.code.split('/')[0] ?? '');
  return { code: problem.code, reel, message: problem.message, action: problem.action, risk };
}

/** A risk that a warning already tells under the rule's own code is not told twice. */
function risksOf(sheet: ReelSheet): Attention[] {
  const told = new Set(
    sheet.problems.filter((problem) => problem.severity === 'warning').map((problem) => problem.code),
  );
  return sheet.findings
    .filter(
      ({ rule, outcome, observed }) =>
        outcome === 'at-risk' && !told.has(`condition/${rule}`) && (observed || !USUAL_IN_USE.has(rule)),
    )
    .map((finding) => ({
      code: `condition/${finding.rule}`,
      reel: sheet.reel.id,
      message: finding.because,
      action: finding.action,
      risk: true,
    }));
}
