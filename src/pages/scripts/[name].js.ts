/**
 * The scripts a page may ask for, each bundled into one classic script: a browser runs those from a folder on disk,
 * which it refuses to do with modules. Every page works without them.
 */
import { buildSync } from 'esbuild';
import type { APIRoute } from 'astro';
import { scriptNames } from '../../../components/scripts/names.ts';

export function getStaticPaths() {
  return scriptNames.map((name) => ({ params: { name } }));
}

export const GET: APIRoute = ({ params }) => {
  const { outputFiles } = buildSync({
    entryPoints: [`${process.cwd()}/components/scripts/${params.name}.ts`],
    bundle: true,
    write: false,
    format: 'iife',
    minify: true,
    target: 'es2020',
    legalComments: 'none',
  });
  return new Response(outputFiles[0]!.text, {
    headers: { 'Content-Type': 'text/javascript; charset=utf-8' },
  });
};
