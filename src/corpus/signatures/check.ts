/** Which reviews are signed, and by whom of those the author knows. */
import type { ValuePath } from '../../model/finding.ts';
import { reviewFile, type Reviewer, type Signature } from '../../model/review.ts';
import { positionOf, type Entry, type Findings } from '../entries.ts';
import { head, type ContentFolder } from '../files.ts';
import { finding, quoted } from '../finding.ts';
import type { ReadEntries } from '../read.ts';
import { signatureEndings } from './endings.ts';
import { minisignKey, minisignSignature, type MinisignKey, type MinisignSignature } from './minisign.ts';
import { sshKey, sshSignature, type SshKey, type SshSignature } from './ssh.ts';
import { Unreadable } from './wire.ts';

interface KnownKey {
  signer: string;
  key: SshKey | MinisignKey;
  from?: string | undefined;
  to?: string | undefined;
}

/**
 * Verifies every signature beside a review, over the bytes of its file. A bad one is an error; what a good one shows
 * is kept by the id of the review.
 */
export function checkSignatures(
  folder: ContentFolder,
  read: ReadEntries,
  findings: Findings,
): Map<string, Signature> {
  const keys = read.entries
    .filter(({ kind }) => kind === 'reviewer')
    .flatMap((entry) => keysOf(entry, read.values.get(entry) as Reviewer | undefined, findings));
  // Where the list of keys is not whole, nobody can be called unknown.
  const listIsWhole =
    !read.uncertain.has('reviewer') && ![...findings.broken].some((key) => key.startsWith('reviewer:'));
  const outcomes = new Map<string, Signature>();
  for (const entry of read.entries) {
    if (entry.kind !== 'review') continue;
    for (const ending of signatureEndings) {
      const file = `${entry.source.file}${ending}`;
      const name = file.slice(file.lastIndexOf('/') + 1);
      const beside = folder.list(file.slice(0, -name.length - 1));
      if (!beside.some((other) => other.name === name && !other.isFolder)) continue;
      const outcome = look(folder, entry, file, keys, findings);
      if (outcome === undefined) continue;
      if (outcome.kind === 'unknown' && !listIsWhole) continue;
      report(outcome, entry, file, findings);
      const before = outcomes.get(entry.id);
      if (before?.kind !== 'known') outcomes.set(entry.id, outcome);
    }
  }
  return outcomes;
}

/** The keys of a known reviewer; one that can't be read is an error where it stands. */
function keysOf(entry: Entry, reviewer: Reviewer | undefined, findings: Findings): KnownKey[] {
  return (reviewer?.keys ?? []).flatMap(({ key: line, from, to }, index) => {
    const raw = (entry.raw as { keys?: unknown }).keys;
    const path: ValuePath = Array.isArray(raw) ? ['keys', index] : ['keys'];
    const problem = (message: string, help: string) => {
      findings.add(entry, path, 'key-is-public', message, help, { breaks: true });
      return [];
    };
    if (/PRIVATE KEY|^RWRTY0Iy|^RWQAAEIy/.test(line))
      return problem(
        'This is a secret key, and whoever reads it can sign in its owner’s name.',
        'Take it out at once, have its owner make a new one, and put the public line of that here.',
      );
    try {
      const key = line.startsWith('RW') ? minisignKey(line) : sshKey(line);
      return [{ signer: reviewer!.name, key, from, to }];
    } catch (error) {
      if (!(error instanceof Unreadable)) throw error;
      return problem(
        `${quoted(line)} cannot be read as a public key: it ${error.message}.`,
        'Copy the one line of the file that ends in .pub: ssh-ed25519 AAAA… for SSH, RW… for minisign.',
      );
    }
  });
}

