import type { standing as English } from '../en/standing.ts';

export const standing: typeof English = {};
