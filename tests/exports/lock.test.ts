import { spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { hostname, tmpdir } from 'node:os';
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { takeLock } from '../../src/exports/site/lock.ts';

let root: string;
let file: string;
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'whence-lock-'));
  file = join(root, '.site.lock');
});
afterEach(() => rmSync(root, { recursive: true, force: true }));

test('a lock that is free is taken, and gone when it is given back', () => {
  const giveBack = takeLock(file);
  expect(JSON.parse(readFileSync(file, 'utf8'))).toEqual({ pid: process.pid, host: hostname() });
  giveBack();
  expect(existsSync(file)).toBe(false);
});

test('a lock held by a running process is not taken', () => {
  const held = JSON.stringify({ pid: process.ppid, host: hostname() });
  writeFileSync(file, held);
  expect(() => takeLock(file)).toThrow(
    `Another build into the same folder is running (process ${process.ppid}`,
  );
  expect(readFileSync(file, 'utf8')).toBe(held);
});

test('a lock of another machine is not taken', () => {
  writeFileSync(file, JSON.stringify({ pid: 1, host: `${hostname()}-other` }));
  expect(() => takeLock(file)).toThrow('Another build');
});

test('a lock of a process that has ended is taken over, and so is one that was cut off while being written', () => {
  const ended = spawnSync(process.execPath, ['-e', '']).pid;
  for (const stale of [JSON.stringify({ pid: ended, host: hostname() }), '{"pid":', '']) {
    writeFileSync(file, stale);
    const giveBack = takeLock(file);
    expect(JSON.parse(readFileSync(file, 'utf8'))).toMatchObject({ pid: process.pid });
    giveBack();
  }
});

test('a lock that another build has made and is still writing is left to it', async () => {
  writeFileSync(file, '');
  const other = new Worker(
    `const { writeFileSync } = require('node:fs');
    const { workerData, parentPort } = require('node:worker_threads');
    parentPort.once('message', () => setTimeout(() => writeFileSync(...workerData), 50));
    parentPort.postMessage('ready');`,
    { eval: true, workerData: [file, JSON.stringify({ pid: process.ppid, host: hostname() })] },
  );
  const ended = once(other, 'exit');
  await once(other, 'message');
  other.postMessage('now');
  expect(() => takeLock(file)).toThrow(`(process ${process.ppid}`);
  await ended;
});

test('a lock that another build has taken over meanwhile is left to it', () => {
  const giveBack = takeLock(file);
  writeFileSync(file, JSON.stringify({ pid: process.ppid, host: hostname() }));
  giveBack();
  expect(existsSync(file)).toBe(true);
});
