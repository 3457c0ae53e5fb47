import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { killBuilds } from './kills.ts';

test('a build killed at any moment leaves one whole site, and nothing else is touched', async () => {
  const work = mkdtempSync(join(tmpdir(), 'whence-torture-'));
  const { faults, killed, finished } = await killBuilds({ work, kills: 2, seed: 5 });
  expect(faults).toEqual([]);
  expect(killed + finished).toBe(2);
}, 300_000);
