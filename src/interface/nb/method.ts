import type { method as English } from '../en/method.ts';

export const method: typeof English = {};
