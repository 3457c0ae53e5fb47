import fc from 'fast-check';
import { test } from 'vitest';
import { rawCorpora, caseId } from '../twin/arbitrary.ts';
import { facts as mk } from '../twin/facts.ts';
import { twinCase } from '../twin/twin.ts';
import { computeCase } from '../../src/reasoning/case.ts';
const rootsKey = (x: any) => JSON.stringify([...x].map((r: any) => [r.key, r.key.startsWith('unknown:') ? false : r.known, r.viaPerhaps]).sort());
test('shrink', () => {
  const out = fc.check(fc.property(rawCorpora, (raw) => {
    const facts = mk(raw);
    const t = twinCase(facts, caseId); const r = computeCase(facts, caseId);
    return r.items.every((i) => rootsKey(i.roots) === rootsKey(t.roots[i.id]));
  }), { numRuns: 3000, seed: 7 });
  if (out.counterexample) {
    const raw = out.counterexample[0]; const facts = mk(raw);
    for (const rec of raw.records!) console.log(JSON.stringify({ id: rec.id, form: rec.form, d: rec.derivedFrom, i: rec.informants, def: rec.informant, m: rec.mentions!.map((m) => [m.id, m.informants, m.copies]) }));
    console.log(JSON.stringify(raw.people)); console.log(JSON.stringify(raw.cases![0]!.evidence));
    console.log('twin', JSON.stringify(twinCase(facts, caseId).roots)); console.log('real', JSON.stringify(computeCase(facts, caseId).items.map((i) => [i.id, i.roots])));
  }
  console.log(out.numRuns, out.numShrinks, out.failed);
}, 120000);
