import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  realpathSync,
  renameSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { manifestOf, manifestText } from '../../src/exports/site/manifest.ts';
import { CannotWrite } from '../../src/exports/site/problems.ts';
import { targetAt } from '../../src/exports/site/target.ts';

let root: string;
beforeEach(() => {
  root = realpathSync(mkdtempSync(join(tmpdir(), 'whence-target-')));
  for (const folder of ['project/src', 'project/content/records', 'mine/content', 'mine/notes', 'empty'])
    mkdirSync(join(root, folder), { recursive: true });
  writeFileSync(join(root, 'mine/notes/a.txt'), 'mine');
  mkdirSync(join(root, 'earlier'));
  writeFileSync(join(root, 'earlier/whence.json'), manifestText(manifestOf(new Map([['index.html', '0']]))));
});
afterEach(() => rmSync(root, { recursive: true, force: true }));

const at = (out: string, content = 'mine/content') =>
  targetAt(join(root, out), join(root, content), join(root, 'project'));

describe('a site may be written into', () => {
  test.each(['new', 'new/deeper/still', 'empty', 'earlier', 'project/dist', 'project/site/one', 'mine/site'])(
    '%s',
    (out) => {
      expect(at(out).folder).toBe(join(root, out));
    },
  );
  test('what a link leads to, when that may be written into', () => {
    symlinkSync(join(root, 'earlier'), join(root, 'link'));
    expect(at('link').folder).toBe(join(root, 'earlier'));
  });
});

describe('a site may not be written into', () => {
  test.each([
    ['mine/notes', 'holds files that are no earlier site'],
    ['mine/content', 'lies in the content folder'],
    ['mine/content/site', 'lies in the content folder'],
    ['mine', 'contains the content folder'],
    ['project', 'contains the project'],
    ['.', 'contains'],
    ['project/src', 'project’s own files (src)'],
    ['project/src/new', 'project’s own files (src)'],
    ['project/content/site', 'project’s own files (content)'],
    ['project/node_modules/x', 'project’s own files (node_modules)'],
    ['project/.git', 'project’s own files (.git)'],
    ['mine/notes/a.txt', 'is a file'],
    ['mine/notes/a.txt/site', 'is a file'],
  ])('%s: it %s', (out, why) => {
    expect(() => at(out)).toThrow(CannotWrite);
    expect(() => at(out)).toThrow(why);
  });

  test('a folder whose whence.json is not ours', () => {
    writeFileSync(join(root, 'mine/notes/whence.json'), '{"files":[]}');
    expect(() => at('mine/notes')).toThrow('holds files that are no earlier site');
  });
  test('the sources by way of a link', () => {
    symlinkSync(join(root, 'mine/content'), join(root, 'link'));
    expect(() => at('link')).toThrow('lies in the content folder');
    expect(() => at('link/site')).toThrow('lies in the content folder');
    symlinkSync(join(root, 'mine'), join(root, 'parent'));
    expect(() => at('parent')).toThrow('contains the content folder');
  });
  test('the sources when the content is named by a link', () => {
    symlinkSync(join(root, 'mine/content'), join(root, 'alias'));
    expect(() => at('mine/content/site', 'alias')).toThrow('lies in the content folder');
  });
  test('a link that leads nowhere', () => {
    symlinkSync(join(root, 'gone'), join(root, 'dangling'));
    expect(() => at('dangling')).toThrow('leads nowhere');
  });
  test('a place beside which somebody’s own folder has the name that is needed', () => {
    mkdirSync(join(root, 'new.previous'));
    writeFileSync(join(root, 'new.previous/thesis.txt'), 'mine');
    expect(() => at('new')).toThrow('new.previous');
  });
  test.each(['earlier.previous', 'earlier.next'])(
    'a place beside which a copy of a site lies that no build left: %s',
    (name) => {
      cpSync(join(root, 'earlier'), join(root, name), { recursive: true });
      expect(() => at('earlier')).toThrow(
        `${name}, which is needed while the site is written, is there already`,
      );
      writeFileSync(join(root, '.earlier.exchange'), '');
      expect(at('earlier').folder).toBe(join(root, 'earlier'));
    },
  );
  test('though an earlier site that was set aside may go back', () => {
    renameSync(join(root, 'earlier'), join(root, 'earlier.previous'));
    expect(at('earlier').folder).toBe(join(root, 'earlier'));
  });
});
