import type { publishing as English } from '../en/publishing.ts';

export const publishing: typeof English = {};
