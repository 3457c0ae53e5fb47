import { test } from 'vitest';
import { computeCase } from '../../src/reasoning/case.ts';
import { copy, dependencyGraph, item, range, record, shape } from '../twin/shapes.ts';
let s = 12345; const rnd = () => { s = (Math.imul(s, 1103515245) + 12345) >>> 0; return ((s >>> 8) & 0xffff) / 65536; };
const time = (name: string, f: () => any) => { const t = performance.now(); const r = f(); console.log(name, Math.round(performance.now() - t), r.independent, r.margin, r.weakest.length); };
test('perf', () => {
  for (const n of [40, 60]) for (const d of [0.1, 0.3, 0.5, 0.8]) { const e = new Map<string, boolean>(); time(`graph ${n} ${d}`, () => computeCase(dependencyGraph(n, (a, b) => { const k = `${a}-${b}`; if (!e.has(k)) e.set(k, rnd() < d); return e.get(k)!; }), 'shape')); }
  for (const [h, n] of [[10, 20], [14, 30], [20, 40]] as const) {
    time(`hubs ${h} ${n}`, () => computeCase(shape({ records: [...range(h).map((i) => record(`h${i}`)), ...range(n).map((i) => record(`r${i}`))],
      evidence: [...range(h).map((i) => item(`h${i}`, `h${i}#m`, { place: undefined })), ...range(n).map((i) => item(`e${i}`, `r${i}#m`, { tiedBy: range(3).map(() => { const a = Math.floor(rnd() * h), b = Math.floor(rnd() * h); return a === b ? `h${a}` : [`h${a}`, `h${b}`]; }) }))] }), 'shape'));
    time(`multi ${h} ${n}`, () => computeCase(shape({ records: range(h * 3).map((i) => record(`r${i}`)), evidence: range(n).map((i) => item(`e${i}`, [...new Set(range(3).map(() => `r${Math.floor(rnd() * h * 3)}#m`))])) }), 'shape'));
  }
}, 300000);
