/** A small web server, for a site under a path: files as they are, and the site’s own page for what isn’t there. */
import { readFile } from 'node:fs/promises';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize, sep } from 'node:path';

/** The path the site is served under. */
export const base = '/some/path/';

const types: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.jpg': 'image/jpeg',
  '.woff2': 'font/woff2',
  '.json': 'application/json',
};

/** Serves a folder at a free port of this machine. `address` ends in a slash. */
export async function serve(folder: string): Promise<{ address: string; close(): Promise<void> }> {
  const server = createServer((request, response) => {
    const path = decodeURIComponent(new URL(request.url ?? '/', 'http://localhost').pathname);
    const file = fileAt(folder, path);
    const send = (status: number, type: string | undefined, bytes: Buffer) =>
      response.writeHead(status, { 'Content-Type': type ?? 'application/octet-stream' }).end(bytes);
    const whole = file ? readFile(file) : Promise.reject(new Error('outside'));
    whole.then(
      (bytes) => send(200, types[extname(file!)], bytes),
      () => readFile(join(folder, '404.html')).then((bytes) => send(404, types['.html'], bytes)),
    );
  });
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  const { port } = server.address() as AddressInfo;
  return { address: `http://127.0.0.1:${port}${base}`, close: () => closed(server) };
}

function fileAt(folder: string, path: string): string | undefined {
  if (!path.startsWith(base)) return undefined;
  const inside = path.slice(base.length);
  const file = normalize(join(folder, inside === '' ? 'index.html' : inside));
  return file.startsWith(folder + sep) ? file : undefined;
}

function closed(server: Server): Promise<void> {
  server.closeAllConnections();
  return new Promise((done) => server.close(() => done()));
}
