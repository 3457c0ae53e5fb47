// What a system may hold ready for a program: pipes where files are expected, outputs that take nothing, folders that are gone.
import { execFileSync, spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { goodContent } from '../corpus/content.ts';
import { caseFile } from '../exports/published-content.ts';

const project = resolve(import.meta.dirname, '../..');
let work: string;
let content: string;
let pipe: string;
beforeAll(() => {
  work = mkdtempSync(join(tmpdir(), 'whence-surroundings-'));
  content = folder('content', { 'cases/phelan.md': caseFile('') });
  pipe = join(work, 'pipe.zip');
  execFileSync('mkfifo', [pipe]);
});
afterAll(() => rmSync(work, { recursive: true, force: true }));

function folder(name: string, files: Record<string, string>): string {
  const dir = join(work, name);
  for (const [file, text] of Object.entries({ ...goodContent, ...files })) {
    mkdirSync(dirname(join(dir, file)), { recursive: true });
    writeFileSync(join(dir, file), text);
  }
  return dir;
}

interface How {
  env?: NodeJS.ProcessEnv;
  /** A command of the shell around the program, which is “$@”. */
  shell?: string;
}

/** Runs a verb by itself; one that waits for ever is ended, and has no code. */
function run(verb: string, args: readonly string[], { env = {}, shell = '"$@"' }: How = {}) {
  const program = [process.execPath, join(project, `src/cli/${verb}.ts`), ...args];
  const { status, stdout, stderr } = spawnSync('bash', ['-c', shell, 'sh', ...program], {
    cwd: work,
    env: { ...process.env, INIT_CWD: work, NO_COLOR: '1', VITEST: undefined, ...env },
    encoding: 'utf8',
    timeout: 60_000,
  });
  return { code: status, out: stdout, err: stderr };
}
const today = ['--today', '2026-06-01'];
const noFault = (text: string) => expect(text).not.toMatch(/fault of Whence|\n {4}at |Error: /);

describe('a pipe is not waited for', () => {
  test('in media/, named by a record and shown in prose', () => {
    const dir = folder('fifo', {
      'records/deed.md':
        goodContent['records/deed.md']!.replace(
          'mentions:\n',
          'media: [{ file: named.jpg, alt: A scan }]\nmentions:\n',
        ) + '\n![shown](../media/shown.jpg)\n',
    });
    mkdirSync(join(dir, 'media'));
    for (const name of ['named.jpg', 'shown.jpg', 'unnamed.jpg'])
      execFileSync('mkfifo', [join(dir, 'media', name)]);
    const { code, out } = run('check', ['--content', dir, ...today]);
    expect(code).toBe(1);
    expect(out).toMatch(/records\/deed\.md:8:\d+ {2}media-is-an-image/);
    expect(out).toMatch(/There is no image “shown\.jpg” in media\//);
  });
  test.each([
    ['import', ['case', 'pipe.zip', '--content', 'new']],
    ['import', ['pipe.zip', '--content', 'new']],
    ['import', ['table', 'list.csv', '--content', 'content', '--mapping', 'pipe.zip']],
    ['compare', ['list.csv', 'pipe.zip']],
    ['import', ['gedcom', '/dev/zero', '--content', 'new']],
  ])('%s %j', (verb, args) => {
    writeFileSync(join(work, 'list.csv'), 'given,surname\nAnn,Lee\n');
    const { code, err } = run(verb, args);
    expect([code, err]).toEqual([2, expect.stringMatching(/ordinary file\b[^\n]*\.\n$/) as string]);
    noFault(err);
    expect(existsSync(join(work, 'new'))).toBe(false);
  });
});

describe('whoever reads the output may stop', () => {
  /** Reads a little of the output of a program and closes it. */
  const readLittle = (verb: string, args: readonly string[]) =>
    new Promise<{ code: number | null; err: string }>((done) => {
      const child = spawn(process.execPath, [join(project, `src/cli/${verb}.ts`), ...args], {
        env: { ...process.env, INIT_CWD: work, NO_COLOR: '1', VITEST: undefined },
        stdio: ['ignore', 'pipe', 'pipe'],
      });
      let err = '';
      child.stderr.on('data', (chunk) => (err += String(chunk)));
      child.stdout.destroy();
      child.once('close', (code) => done({ code, err }));
    });

  test('a check has the exit code it would have had', async () => {
    const broken = folder('broken', { 'site.yaml': 'tilte: The Phelans\n' });
    expect(await readLittle('check', ['--content', broken, ...today])).toEqual({ code: 1, err: '' });
    expect(await readLittle('build', ['--content', broken, '--out', 'none', ...today])).toEqual({
      code: 1,
      err: '',
    });
  }, 120_000);
});

describe('what can’t be done is a sentence, and exit code 2', () => {
  test.each([
    ['check', []],
    ['export', ['sources']],
  ])('%s %j into a full disk', (verb, args) => {
    const { code, err } = run(verb, [...args, '--content', content, ...today], { shell: '"$@" > /dev/full' });
    expect(code).toBe(2);
    expect(err).toMatch(/^Standard output takes nothing more \(ENOSPC[^\n]*\)\.\n$/);
  });

  test.each([['build', ['--out', 'x']]])('%s %j from a folder that is gone', (verb, args) => {
    const { code, err } = run(verb, args, {
      shell: 'mkdir gone && cd gone && rmdir ../gone && "$@"',
      env: { INIT_CWD: undefined },
    });
    expect([code, err]).toEqual([
      2,
      'The folder you stand in is gone. Change into one that is there (cd ~), and try again.\n',
    ]);
  });

  test('a case where no temporary folder can be made', () => {
    for (const TMPDIR of ['/nowhere/at/all']) {
      const { code, err } = run('export', ['case', 'phelan', '--content', content, ...today], {
        env: { TMPDIR },
      });
      expect([code, err]).toEqual([
        2,
        expect.stringMatching(/^No folder for the work could be made in .*TMPDIR.*\.\n$/) as string,
      ]);
    }
    expect(existsSync(join(work, 'phelan.zip'))).toBe(false);
  });

  test('a ~ that no shell has read', () => {
    for (const [verb, args] of [
      ['build', ['--content', content, '--out', '~/site']],
      ['check', ['--content', '~/content']],
    ] as const) {
      const { code, err } = run(verb, args);
      expect([code, err]).toEqual([2, expect.stringContaining('without quotes') as string]);
    }
    expect(readdirSync(work)).not.toContain('~');
  });
});
