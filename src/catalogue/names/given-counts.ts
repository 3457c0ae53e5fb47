import type { NameCount } from '../../model/name-count.ts';
import { fromMemory } from './sources.ts';

/**
 * How many in a thousand bore the commonest given names, of each sex. Rough figures from memory of what indexes of the
 * middle of the nineteenth century look like: good to tell a common name from a rare one. An author's own counts come
 * before them. A name stands with all its forms: John in Norway with Johannes, Johan, Hans and Jens.
 */
const shares: readonly (readonly [place: string, sex: 'M' | 'F', rows: string])[] = [
  [
    'ireland',
    'M',
    `John 175, Patrick 125, Michael 110, James 105, Thomas 90, William 60, Daniel 28, Peter 22, Edward 20, Timothy 14,
     Denis 14, Jeremiah 14, Martin 14, Joseph 14, Cornelius 10, Hugh 11, Robert 11, Richard 11, Francis 10, Bernard 9,
     Henry 9, George 9, Matthew 8, Charles 8, Maurice 7, Edmund 7, Laurence 7, Andrew 7, David 7, Owen 6, Nicholas 5,
     Stephen 4, Philip 4, Samuel 4, Alexander 4, Christopher 4, Bartholomew 3, Terence 2, Eugene 2`,
  ],
  [
    'ireland',
    'F',
    `Mary 205, Bridget 105, Catherine 105, Margaret 100, Ellen 80, Anne 75, Elizabeth 45, Johanna 30, Honora 28,
     Julia 22, Sarah 22, Jane 22, Hannah 14, Alice 12, Rose 11, Susan 7, Winifred 5, Anastasia 4, Martha 5, Isabella 5,
     Agnes 4, Teresa 4, Eleanor 4, Frances 3`,
  ],
  [
    'norway',
    'M',
    `Ole 125, John 160, Laurence 55, Andrew 70, Peter 60, Nicholas 50, Knut 40, James 15, Erik 25, Iver 18, Halvor 18,
     Torstein 8, Kristian 30, Martin 15, Sjur 8, Rasmus 12, Tore 12, Arne 10, Endre 4, Botolf 3`,
  ],
  [
    'norway',
    'F',
    `Anne 120, Margaret 60, Ingeborg 50, Kari 50, Marta 45, Brita 45, Mary 60, Catherine 20, Ragnhild 25, Guri 18,
     Sigrid 25, Gunhild 20, Synneva 10, Elizabeth 20, Johanna 15, Randi 15, Ellen 10, Turid 8, Gjertrud 6`,
  ],
];

/** The built-in counts of given names: so many of a hundred thousand of their sex, to say that no few were counted. */
export const givenCounts: readonly NameCount[] = shares.flatMap(([place, sex, rows]) =>
  rows.split(',').map((row): NameCount => {
    const [name = '', count = ''] = row.trim().split(' ');
    return {
      name,
      part: 'given',
      count: 100 * Number(count),
      total: 100_000,
      place,
      sex,
      source: fromMemory,
    };
  }),
);
