/** Names made ready for comparison, once for each spelling. */
import { prepareGiven, prepareSurname, type PreparedName } from './agree.ts';

/** Spellings that are remembered; beyond, the memory begins anew, so that it stays bounded in a process that runs on. */
const mostRemembered = 200_000;

function remembering(prepare: (text: string) => PreparedName): (text: string) => PreparedName {
  const known = new Map<string, PreparedName>();
  return (text) => {
    let name = known.get(text);
    if (!name) {
      if (known.size >= mostRemembered) known.clear();
      known.set(text, (name = prepare(text)));
    }
    return name;
  };
}

/** A given name, or several, made ready. */
export const preparedGiven = remembering(prepareGiven);

/** A surname made ready. */
export const preparedSurname = remembering(prepareSurname);
