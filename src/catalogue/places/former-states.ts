import { place } from './build.ts';
import type { BuiltInPlace } from './types.ts';

/**
 * States and crown lands that papers named as the country of birth and that are countries no longer. Each lies in
 * the one present country that holds most of its ground; a neighbour that holds the rest is an overlap. Their ids
 * carry the rank they had, so that they stay clear of the many towns named after them.
 *
 * Empires that cannot be put in one country (Austria-Hungary, the Russian and Ottoman Empires) are variants of the
 * countries they were named for.
 */
type FormerRow = readonly [
  id: string,
  name: string,
  within: string,
  from: string,
  to: string,
  lat: number,
  lon: number,
  variants: readonly string[],
  overlaps?: readonly string[],
];

const source = 'from memory; dates are those of the state, the point is near its middle';

// prettier-ignore
const rows: readonly FormerRow[] = [
  ['prussia', 'Prussia', 'germany', '1701', '1947', 52.4, 13.1, ['Preussen', 'Preußen', 'Kingdom of Prussia'], ['poland', 'russia']],
  ['kingdom-of-bavaria', 'Bavaria', 'germany', '1806', '1918', 48.8, 11.5, ['Bayern', 'Kingdom of Bavaria']],
  ['kingdom-of-saxony', 'Saxony', 'germany', '1806', '1918', 51.0, 13.4, ['Sachsen', 'Kingdom of Saxony']],
  ['kingdom-of-wurttemberg', 'Württemberg', 'germany', '1806', '1918', 48.5, 9.2, ['Wurttemberg', 'Wuerttemberg', 'Wirtemberg', 'Kingdom of Württemberg']],
  ['kingdom-of-hanover', 'Hanover', 'germany', '1814', '1866', 52.6, 9.5, ['Hannover', 'Kingdom of Hanover']],
  ['grand-duchy-of-baden', 'Baden', 'germany', '1806', '1918', 48.5, 8.2, ['Grand Duchy of Baden']],
  ['grand-duchy-of-hesse', 'Hesse-Darmstadt', 'germany', '1806', '1918', 50.1, 8.7, ['Hessen', 'Hesse', 'Hessen-Darmstadt', 'Grand Duchy of Hesse']],
  ['electorate-of-hesse', 'Hesse-Cassel', 'germany', '1803', '1866', 51.0, 9.5, ['Hesse', 'Hesse-Kassel', 'Kurhessen', 'Electoral Hesse']],
  ['duchy-of-nassau', 'Nassau', 'germany', '1806', '1866', 50.3, 8.0, ['Duchy of Nassau']],
  ['duchy-of-brunswick', 'Brunswick', 'germany', '1814', '1918', 52.2, 10.6, ['Braunschweig', 'Duchy of Brunswick']],
  ['grand-duchy-of-oldenburg', 'Oldenburg', 'germany', '1815', '1918', 53.1, 8.1, ['Grand Duchy of Oldenburg']],
  ['mecklenburg-schwerin', 'Mecklenburg-Schwerin', 'germany', '1701', '1918', 53.8, 11.8, ['Mecklenburg']],
  ['mecklenburg-strelitz', 'Mecklenburg-Strelitz', 'germany', '1701', '1918', 53.4, 13.1, ['Mecklenburg']],
  ['schleswig-holstein', 'Schleswig-Holstein', 'germany', '..', '..', 54.2, 9.8, ['Schleswig', 'Slesvig', 'Holstein'], ['denmark']],
  ['principality-of-lippe', 'Lippe', 'germany', '1789', '1918', 51.9, 8.9, ['Lippe-Detmold']],
  ['principality-of-waldeck', 'Waldeck', 'germany', '1712', '1918', 51.3, 9.0, ['Waldeck-Pyrmont']],
  ['duchy-of-anhalt', 'Anhalt', 'germany', '1806', '1918', 51.8, 12.0, ['Duchy of Anhalt']],
  ['saxe-weimar-eisenach', 'Saxe-Weimar-Eisenach', 'germany', '1741', '1918', 50.9, 11.1, ['Saxe-Weimar', 'Sachsen-Weimar']],
  ['alsace-lorraine', 'Alsace-Lorraine', 'france', '1871', '1918', 48.7, 7.2, ['Elsass-Lothringen', 'Alsace', 'Elsass', 'Lorraine', 'Lothringen'], ['germany']],
  ['duchy-of-savoy', 'Savoy', 'france', '1416', '1860', 45.6, 6.5, ['Savoie', 'Savoia'], ['italy']],
  ['bohemia', 'Bohemia', 'czechia', '..', '1918', 49.8, 14.5, ['Böhmen', 'Čechy', 'Boehmen']],
  ['moravia', 'Moravia', 'czechia', '..', '1918', 49.3, 16.8, ['Mähren', 'Morava', 'Maehren']],
  ['transylvania', 'Transylvania', 'romania', '..', '1918', 46.4, 24.5, ['Siebenbürgen', 'Erdély', 'Ardeal']],
  ['carniola', 'Carniola', 'slovenia', '..', '1918', 45.9, 14.5, ['Krain', 'Kranjska', 'Crain']],
  ['dalmatia', 'Dalmatia', 'croatia', '..', '1918', 43.6, 16.4, ['Dalmatien', 'Dalmacija'], ['montenegro']],
  ['slavonia', 'Slavonia', 'croatia', '..', '1918', 45.4, 17.9, ['Slavonien', 'Slavonija']],
  ['kingdom-of-the-two-sicilies', 'Two Sicilies', 'italy', '1816', '1861', 40.0, 15.7, ['Kingdom of Naples', 'Kingdom of Sicily']],
  ['kingdom-of-sardinia', 'Kingdom of Sardinia', 'italy', '1720', '1861', 44.8, 8.2, ['Sardinia-Piedmont', 'Piedmont', 'Piemonte'], ['france']],
  ['papal-states', 'Papal States', 'italy', '..', '1870', 42.6, 12.5, ['States of the Church']],
];

export const formerStates: readonly BuiltInPlace[] = rows.map(
  ([id, name, within, from, to, lat, lon, variants, overlaps = []]) =>
    place(
      { id, name, kind: 'former state', within: [within], variants, overlaps, lat, lon, from, to },
      source,
    ),
);
