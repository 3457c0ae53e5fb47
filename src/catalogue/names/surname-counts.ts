import type { NameCount } from '../../model/name-count.ts';
import { specialReport } from './sources.ts';

/**
 * How many bore the commonest surnames. The figures for Ireland are R. E. Matheson's: the births registered in 1890
 * times 44.8, so many people there being to one birth, each name with its varieties and with or without O’ and Mac.
 * They are of 1890, after the Famine and the emigration, and speak of earlier years with that reserve.
 */

/** People and births of 1890; their ratio is the 44.8 of the report. Both from memory. */
const irelandIn1890 = 4_717_959;
export const peopleToOneBirth = 44.8;

/** The rows seen in a copy of the report; the numbers of all others are from memory. */
const seen = new Set(['Murphy', 'Kelly', 'Sullivan', 'Dwyer']);

/** In the order of the report, the commonest first. */
const ireland = `
Murphy 62600, Kelly 55900, Sullivan 43600, Walsh 41700, Smith 33700, O'Brien 33400, Byrne 33300, Ryan 32000,
Connor 31200, O'Neill 29100, Reilly 29000, Doyle 23000, McCarthy 22300, Gallagher 21800, Doherty 20800, Kennedy 19900,
Lynch 19800, Murray 19600, Quinn 18200, Moore 17700, McLaughlin 17500, Carroll 17400, Connolly 17000, Daly 17000,
Connell 16600, Wilson 16300, Dunne 16300, Brennan 16000, Burke 15900, Collins 15700, Campbell 15600, Clarke 15400,
Johnston 15200, Hughes 14900, Farrell 14700, Fitzgerald 14700, Brown 14600, Martin 14600, Maguire 14400, Nolan 14300,
Flynn 14300, Thompson 14200, Callaghan 14000, O'Donnell 13900, Duffy 13600, Mahony 13500, Boyle 13000, Healy 13000,
Shea 13000, White 13000, Sweeney 12500, Hayes 12300, Kavanagh 12200, Power 12100, McGrath 11900, Moran 11800,
Brady 11600, Stewart 11400, Casey 11300, Foley 11200, Fitzpatrick 11100, Leary 11000, McDonnell 11000, McMahon 10700,
Donnelly 10700, Regan 10500, Donovan 9900, Burns 9800, Flanagan 9800, Mullan 9800, Barry 9700, Kane 9700,
Robinson 9700, Cunningham 9600, Griffin 9600, Kenny 9600, Sheehan 9600, Ward 9500, Whelan 9500, Lyons 9400, Reid 9200,
Graham 9100, Higgins 9100, Cullen 9000, Keane 9000, King 9000, Maher 9000, McKenna 9000, Bell 8800, Scott 8700,
Hogan 8600, O'Keeffe 8600, Magee 8600, McNamara 8500, McDonald 8500, McDermott 8400, Moloney 8300, Rourke 8300,
Buckley 8200, Dwyer 8100`;

/** Rows printed beside them in the same report, with the totals that their printed shares per thousand give. */
const britain: readonly (readonly [places: readonly string[], total: number, rows: string, of: string])[] = [
  [
    ['england', 'wales'],
    18_350_000,
    'Smith 253600, Jones 242100, Williams 159900',
    'England and Wales, 1853',
  ],
  [['scotland'], 3_110_000, 'Smith 44200, McDonald 36600, Brown 33800', 'Scotland, 1863'],
];

function rowsOf(text: string): [name: string, count: number][] {
  return text
    .trim()
    .split(/,\s*/u)
    .map((row) => {
      const [name = '', count = ''] = row.split(' ');
      return [name, Number(count)];
    });
}

/** The built-in counts of surnames. */
export const surnameCounts: readonly NameCount[] = [
  ...rowsOf(ireland).map(([name, count]): NameCount => ({
    name,
    part: 'surname',
    count,
    total: irelandIn1890,
    place: 'ireland',
    source: seen.has(name) ? specialReport : `${specialReport}, the number from memory`,
  })),
  ...britain.flatMap(([places, total, rows, of]) =>
    places.flatMap((place) =>
      rowsOf(rows).map(([name, count]): NameCount => ({
        name,
        part: 'surname',
        count,
        total,
        place,
        source: `${specialReport}: ${of}`,
      })),
    ),
  ),
];
