/** Sets of small whole numbers as bits: what the exact searches spend their time on. */
export type Bits = Uint32Array;

/** An empty set of numbers below `size`. */
export function noBits(size: number): Bits {
  return new Uint32Array(Math.max(1, Math.ceil(size / 32)));
}

/** The set of given numbers below `size`. */
export function bitsOf(size: number, members: Iterable<number>): Bits {
  const bits = noBits(size);
  for (const n of members) bits[n >>> 5]! |= 1 << (n & 31);
  return bits;
}

export function hasBit(bits: Bits, n: number): boolean {
  return (bits[n >>> 5]! & (1 << (n & 31))) !== 0;
}

export function clearBit(bits: Bits, n: number): void {
  bits[n >>> 5]! &= ~(1 << (n & 31));
}

/** A new set: what two sets share. */
export function shared(a: Bits, b: Bits): Bits {
  const bits = new Uint32Array(a.length);
  for (let i = 0; i < a.length; i++) bits[i] = a[i]! & b[i]!;
  return bits;
}

/** Whether two sets share anything. */
export function meet(a: Bits, b: Bits): boolean {
  for (let i = 0; i < a.length; i++) if ((a[i]! & b[i]!) !== 0) return true;
  return false;
}

/** Adds all of `b` to `a`. */
export function addAll(a: Bits, b: Bits): void {
  for (let i = 0; i < a.length; i++) a[i]! |= b[i]!;
}

/** Takes all of `b` from `a`. */
export function removeAll(a: Bits, b: Bits): void {
  for (let i = 0; i < a.length; i++) a[i]! &= ~b[i]!;
}

/** How many numbers are in a set. */
export function countBits(bits: Bits): number {
  let count = 0;
  for (let word of bits) {
    word -= (word >>> 1) & 0x55555555;
    word = (word & 0x33333333) + ((word >>> 2) & 0x33333333);
    count += Math.imul((word + (word >>> 4)) & 0x0f0f0f0f, 0x01010101) >>> 24;
  }
  return count;
}

/** The smallest number in a set, or -1. */
export function lowestBit(bits: Bits): number {
  for (let i = 0; i < bits.length; i++)
    if (bits[i] !== 0) return i * 32 + 31 - Math.clz32(bits[i]! & -bits[i]!);
  return -1;
}

/** The numbers in a set, rising. */
export function membersOf(bits: Bits): number[] {
  const members: number[] = [];
  bits.forEach((word, i) => {
    for (let left = word; left !== 0; left &= left - 1) members.push(i * 32 + 31 - Math.clz32(left & -left));
  });
  return members;
}
