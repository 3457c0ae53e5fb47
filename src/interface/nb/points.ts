import type { points as English } from '../en/points.ts';

export const points: typeof English = {};
