import type { story as English } from '../en/story.ts';

export const story: typeof English = {};
