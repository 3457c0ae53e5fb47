import fc from 'fast-check';
import { test } from 'vitest';
import { rawCorpora, caseId } from '../twin/arbitrary.ts';
import { facts as mk } from '../twin/facts.ts';
import { twinCase } from '../twin/twin.ts';
import { computeCase } from '../../src/reasoning/case.ts';
const J = JSON.stringify;
const rk = (x: any) => J([...x].map((r: any) => [r.key, r.key.startsWith('unknown:') ? false : r.known, r.viaPerhaps]).sort());
const views: Record<string, (t: any, r: any) => [unknown, unknown]> = {
  standing: (t, r) => [t.standing, r.standing], place: (t, r) => [t.place, r.place], independent: (t, r) => [t.independent, r.independent],
  support: (t, r) => [t.support, r.support.map((s: any) => ({ place: s.place, independent: s.independent, evidence: s.evidence, witnesses: s.witnesses }))],
  dependence: (t, r) => [t.dependence, r.dependence], undetermined: (t, r) => [t.undetermined, r.undetermined], argued: (t, r) => [t.argued, r.argued],
  untied: (t, r) => [t.untied, r.untied], conflicts: (t, r) => [t.conflicts, r.conflicts.map((c: any) => ({ evidence: c.evidence, answered: c.answered }))],
  margin: (t, r) => [t.margin, r.margin], criticalRecords: (t, r) => [t.criticalRecords, r.criticalRecords],
  counting: (t, r) => [t.counting, r.items.filter((i: any) => i.counts).map((i: any) => i.id)],
  holds: (t, r) => t.place === null ? [1, 1] : [Object.entries(t.holds).filter(([,v]) => v).map(([k]) => k), r.items.filter((i: any) => i.tie === 'holds' || i.tie === 'not-needed').map((i: any) => i.id)],
  weakest: (t, r) => [t.margin, r.weakest.length],
  roots: (t, r) => [Object.entries(t.roots).map(([k, v]) => [k, rk(v)]), r.items.map((i: any) => [i.id, rk(i.roots)])],
};
test('diff', () => {
  const kinds: Record<string, number> = {};
  const first: Record<string, any> = {};
  for (const raw of fc.sample(rawCorpora, { numRuns: Number(process.env.RUNS ?? 4000), seed: Number(process.env.SEED ?? 7) })) {
    const facts = mk(raw);
    const t = twinCase(facts, caseId), r = computeCase(facts, caseId);
    for (const [k, f] of Object.entries(views)) { const [a, b] = f(t, r); if (J(a) !== J(b)) { kinds[k] = (kinds[k] ?? 0) + 1; } }
  }
  console.log(kinds);
  for (const k of Object.keys(kinds)) {
    if (process.env.SKIP?.split(',').includes(k)) continue;
    const out = fc.check(fc.property(rawCorpora, (raw) => { const facts = mk(raw); const [a, b] = views[k]!(twinCase(facts, caseId), computeCase(facts, caseId)); return J(a) === J(b); }), { numRuns: 20000, seed: 7 });
    if (!out.counterexample) continue;
    const raw = out.counterexample[0]; const facts = mk(raw);
    console.log('=====', k, J(views[k]!(twinCase(facts, caseId), computeCase(facts, caseId))));
    for (const rec of raw.records!) console.log(J({ id: rec.id, form: rec.form, p: rec.place, v: rec.volume, d: rec.derivedFrom, i: rec.informants, def: rec.informant, m: rec.mentions!.map((m) => [m.id, m.informants, m.copies]) }));
    console.log(J(raw.people)); console.log(J(raw.cases![0]!));

  }
}, 300000);
