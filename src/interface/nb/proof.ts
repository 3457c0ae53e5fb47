import type { proof as English } from '../en/proof.ts';

export const proof: typeof English = {};
