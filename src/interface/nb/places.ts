import type { places as English } from '../en/places.ts';

export const places: typeof English = {};
