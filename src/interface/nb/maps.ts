import type { maps as English } from '../en/maps.ts';

export const maps: typeof English = {};
