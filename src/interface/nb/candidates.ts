import type { candidates as English } from '../en/candidates.ts';

export const candidates: typeof English = {};
