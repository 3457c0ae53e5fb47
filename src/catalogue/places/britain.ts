import { chapmanCodes, iso3166 } from '../sources.ts';
import { place } from './build.ts';
import type { BuiltInPlace } from './types.ts';

/**
 * The United Kingdom, its three countries of Great Britain, and the islands of the crown beside them. Papers give
 * England, Scotland and Wales as countries, and their records are kept apart, so these are the countries; the
 * kingdom above them is a sovereign state. Ireland, in it from 1801, is a country of its own and does not lie in it.
 */
const source = `${iso3166}; ${chapmanCodes}; former names and points from memory`;

export const britain: readonly BuiltInPlace[] = [
  place(
    {
      id: 'united-kingdom',
      name: 'United Kingdom',
      kind: 'sovereign state',
      variants: [
        'Great Britain',
        'Britain',
        'U.K.',
        'G.B.',
        'United Kingdom of Great Britain and Ireland',
        'British Isles',
      ],
      overlaps: ['ireland'],
      lat: 54.0,
      lon: -2.5,
      from: '1707',
      iso: 'GB',
    },
    source,
  ),
  place(
    {
      id: 'england',
      name: 'England',
      kind: 'country',
      within: [{ place: 'united-kingdom', from: '1707' }],
      variants: ['Angleterre', 'Lloegr'],
      lat: 52.6,
      lon: -1.5,
      iso: 'GB-ENG',
      chapman: 'ENG',
    },
    source,
  ),
  place(
    {
      id: 'scotland',
      name: 'Scotland',
      kind: 'country',
      within: [{ place: 'united-kingdom', from: '1707' }],
      variants: ['Alba', 'North Britain', 'Caledonia'],
      lat: 56.8,
      lon: -4.2,
      iso: 'GB-SCT',
      chapman: 'SCT',
    },
    source,
  ),
  place(
    {
      id: 'wales',
      name: 'Wales',
      kind: 'country',
      within: [{ place: 'united-kingdom', from: '1707' }],
      variants: ['Cymru', 'Principality of Wales'],
      lat: 52.4,
      lon: -3.8,
      iso: 'GB-WLS',
      chapman: 'WLS',
    },
    source,
  ),
  place(
    {
      id: 'isle-of-man',
      name: 'Isle of Man',
      kind: 'country',
      variants: ['Ellan Vannin', 'Mannin', 'Isle of Mann'],
      lat: 54.2,
      lon: -4.5,
      iso: 'IM',
      chapman: 'IOM',
    },
    source,
  ),
  place(
    {
      id: 'channel-islands',
      name: 'Channel Islands',
      kind: 'country',
      variants: ['Norman Isles', 'Îles de la Manche'],
      lat: 49.4,
      lon: -2.4,
      chapman: 'CHI',
    },
    source,
  ),
  place(
    {
      id: 'jersey',
      name: 'Jersey',
      kind: 'island',
      within: ['channel-islands'],
      variants: ['Jèrri', 'Isle of Jersey'],
      lat: 49.2,
      lon: -2.1,
      iso: 'JE',
      chapman: 'JSY',
    },
    source,
  ),
  place(
    {
      id: 'guernsey',
      name: 'Guernsey',
      kind: 'island',
      within: ['channel-islands'],
      variants: ['Guernési', 'Guernesey', 'Isle of Guernsey'],
      lat: 49.5,
      lon: -2.6,
      iso: 'GG',
      chapman: 'GSY',
    },
    source,
  ),
  place(
    {
      id: 'alderney',
      name: 'Alderney',
      kind: 'island',
      within: ['channel-islands'],
      variants: ['Aurigny'],
      lat: 49.7,
      lon: -2.2,
      chapman: 'ALD',
    },
    source,
  ),
  place(
    {
      id: 'sark',
      name: 'Sark',
      kind: 'island',
      within: ['channel-islands'],
      variants: ['Sercq'],
      lat: 49.4,
      lon: -2.4,
      chapman: 'SRK',
    },
    source,
  ),
];
