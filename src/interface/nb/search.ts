import type { search as English } from '../en/search.ts';

export const search: typeof English = {};
