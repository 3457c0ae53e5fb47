/** The site can’t be written where it was asked for. The message is a sentence; exit code 2. */
export class CannotWrite extends Error {
  override name = 'CannotWrite';
}

/** The site was made and must not be published. The message is a sentence for the author; exit code 1. */
export class MustNotPublish extends Error {
  override name = 'MustNotPublish';
}
