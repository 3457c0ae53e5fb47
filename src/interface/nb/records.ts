import type { records as English } from '../en/records.ts';

export const records: typeof English = {};
