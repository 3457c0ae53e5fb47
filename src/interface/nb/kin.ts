import type { kin as English } from '../en/kin.ts';

export const kin: typeof English = {};
