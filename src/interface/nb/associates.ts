import type { associates as English } from '../en/associates.ts';

export const associates: typeof English = {};
