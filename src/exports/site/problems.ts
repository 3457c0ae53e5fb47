import type { Hit } from '../../dossier/living-look.ts';

/** The site can’t be written where it was asked for. The message is a sentence; exit code 2. */
export class CannotWrite extends Error {
  override name = 'CannotWrite';
}

/** The site was made and must not be published. The message is a sentence for the author; exit code 1. */
export class MustNotPublish extends Error {
  override name = 'MustNotPublish';
}

const ways: Record<Hit['what'], string> = {
  name: 'by name',
  day: 'by the day they were born on',
  address: 'by an address',
  telephone: 'by a telephone number',
  email: 'by an e-mail address',
};

/** A file of the site would tell of someone withheld as living. */
export class TellsOfLiving extends MustNotPublish {
  override name = 'TellsOfLiving';
  readonly path: string;
  readonly hit: Hit;
  constructor(path: string, hit: Hit) {
    super(
      `${path} would tell of someone living, ${ways[hit.what]}: ${hit.who.includes('#') ? 'the mention' : 'the person'} ${hit.who}. Nothing was written.`,
    );
    this.path = path;
    this.hit = hit;
  }
}
