/**
 * Signatures of minisign against the two examples in the documentation of its author's verifying library
 * (github.com/jedisct1/rust-minisign-verify), over the four letters “test”.
 */
import { describe, expect, test } from 'vitest';
import { minisignKey, minisignSignature } from '../../src/corpus/signatures/minisign.ts';

const key = minisignKey('RWQf6LRCGA9i53mlYecO4IzT51TGPpvWucNSCh1CBM0QTaLn73Y7GFO3');

const examples = {
  'over the file': [
    'untrusted comment: signature from minisign secret key',
    'RWQf6LRCGA9i59SLOFxz6NxvASXDJeRtuZykwQepbDEGt87ig1BNpWaVWuNrm73YiIiJbq71Wi+dP9eKL8OC351vwIasSSbXxwA=',
    'trusted comment: timestamp:1555779966\tfile:test',
    'QtKMXWyYcwdpZAlPF7tE2ENJkRd1ujvKjlj1m9RtHTBnZPa5WKU5uWRs5GoP5M/VqE81QFuMKI5k/SfNQUaOAA==',
  ],
  'over its BLAKE2b-512': [
    'untrusted comment: signature from minisign secret key',
    'RUQf6LRCGA9i559r3g7V1qNyJDApGip8MfqcadIgT9CuhV3EMhHoN1mGTkUidF/z7SrlQgXdy8ofjb7bNJJylDOocrCo8KLzZwo=',
    'trusted comment: timestamp:1633700835\tfile:test\tprehashed',
    'wLMDjy9FLAuxZ3q4NlEvkgtyhrr0gtTu6KC4KBJdITbbOeAi1zBIYo0v4iTgt8jJpIidRJnp94ABQkJAgAooBQ==',
  ],
};

describe.each(Object.entries(examples))('the published signature %s', (_name, lines) => {
  const signature = minisignSignature(`${lines.join('\n')}\n`);
  test('fits, and only what was signed', () => {
    expect(signature.number.equals(key.number)).toBe(true);
    expect(signature.fits(Buffer.from('test'), key.key)).toBe(true);
    expect(signature.fits(Buffer.from('Test'), key.key)).toBe(false);
  });
  test('does not fit with another trusted comment', () => {
    const changed = minisignSignature(lines.join('\n').replace('timestamp:1', 'timestamp:2'));
    expect(changed.fits(Buffer.from('test'), key.key)).toBe(false);
  });
  test('names its key as the tool does', () => expect(signature.name).toBe('E7620F1842B4E81F'));
});
