import { createHash } from 'node:crypto';
import { csvText } from '#compute/interchange/spreadsheet-text.ts';
import type { Catalogue } from '#model/catalogue.ts';
import { valueOf } from '#model/fact.ts';
import { withoutTurns } from '#model/turned-text.ts';
import { html, type Markup } from '#render/markup.ts';
import { type Schedule, type ScheduleItem, scheduleOf } from '#render/views/schedule.ts';
import { totalLines, WHAT_FIGURES_MEAN } from '#render/views/schedule-words.ts';
import { dayWords } from '#render/words/date.ts';
import { moneyWords } from '#render/words/money.ts';
import type { Exported } from './export-file.ts';

/** The insurer's schedule: `schedule.csv`, and `schedule.html` to print on A4, which stands by itself. */
export function scheduleExport(catalogue: Catalogue): Exported {
  const schedule = scheduleOf(catalogue);
  return {
    files: new Map([
      ['schedule.csv', csvText(rowsOf(schedule))],
      ['schedule.html', withoutTurns(pageOf(schedule, catalogue))],
    ]),
    leavesOut: [
      'where the reels are kept, what was paid, from whom they came, and the evidence for it',
      'photographs: they are counted, and stay with you',
      'reels that aren’t held or lent',
      'everything that isn’t on the sheet: a sealed dossier for the insurer carries condition and format too',
    ],
  };
}

const HEAD = [
  'No.',
  'Item',
  'Numbers',
  'What it is',
  'Condition',
  'How got',
  'Since',
  'Photographs',
  'Value',
  'Currency',
  'By whose word',
  'On',
  'Basis',
];

const CONDITION: Readonly<Record<ScheduleItem['condition'], string>> = {
  'at-risk': 'at risk',
  'not-recorded': 'not recorded',
  clear: 'clear',
};

function rowsOf({ items, totals }: Schedule): readonly (readonly string[])[] {
  return [
    HEAD,
    ...items.map((item, at) => [
      String(at + 1),
      item.title,
      item.numbers.join('; '),
      item.kind,
      `${CONDITION[item.condition]}${item.conditionWords === '' ? '' : `: ${item.conditionWords}`}`,
      item.howGot,
      item.since,
      String(item.photographs),
      item.value === undefined ? '' : String(item.value.amount),
      item.value?.currency ?? '',
      item.byWhom,
      item.on,
      item.basis,
    ]),
    ...totals.map(({ currency, sum, items: count }) => [
      '',
      `Total of ${count} with a figure in ${currency}`,
      '',
      '',
      '',
      '',
      '',
      '',
      String(sum),
      currency,
      '',
      '',
      '',
    ]),
  ];
}

const STYLE = `@page{size:A4 landscape;margin:12mm}
body{font:9pt/1.35 Georgia,'Times New Roman',serif;color:#111;background:#fff;margin:0 auto;max-width:273mm}
h1{font-size:17pt;margin:0}h2{font-size:11pt;margin:6mm 0 1mm}
p{margin:1mm 0}.paid{color:#444}
table{border-collapse:collapse;width:100%}thead{display:table-header-group}tr{break-inside:avoid}
th,td{text-align:left;vertical-align:top;padding:1.2mm 2mm 1.2mm 0;border-bottom:.25mm solid #999}
thead th{border-bottom:.5mm solid #111;font-size:8pt}tbody th{font-weight:400}.r{text-align:right;white-space:nowrap}
.n{font-family:'Courier New',monospace;font-size:8.5pt}tfoot th,tfoot td{font-weight:700;border-bottom:0}
.sign{display:flex;gap:10mm;margin-top:14mm}.sign p{flex:1;border-top:.3mm solid #111;font-size:8pt}
ul{margin:0;padding-left:4mm}`;

function pageOf(schedule: Schedule, catalogue: Catalogue): string {
  const name = valueOf(catalogue.entries.collection.title) ?? 'The tapes';
  const language = valueOf(catalogue.entries.collection.language) ?? 'en';
  // The page may load nothing at all, and has no style but this one.
  const policy = `default-src 'none'; style-src 'sha256-${createHash('sha256').update(STYLE).digest('base64')}'`;
  const body = html`<h1>Schedule of studio tapes</h1>
<p>${name}. As at ${dayWords(catalogue.today)}. From the owner; ${schedule.items.length} held or lent.</p>
<table><thead><tr><th scope="col">No.</th><th scope="col">Item</th><th scope="col">What it is</th><th scope="col">Condition</th><th scope="col">How got, since</th><th scope="col">Photographs</th><th scope="col" class="r">Value</th><th scope="col">By whose word</th></tr></thead>
<tbody>
${schedule.items.map(rowHtml)}</tbody>
<tfoot>
${totalLines(schedule).map(
  ([words, sum]) => html`<tr><td></td><th scope="row" colspan="5">${words}</th><td class="r">${sum}</td><td></td></tr>
`,
)}</tfoot></table>
<h2>What the figures mean</h2>
<ul>${WHAT_FIGURES_MEAN.map((line) => html`<li>${line}</li>`)}</ul>
<div class="sign"><p>Place and date</p><p>The owner</p><p>For the insurer</p></div>`;
  return `<!doctype html>
${html`<html lang="${language}"><head><meta charset="utf-8"><meta http-equiv="Content-Security-Policy" content="${policy}"><meta name="viewport" content="width=device-width,initial-scale=1"><meta name="robots" content="noindex"><title>${`Insurer’s schedule · ${name}`}</title>`}<style>${STYLE}</style></head><body>
${body}
</body></html>
`;
}

const rowHtml = (
  item: ScheduleItem,
  at: number,
): Markup => html`<tr><td>${at + 1}</td><th scope="row">${item.title}<br><span class="n">${item.numbers.join(', ')}</span></th><td>${item.kind || 'not recorded'}</td><td>${CONDITION[item.condition]}${item.conditionWords === '' ? '' : `: ${item.conditionWords}`}</td><td>${[item.howGot, item.since].filter((word) => word !== '').join(', ') || 'not recorded'}</td><td>${item.photographs}</td><td class="r">${item.value === undefined ? 'no figure' : moneyWords(item.value)}</td><td>${item.value === undefined ? 'nobody yet' : [item.byWhom || 'who isn’t recorded', item.on, item.basis].filter((word) => word !== '').join(', ')}</td></tr>
`;
