import { execFileSync } from 'node:child_process';
import { symlinkSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { firstBadByte, largestText } from '../../src/corpus/files.ts';
import { loadCorpus } from '../../src/corpus/load.ts';
import { SourceText } from '../../src/corpus/source-text.ts';
import { goodContent, withContent } from './content.ts';

function findingsOf(
  files: Readonly<Record<string, string | Uint8Array>>,
  prepare?: (dir: string) => void,
): string[] {
  return withContent({ ...goodContent, ...files }, (dir) => {
    prepare?.(dir);
    return loadCorpus(dir).findings.map(
      (finding) => `${finding.file}:${finding.line}:${finding.column} ${finding.rule}`,
    );
  });
}

describe('encodings', () => {
  test('a BOM and CRLF are accepted and move no position', () => {
    const text = `\ufeff${goodContent['records/deed.md']!.replace('original', 'copy').replaceAll('\n', '\r\n')}`;
    expect(findingsOf({ 'records/deed.md': text })).toEqual(['records/deed.md:3:7 value-is-an-option']);
    const corpus = withContent(
      { ...goodContent, 'records/deed.md': text.replace('copy', 'original') },
      (dir) => loadCorpus(dir),
    );
    expect(corpus.findings).toEqual([]);
    expect(corpus.records.get('deed')?.body).toBe('The deed.\n');
    expect(corpus.source('records/deed.md').startsWith('---\ntitle')).toBe(true);
  });

  test('a file in another encoding is refused at its first wrong byte', () => {
    const latin1 = Buffer.from('---\ntitle: Sønnavé\nform: original\n---\n', 'latin1');
    expect(findingsOf({ 'records/latin.md': latin1 })).toEqual(['records/latin.md:2:9 file-is-utf8']);
    const utf16 = Buffer.from('\ufeff---\ntitle: x\n', 'utf16le');
    expect(findingsOf({ 'records/wide.md': utf16 })).toEqual(['records/wide.md:1:1 file-is-utf8']);
  });

  // The decoder of the platform, which follows the WHATWG Encoding Standard, is the measure.
  test('the first wrong byte is where the platform’s own decoder stops', () => {
    const decodes = (bytes: Uint8Array) => {
      try {
        new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes, { stream: true });
        return true;
      } catch {
        return false;
      }
    };
    const byte = fc.oneof(
      fc.constantFrom(
        0x41,
        0x7f,
        0x80,
        0xbf,
        0xc0,
        0xc1,
        0xc2,
        0xdf,
        0xe0,
        0xa0,
        0x9f,
        0xed,
        0xef,
        0xf0,
        0x90,
        0x8f,
        0xf4,
        0xf5,
        0xff,
      ),
      fc.nat(255),
    );
    fc.assert(
      fc.property(fc.array(byte, { maxLength: 12 }), (list) => {
        const bytes = Uint8Array.from(list);
        const bad = firstBadByte(bytes);
        expect(decodes(bytes.subarray(0, bad))).toBe(true);
        if (bad < bytes.length)
          expect(() => new TextDecoder('utf-8', { fatal: true }).decode(bytes.subarray(bad))).toThrow();
        else expect(() => new TextDecoder('utf-8', { fatal: true }).decode(bytes)).not.toThrow();
      }),
      { numRuns: 2000, seed: 1 },
    );
  });
});

describe('files that are not read', () => {
  test('one that is too long for text', () => {
    const long = Buffer.alloc(largestText + 1, 'a');
    expect(findingsOf({ 'records/scan.md': long })).toEqual([
      'records/scan.md:1:1 file-is-of-reasonable-size',
    ]);
  });

  test('a link that leads out of the content folder, and one that leads nowhere', () => {
    withContent({ 'secret.md': goodContent['records/deed.md']! }, (outside) => {
      const found = findingsOf({}, (dir) => {
        symlinkSync(join(outside, 'secret.md'), join(dir, 'records', 'secret.md'));
        symlinkSync(outside, join(dir, 'series'));
        symlinkSync(join(dir, 'nothing.md'), join(dir, 'records', 'nothing.md'));
      });
      expect(found).toEqual([
        'records/nothing.md:1:1 file-can-be-read',
        'records/secret.md:1:1 file-lies-inside-the-content',
        'series:1:1 file-lies-inside-the-content',
      ]);
    });
  });

  test('a link inside the content folder is followed', () => {
    expect(findingsOf({}, (dir) => symlinkSync(join(dir, 'places'), join(dir, 'series-of-places')))).toEqual([
      'series-of-places:1:1 file-is-expected',
    ]);
    expect(
      findingsOf({}, (dir) =>
        symlinkSync(join(dir, 'records', 'deed.md'), join(dir, 'records', 'deed-again.md')),
      ),
    ).toEqual([]);
  });

  test('a scan behind a link that leads out of media', () => {
    const record = '---\ntitle: Scan\nform: original\nmedia: [{ file: scan.jpg, alt: A scan }]\n---\n';
    const found = findingsOf({ 'records/scan.md': record, 'media/real.jpg': 'x' }, (dir) =>
      symlinkSync('/etc/hostname', join(dir, 'media', 'scan.jpg')),
    );
    expect(found).toEqual(['records/scan.md:4:17 media-stays-in-its-folder']);
    withContent({ 'scan.jpg': 'x' }, (outside) => {
      const whole = findingsOf({ 'records/scan.md': record }, (dir) =>
        symlinkSync(outside, join(dir, 'media')),
      );
      expect(whole).toEqual([
        'media:1:1 file-lies-inside-the-content',
        'records/scan.md:4:17 media-stays-in-its-folder',
      ]);
    });
  });

  test('a pipe is not waited for', () => {
    const found = findingsOf({}, (dir) => execFileSync('mkfifo', [join(dir, 'records/pipe.md')]));
    expect(found).toEqual(['records/pipe.md:1:1 file-can-be-read']);
  });

  test('a folder without site.yaml is hinted at', () => {
    const { 'site.yaml': _, ...rest } = goodContent;
    const findings = withContent(rest, (dir) => loadCorpus(dir).findings);
    expect(findings.map(({ severity, rule }) => [severity, rule])).toEqual([['hint', 'site-is-described']]);
  });
});

describe('positions', () => {
  test('count lines and characters from one, in any text', () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom('a', 'é', '😀', '\n', ' ', '\ud800') }), (text) => {
        const source = new SourceText('a.md', text);
        let line = 1;
        let column = 1;
        let offset = 0;
        for (const character of source.text) {
          expect(source.position(offset)).toEqual({ file: 'a.md', line, column });
          offset += character.length;
          if (character === '\n') {
            line++;
            column = 1;
          } else column++;
        }
        expect(source.position(offset)).toEqual({ file: 'a.md', line, column });
      }),
      { numRuns: 300, seed: 1 },
    );
  });
});
