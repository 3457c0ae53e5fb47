/** Fetches parts of the index. Each is asked for once; a page opened from a folder gets them just as from a server. */
import {
  contentsName,
  partName,
  receiver,
  type Card,
  type Contents,
  type FormRow,
  type SoundRow,
  type Table,
  type WordRow,
} from '../../src/dossier/search/format.ts';

export interface Rows {
  names: WordRow;
  text: WordRow;
  forms: FormRow;
  sounds: SoundRow;
  cards: Card;
}

/** Where the parts of an index come from. */
export interface Parts {
  contents(): Promise<Contents>;
  rows<T extends Table>(table: T, part: number): Promise<readonly Rows[T][]>;
}

/** Gets a file of the index by its name: whatever it hands over. */
export type GetFile = (name: string) => Promise<unknown>;

/** Parts by a way to get files. What could not be got is asked for anew the next time. */
export function partsBy(get: GetFile): Parts {
  const asked = new Map<string, Promise<unknown>>();
  const once = (name: string): Promise<unknown> => {
    let answer = asked.get(name);
    if (!answer) {
      asked.set(name, (answer = get(name)));
      answer.catch(() => asked.delete(name));
    }
    return answer;
  };
  return {
    contents: () => once(contentsName) as Promise<Contents>,
    rows: <T extends Table>(table: T, part: number) =>
      once(partName(table, part)) as Promise<readonly Rows[T][]>,
  };
}

/** Gets files as scripts of the page: each hands over what it holds by its name. */
export function byScript(folder: string, edition: string): GetFile {
  const waiting = new Map<string, (given: unknown) => void>();
  Object.assign(window, {
    [receiver]: (name: string, given: unknown) => {
      waiting.get(name)?.(given);
      waiting.delete(name);
    },
  });
  return (name) =>
    new Promise((resolve, reject) => {
      waiting.set(name, resolve);
      const script = document.createElement('script');
      script.src = `${folder}${name}.js?${edition}`;
      script.onload = () => {
        script.remove();
        if (waiting.delete(name)) reject(new Error(`${name} held nothing`));
      };
      script.onerror = () => {
        script.remove();
        waiting.delete(name);
        reject(new Error(`${name} could not be read`));
      };
      document.head.append(script);
    });
}
