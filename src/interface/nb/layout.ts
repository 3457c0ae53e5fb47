import type { layout as English } from '../en/layout.ts';

export const layout: typeof English = {};
