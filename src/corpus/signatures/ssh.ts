/**
 * Signatures made with `ssh-keygen -Y sign`: the form SSHSIG, published as PROTOCOL.sshsig with OpenSSH. Keys are
 * those of RFC 4253 (RSA), RFC 5656 (ECDSA) and RFC 8709 (Ed25519). Only the taking apart is done here; whether a
 * signature fits is asked of the platform.
 */
import { createHash, createPublicKey, verify, type KeyObject } from 'node:crypto';
import { fromBase64, Unreadable, Wire, wired } from './wire.ts';

/** What a signature of a review is made for, so that one made for something else can't be passed off as one. */
export const namespace = 'whence-review';

/** The shortest RSA key whose signature is taken for one, in bits. */
const shortestRsa = 2048;

export interface SshKey {
  form: 'SSH';
  /** The fingerprint, as `ssh-keygen -l` shows it. */
  name: string;
  /** The key as SSH writes it, to tell whether two are the same. */
  blob: Buffer;
  type: string;
  key: KeyObject;
}

export interface SshSignature {
  form: 'SSH';
  signer: SshKey;
  fits(message: Buffer): boolean;
}

/** The public line of a key: its type, base64, and perhaps a comment. Throws `Unreadable`. */
export function sshKey(line: string): SshKey {
  const [type = '', encoded = ''] = line.trim().split(/\s+/);
  const key = keyOfBlob(fromBase64(encoded));
  if (key.type !== type) throw new Unreadable(`says ${type} and holds ${key.type}`);
  return key;
}

function keyOfBlob(blob: Buffer): SshKey {
  const wire = new Wire(blob);
  const type = wire.word();
  const key = publicKey(type, wire);
  wire.end();
  const name = `SHA256:${createHash('sha256')
    .update(blob)
    .digest('base64')
    .replace(/={1,2}$/, '')}`;
  return { form: 'SSH', name, blob, type, key };
}

const curves: Readonly<Record<string, { crv: string; bytes: number; hash: string }>> = {
  'ecdsa-sha2-nistp256': { crv: 'P-256', bytes: 32, hash: 'sha256' },
  'ecdsa-sha2-nistp384': { crv: 'P-384', bytes: 48, hash: 'sha384' },
  'ecdsa-sha2-nistp521': { crv: 'P-521', bytes: 66, hash: 'sha512' },
};

function publicKey(type: string, wire: Wire): KeyObject {
  if (type === 'ssh-ed25519') {
    const x = wire.string();
    if (x.length !== 32) throw new Unreadable('holds a key of the wrong length');
    return jwk({ kty: 'OKP', crv: 'Ed25519', x: url(x) });
  }
  if (type === 'ssh-rsa') {
    const e = wire.string();
    const n = unsigned(wire.string());
    if (n.length * 8 < shortestRsa)
      throw new Unreadable(`holds an RSA key of fewer than ${shortestRsa} bits`);
    return jwk({ kty: 'RSA', e: url(unsigned(e)), n: url(n) });
  }
  const curve = curves[type];
  if (curve) {
    wire.string();
    const point = wire.string();
    if (point[0] !== 4 || point.length !== 1 + 2 * curve.bytes)
      throw new Unreadable('holds a key of the wrong length');
    const [x, y] = [point.subarray(1, 1 + curve.bytes), point.subarray(1 + curve.bytes)];
    return jwk({ kty: 'EC', crv: curve.crv, x: url(x), y: url(y) });
  }
  throw new Unreadable(
    `is of the kind “${/^[\x21-\x7e]{1,60}$/.test(type) ? type : 'unknown'}”, which is not read here; Ed25519, ECDSA and RSA are`,
  );
}

function jwk(key: Record<string, string>): KeyObject {
  try {
    return createPublicKey({ key, format: 'jwk' });
  } catch {
    throw new Unreadable('holds a key that is none');
  }
}

const url = (bytes: Buffer): string => bytes.toString('base64url');

/** A number without the zeros that stand before it. */
function unsigned(bytes: Buffer): Buffer {
  let at = 0;
  while (at < bytes.length - 1 && bytes[at] === 0) at++;
  return bytes.subarray(at);
}

const armour = /^-----BEGIN SSH SIGNATURE-----\r?\n([A-Za-z0-9+/=\s]+)\r?\n-----END SSH SIGNATURE-----\s*$/;

/** Takes a signature file apart. Throws `Unreadable`. */
export function sshSignature(text: string): SshSignature {
  const body = armour.exec(text)?.[1];
  if (body === undefined)
    throw new Unreadable('does not stand whole between the lines BEGIN SSH SIGNATURE and END SSH SIGNATURE');
  const wire = new Wire(fromBase64(body));
  if (wire.take(6).toString('latin1') !== 'SSHSIG') throw new Unreadable('does not begin as one');
  if (wire.number() !== 1) throw new Unreadable('is of another version than 1');
  const signer = keyOfBlob(wire.string());
  const madeFor = wire.string();
  const reserved = wire.string();
  const hash = wire.word();
  const signed = new Wire(wire.string());
  wire.end();
  if (madeFor.toString('utf8') !== namespace)
    throw new Unreadable(
      `was made for “${/^[\x20-\x7e]{1,60}$/.test(madeFor.toString('latin1')) ? madeFor.toString('latin1') : 'something else'}”, not for ${namespace}`,
    );
  if (hash !== 'sha256' && hash !== 'sha512')
    throw new Unreadable('names a hash other than SHA-256 and SHA-512');
  const method = signed.word();
  const bytes = signed.string();
  signed.end();
  const check = checkerOf(signer, method, bytes);
  return {
    form: 'SSH',
    signer,
    fits: (message) =>
      check(
        Buffer.concat([
          Buffer.from('SSHSIG'),
          wired(madeFor),
          wired(reserved),
          wired(hash),
          wired(createHash(hash).update(message).digest()),
        ]),
      ),
  };
}

/** How a signature of a method is checked. RSA with SHA-1 is no method of SSHSIG. */
function checkerOf({ type, key }: SshKey, method: string, bytes: Buffer): (said: Buffer) => boolean {
  if (type === 'ssh-ed25519' && method === type) return (said) => verify(null, said, key, bytes);
  if (type === 'ssh-rsa' && (method === 'rsa-sha2-256' || method === 'rsa-sha2-512'))
    return (said) => verify(method === 'rsa-sha2-256' ? 'sha256' : 'sha512', said, key, bytes);
  const curve = curves[type];
  if (curve && method === type) {
    const wire = new Wire(bytes);
    const parts = [wire.string(), wire.string()].map((part) => fixed(unsigned(part), curve.bytes));
    wire.end();
    const p1363 = Buffer.concat(parts);
    return (said) => verify(curve.hash, said, { key, dsaEncoding: 'ieee-p1363' }, p1363);
  }
  throw new Unreadable('was not made in the way of its key');
}

function fixed(bytes: Buffer, length: number): Buffer {
  if (bytes.length > length) throw new Unreadable('holds a number that is too long');
  return Buffer.concat([Buffer.alloc(length - bytes.length), bytes]);
}
