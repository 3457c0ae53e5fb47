import type { identity as English } from '../en/identity.ts';

export const identity: typeof English = {};
