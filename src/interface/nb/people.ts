import type { people as English } from '../en/people.ts';

export const people: typeof English = {};
