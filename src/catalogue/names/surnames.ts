import { surname } from './build.ts';
import { synonymesFromMemory } from './sources.ts';
import type { SurnameGroup } from './types.ts';

/**
 * Surnames of Ireland with their usual spellings, and names that were used in their stead by translation, by a sound
 * taken for another or by local habit. Prefixes are left off where the name is met both with and without.
 */
// prettier-ignore
export const surnameGroups: readonly SurnameGroup[] = [
  surname('Whelan', 'Whalen Wheelan Whelon Whealan Whelahan', 'Phelan Felan Hyland', synonymesFromMemory),
  surname('Smith', 'Smyth Smythe Smithe', 'McGowan Gow O’Gowan Gowan Goan', synonymesFromMemory),
  surname('Johnston', 'Johnson Johnstone', 'McShane', synonymesFromMemory),
  surname('Walsh', 'Welsh Welch Walshe Walch', 'Brannagh Brannick Branagh', synonymesFromMemory),
  surname('Fox', '', 'Shinnock Shanahy', synonymesFromMemory),
  surname('Woods', 'Wood', 'Quilty McElhoyle Kielty', synonymesFromMemory),
  surname('Rogers', 'Rodgers', 'McRory', synonymesFromMemory),
  surname('King', '', 'Conroy', synonymesFromMemory),
  surname('Connor', 'Connors Conner Conners', '', synonymesFromMemory),
  surname('Kavanagh', 'Cavanagh Kavanaugh Cavanaugh Cavenagh Kevanagh', '', synonymesFromMemory),
  surname('Reilly', 'Riley Rielly Reily Rilley', '', synonymesFromMemory),
  surname('Keogh', 'Kehoe Keough Kehough', 'McKeogh', synonymesFromMemory),
  surname('Doherty', 'Dougherty Dogherty Daugherty Docherty', '', synonymesFromMemory),
  surname('Cunningham', 'Conyngham Cuningham Coningham', 'McDonegan', synonymesFromMemory),
  surname('Hackett', 'Hacket', 'McGackett', synonymesFromMemory),
  surname('Loughran', 'Loughren Lochran', 'Early', synonymesFromMemory),
  surname('Carr', '', 'Kerr', synonymesFromMemory),
  surname('Guinness', 'McGuinness Maginnis Magennis McGinnis McGenis Maguinness', '', synonymesFromMemory),
];
