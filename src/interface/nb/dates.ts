import type { dates as English } from '../en/dates.ts';

export const dates: typeof English = {};
