/** The shape that stands for each part, drawn around 0,0 within four units each way. Told apart without colour. */
import type { AssociateRole } from '../../src/reasoning/associates/types.ts';

export const shapes: Readonly<Record<AssociateRole, { path: string; filled: boolean }>> = {
  witness: { path: 'M0 -4.4 4.4 0 0 4.4 -4.4 0Z', filled: false },
  sponsor: { path: 'M0 -4a4 4 0 1 0 .01 0Z', filled: false },
  neighbour: { path: 'M-3.5 -3.5h7v7h-7Z', filled: false },
  'fellow-passenger': { path: 'M0 -5 5 4h-10Z', filled: true },
  household: { path: 'M-4 -4h8v8h-8Z', filled: true },
  grantor: { path: 'M0 -5 5 0 0 5 -5 0Z', filled: true },
  bondsman: { path: 'M-4.2 -3.4h8.4L0 4.4Z', filled: false },
  informant: { path: 'M-5 -4h10L0 5Z', filled: true },
  mourner: { path: 'M0 -4.4V4.4M-3.4 -1.4h6.8', filled: false },
  'fellow-worker': { path: 'M-3.4 -3.4 3.4 3.4M3.4 -3.4 -3.4 3.4', filled: false },
  other: { path: 'M0 -3a3 3 0 1 0 .01 0Z', filled: true },
};