function look(
  folder: ContentFolder,
  entry: Entry,
  file: string,
  keys: readonly KnownKey[],
  findings: Findings,
): Signature | undefined {
  const message = folder.bytes(entry.source.file);
  const text = folder.read(file)?.text;
  if (message === undefined || text === undefined) return undefined;
  try {
    const outcome = file.endsWith('.minisig')
      ? ofMinisign(minisignSignature(text), message, keys)
      : ofSsh(sshSignature(text), message, keys);
    if (outcome) return dated(outcome.signature, outcome.by, read(entry));
    findings.list.push(
      finding(
        'signature-fits-its-file',
        head(file),
        `This signature does not fit ${nameOf(entry)}: one of the two is not as it was when the review was signed.`,
        'Put both files back as the reviewer sent them, line ends included; a review that has changed must be signed anew by its reviewer.',
      ),
    );
  } catch (error) {
    if (!(error instanceof Unreadable)) throw error;
    findings.list.push(
      finding(
        'signature-fits-its-file',
        head(file),
        `This signature of ${nameOf(entry)} cannot be used: it ${error.message}.`,
        file.endsWith('.minisig')
          ? 'Put the file back as the reviewer sent it; it is made with minisign -S -m and the name of the review.'
          : 'Put the file back as the reviewer sent it; it is made with ssh-keygen -Y sign -n whence-review -f, the key, and the name of the review.',
      ),
    );
  }
  return undefined;
}

interface Outcome {
  signature: { form: Signature['form']; key: string };
  by: readonly KnownKey[];
}

/** An SSH signature brings its key along, so that it is good or bad whoever made it. */
function ofSsh(signature: SshSignature, message: Buffer, keys: readonly KnownKey[]): Outcome | undefined {
  if (!signature.fits(message)) return undefined;
  return {
    signature: { form: 'SSH', key: signature.signer.name },
    by: keys.filter(({ key }) => key.form === 'SSH' && key.blob.equals(signature.signer.blob)),
  };
}

/** One of minisign names its key by a number, and can only be looked at with that key. */
function ofMinisign(
  signature: MinisignSignature,
  message: Buffer,
  keys: readonly KnownKey[],
): Outcome | undefined {
  const named = keys.filter(({ key }) => key.form === 'minisign' && key.number.equals(signature.number));
  const by = named.filter(({ key }) => signature.fits(message, key.key));
  if (named.length > 0 && by.length === 0) return undefined;
  return { signature: { form: 'minisign', key: signature.name }, by };
}

/** Whose signature it is, on the day the review names. */
function dated(
  signature: Outcome['signature'],
  by: readonly KnownKey[],
  review: { reviewer: string; date: string } | undefined,
): Signature {
  const inUse = by.filter(
    ({ from, to }) =>
      !review || ((from === undefined || from <= review.date) && (to === undefined || review.date <= to)),
  );
  const best = inUse.find(({ signer }) => signer === review?.reviewer) ?? inUse[0];
  if (best) return { ...signature, kind: 'known', signer: best.signer };
  if (by[0]) return { ...signature, kind: 'out-of-date', signer: by[0].signer };
  return { ...signature, kind: 'unknown' };
}

function read(entry: Entry): { reviewer: string; date: string } | undefined {
  const result = reviewFile.pick({ reviewer: true, date: true }).loose().safeParse(entry.raw);
  return result.success ? result.data : undefined;
}

function report(signature: Signature, entry: Entry, file: string, findings: Findings): void {
  const add = (message: string, help: string) =>
    findings.list.push(finding('signer-is-known', head(file), message, help));
  if (signature.kind === 'unknown')
    add(
      `${nameOf(entry)} is signed with the ${signature.form} key ${signature.key}, and reviewers.yaml has no such key.`,
      'If you know whose it is, ask them for the public line by another way than the review came, and add it to reviewers.yaml; until then the review is shown as not signed by anybody known.',
    );
  if (signature.kind === 'out-of-date')
    add(
      `${nameOf(entry)} is signed with a key of ${signature.signer} that was not in use on the day of the review.`,
      'Correct from and to of the key in reviewers.yaml, or ask the reviewer to sign with the key they use now.',
    );
  const reviewer = read(entry)?.reviewer;
  if (signature.kind === 'known' && reviewer !== undefined && reviewer !== signature.signer)
    findings.list.push(
      finding(
        'signer-is-known',
        positionOf(entry, ['reviewer']),
        `This review is ${quoted(reviewer)}’s, and it is signed with a key of ${quoted(signature.signer)}.`,
        'Ask who signed it; if both are one person, write the name in reviewers.yaml as the review has it.',
      ),
    );
}

function nameOf(entry: Entry): string {
  return entry.source.file.slice(entry.source.file.lastIndexOf('/') + 1);
}
