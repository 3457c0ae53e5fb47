import type { plan as English } from '../en/plan.ts';

export const plan: typeof English = {};
