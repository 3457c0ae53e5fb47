import type { home as English } from '../en/home.ts';

export const home: typeof English = {};
