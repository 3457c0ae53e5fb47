import type { clues as English } from '../en/clues.ts';

export const clues: typeof English = {};
