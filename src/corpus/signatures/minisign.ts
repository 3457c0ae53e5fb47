/**
 * Signatures of the form that minisign publishes: Ed25519 (RFC 8032) over a file, or over its BLAKE2b-512, with a
 * trusted comment under a signature of its own. Only the taking apart is done here; whether a signature fits is asked
 * of the platform.
 */
import { createHash, createPublicKey, verify, type KeyObject } from 'node:crypto';
import { fromBase64, Unreadable } from './wire.ts';

export interface MinisignKey {
  form: 'minisign';
  /** The number of the key, as minisign shows it. */
  name: string;
  number: Buffer;
  key: KeyObject;
}

export interface MinisignSignature {
  form: 'minisign';
  /** The number of the key it was made with, as minisign shows it. */
  name: string;
  number: Buffer;
  fits(message: Buffer, key: KeyObject): boolean;
}

/** A public key: the second line of its file. Throws `Unreadable`. */
export function minisignKey(line: string): MinisignKey {
  const bytes = fromBase64(line);
  if (bytes.length !== 42 || bytes.toString('latin1', 0, 2) !== 'Ed')
    throw new Unreadable('is no public key of minisign');
  const number = bytes.subarray(2, 10);
  const key = createPublicKey({
    key: { kty: 'OKP', crv: 'Ed25519', x: bytes.subarray(10).toString('base64url') },
    format: 'jwk',
  });
  return { form: 'minisign', name: shown(number), number, key };
}

const trustedComment = 'trusted comment: ';

/** Takes a signature file apart: two comments, each with a line of base64 below it. Throws `Unreadable`. */
export function minisignSignature(text: string): MinisignSignature {
  const [untrusted = '', encoded = '', trusted = '', overall = '', ...rest] = text.split(/\r?\n/);
  if (
    !untrusted.startsWith('untrusted comment: ') ||
    !trusted.startsWith(trustedComment) ||
    rest.join('').trim() !== ''
  )
    throw new Unreadable('does not hold the four lines of one');
  const bytes = fromBase64(encoded);
  const global = fromBase64(overall);
  const method = bytes.toString('latin1', 0, 2);
  if (bytes.length !== 74 || global.length !== 64 || (method !== 'Ed' && method !== 'ED'))
    throw new Unreadable('is of another form than Ed25519');
  const number = bytes.subarray(2, 10);
  const signature = bytes.subarray(10);
  const comment = Buffer.from(trusted.slice(trustedComment.length));
  return {
    form: 'minisign',
    name: shown(number),
    number,
    fits: (message, key) => {
      const said = method === 'ED' ? createHash('blake2b512').update(message).digest() : message;
      return (
        verify(null, said, key, signature) && verify(null, Buffer.concat([signature, comment]), key, global)
      );
    },
  };
}

/** The number of a key as it is shown: sixteen hexadecimal digits, the last byte first. */
function shown(number: Buffer): string {
  return Buffer.from(number).reverse().toString('hex').toUpperCase();
}
