import type { about as English } from '../en/about.ts';

export const about: typeof English = {};
