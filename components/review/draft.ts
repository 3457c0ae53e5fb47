/** A review that is not finished, kept in the browser. A page opened from a folder may have nowhere to keep it. */
import type { Answers, Filled } from './file.ts';

export interface Draft extends Filled {
  /** The digest of the case on which it was begun. */
  digest: string;
}

type Storage = Pick<globalThis.Storage, 'getItem' | 'setItem' | 'removeItem'>;

/** Where a draft is kept. Nothing here throws: a browser may refuse any of it, at any time. */
export interface Keeper {
  read(): Draft | undefined;
  /** Whether it was kept. */
  write(draft: Draft): boolean;
  clear(): void;
}

/** Keeps drafts under a name, in the storage that `storage` gives or refuses. */
export function keeperOf(name: string, storage: () => Storage): Keeper {
  const attempt = <T>(work: (place: Storage) => T): T | undefined => {
    try {
      return work(storage());
    } catch {
      return undefined;
    }
  };
  return {
    read: () => attempt((place) => draftIn(place.getItem(name))),
    write: (draft) =>
      attempt((place) => {
        place.setItem(name, JSON.stringify(draft));
        return true;
      }) ?? false,
    clear: () => attempt((place) => place.removeItem(name)),
  };
}

const answersKnown = ['agree', 'query', 'disagree'];

/** What was kept, if it still has the form of a draft. */
function draftIn(kept: string | null): Draft | undefined {
  const value: unknown = JSON.parse(kept ?? 'null');
  if (!isMap(value) || !isMap(value['answers'])) return undefined;
  const text = (given: unknown) => (typeof given === 'string' ? given : '');
  const answers: Answers = {};
  for (const [point, given] of Object.entries(value['answers'])) {
    if (!isMap(given)) continue;
    const answer = text(given['answer']);
    answers[point] = {
      answer: answersKnown.includes(answer) ? (answer as 'agree') : undefined,
      comment: text(given['comment']),
    };
  }
  return {
    reviewer: text(value['reviewer']),
    date: text(value['date']),
    digest: text(value['digest']),
    answers,
  };
}

function isMap(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
