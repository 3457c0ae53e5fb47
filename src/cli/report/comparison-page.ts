/** A comparison of tables as one page that needs nothing beside it: no script, no request, good on paper. */
import { pairReports, summaryOf, type Comparison, type PairReport } from './comparison.ts';

/** The page, `limit` pairs of it at most. */
export function* comparisonPage(comparison: Comparison, limit: number): Generator<string> {
  const { a, b, within, result } = comparison;
  const title = within ? `Rows of ${a.name} that may be one person` : `${a.name} beside ${b.name}`;
  yield `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<meta name="generator" content="Whence">
<title>${escaped(title)}</title>
<style>${style}</style>
</head>
<body>
<header>
<h1>${escaped(title)}</h1>
<p>Each pair is weighed field by field, in bits: a field that agrees speaks for one person (+), one that differs against (−), one that is missing says nothing. The probability is an aid; judge by the ledger, and by the records themselves.</p>
</header>
<main>
${pairsHeading(result.pairs.length, limit)}
`;
  let shown = 0;
  for (const pair of pairReports(comparison)) {
    if (shown++ === limit) break;
    yield pairSection(pair, shown);
  }
  yield `</main>
<footer>
<h2>How this was made</h2>
<ul>
${summaryOf(comparison)
  .map((sentence) => `<li>${escaped(sentence)}</li>`)
  .join('\n')}
</ul>
</footer>
</body>
</html>
`;
}

function pairsHeading(pairs: number, limit: number): string {
  if (pairs === 0) return '<h2>No pairs</h2>\n<p>No two rows are likely to be one person.</p>';
  const shown = Math.min(pairs, limit);
  return `<h2>${shown === pairs ? `${pairs.toLocaleString('en')} ${pairs === 1 ? 'pair' : 'pairs'}` : `The likeliest ${shown.toLocaleString('en')} of ${pairs.toLocaleString('en')} pairs`}</h2>`;
}

function pairSection(pair: PairReport, number: number): string {
  const rows = pair.ledger.map(
    ({ field, a, b, agreement, weight }) =>
      `<tr><th scope="row">${escaped(field)}</th><td>${escaped(a) || '–'}</td><td>${escaped(b) || '–'}</td><td class="${tone(agreement, weight)}">${escaped(agreement)}</td><td class="n">${bits(weight)}</td></tr>`,
  );
  return `<section aria-labelledby="p${number}">
<h3 id="p${number}"><span>${escaped(pair.a)}</span> and <span>${escaped(pair.b)}</span></h3>
<p>Probability <strong>${chance(pair.probability)}</strong> · lines ${pair.lineA} and ${pair.lineB}</p>
<table>
<thead><tr><th scope="col">Field</th><th scope="col">One says</th><th scope="col">The other says</th><th scope="col">Agreement</th><th scope="col" class="n">Bits</th></tr></thead>
<tbody>
${rows.join('\n')}
<tr><th scope="row" colspan="4">before comparing: the odds of any two rows</th><td class="n">${bits(pair.prior.weight)}</td></tr>
</tbody>
<tfoot><tr><th scope="row" colspan="4">together</th><td class="n">${bits(pair.weight)}</td></tr></tfoot>
</table>
</section>
`;
}

/** Nothing is certain, so nothing is given as 1. */
const chance = (probability: number) => (probability > 0.999 ? 'over 0.999' : probability.toFixed(3));
const tone = (agreement: string, weight: number) =>
  agreement === 'missing' ? 'none' : weight < 0 ? 'against' : 'for';
const bits = (weight: number) => (weight > 0 ? `+${weight.toFixed(1)}` : weight.toFixed(1).replace('-', '−'));
const escaped = (text: string) =>
  text.replace(
    /[&<>"'\u0000-\u0008\u000b\u000c\u000e-\u001f]/g,
    (sign) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' })[sign] ?? '',
  );

const style = `
:root { --paper: #faf9f3; --ink: #1b2026; --soft: #4a5058; --line: #c3bfb0; --accent: #a5301a; }
@media (prefers-color-scheme: dark) { :root { --paper: #171b1f; --ink: #ece6d8; --soft: #b4b0a5; --line: #434a50; --accent: #f08a68; } }
* { box-sizing: border-box; }
body { margin: 0 auto; padding: 2rem 1.25rem 4rem; max-width: 60rem; background: var(--paper); color: var(--ink);
  font: 1.0625rem/1.55 'Source Serif 4', 'Iowan Old Style', Georgia, serif; }
h1 { font-size: 1.9rem; line-height: 1.15; margin: 0 0 .75rem; overflow-wrap: anywhere; }
h2 { font-size: 1.3rem; margin: 2.5rem 0 .5rem; border-bottom: 1.5px solid var(--ink); }
h3 { font-size: 1.1rem; margin: 0; overflow-wrap: anywhere; }
header p, footer { max-width: 42rem; }
section { margin: 1.75rem 0; break-inside: avoid; }
section p { margin: .25rem 0 .5rem; color: var(--soft); }
strong { color: var(--ink); }
table { width: 100%; table-layout: fixed; border-collapse: collapse; font-size: .95rem; font-variant-numeric: lining-nums tabular-nums; }
th, td { text-align: left; vertical-align: top; padding: .25rem .75rem .25rem 0; border-top: 1px solid var(--line); overflow-wrap: break-word; }
thead th { font: 600 .8rem/1.4 'Libre Franklin', 'Helvetica Neue', Arial, sans-serif; color: var(--soft); border-top: 0; }
tbody th, tfoot th { font-weight: 400; color: var(--soft); }
tfoot td, tfoot th { border-top: 1.5px solid var(--ink); }
thead th:first-child, thead th:nth-child(4) { width: 21%; }
thead th:nth-child(2), thead th:nth-child(3) { width: 24%; }
.n { text-align: right; padding-right: 0; white-space: nowrap; }
.against { font-style: italic; color: var(--accent); }
.none { color: var(--soft); }
footer li { margin: .35rem 0; overflow-wrap: anywhere; }
@media (max-width: 34rem) { body { font-size: 1rem; } table { font-size: .8125rem; } thead th { font-size: .6875rem; } th, td { padding-right: .4rem; } }
@media print { :root { --paper: #fff; --ink: #000; --soft: #444; --line: #bbb; --accent: #7a1f12; } body { padding: 0; max-width: none; font-size: 10pt; } }
`;
