/** Reading what SSH writes as bytes: strings with their length before them (RFC 4251, section 5). */

/** What could not be read, in a clause that follows “it”. */
export class Unreadable extends Error {
  override name = 'Unreadable';
}

/** Reads bytes from the front. Throws `Unreadable` where they end too early. */
export class Wire {
  readonly #bytes: Buffer;
  #at = 0;

  constructor(bytes: Buffer) {
    this.#bytes = bytes;
  }

  take(length: number): Buffer {
    if (this.#at + length > this.#bytes.length) throw new Unreadable('ends too early');
    return this.#bytes.subarray(this.#at, (this.#at += length));
  }

  number(): number {
    return this.take(4).readUInt32BE();
  }

  string(): Buffer {
    return this.take(this.number());
  }

  word(): string {
    return this.string().toString('latin1');
  }

  end(): void {
    if (this.#at !== this.#bytes.length) throw new Unreadable('holds more than it should');
  }
}

/** A string with its length before it. */
export function wired(value: Buffer | string): Buffer {
  const bytes = Buffer.from(value);
  const length = Buffer.alloc(4);
  length.writeUInt32BE(bytes.length);
  return Buffer.concat([length, bytes]);
}

/** The bytes of base64, which Node would read whatever it is. Throws `Unreadable`. */
export function fromBase64(text: string): Buffer {
  const plain = text.replace(/\s+/g, '');
  if (plain === '' || !/^(?:[A-Za-z0-9+/]{4})*(?:[A-Za-z0-9+/]{2}==|[A-Za-z0-9+/]{3}=)?$/.test(plain))
    throw new Unreadable('is not base64');
  return Buffer.from(plain, 'base64');
}
