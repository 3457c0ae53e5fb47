import type { journeys as English } from '../en/journeys.ts';

export const journeys: typeof English = {};
