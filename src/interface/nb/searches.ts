import type { searches as English } from '../en/searches.ts';

export const searches: typeof English = {};
