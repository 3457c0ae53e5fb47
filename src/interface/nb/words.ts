import type { words as English } from '../en/words.ts';

export const words: typeof English = {};
