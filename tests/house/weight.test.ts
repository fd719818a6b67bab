import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { MOST, weightFaults } from '../../scripts/site/rules/weight.mjs';
import { type Weight, weighSite } from '../../scripts/site/weights.mjs';

const light: Weight = { path: 'a/', html: 1, css: 1, js: 1, request: 0, islands: 1 };
const faults = (change: Partial<Weight>, kept = 0) =>
  weightFaults([{ ...light, ...change }], kept).join();

describe('a page above its weight limits is found', () => {
  test('a light page has no fault', () => {
    expect(faults({})).toBe('');
  });
  test('HTML, CSS, scripts, and all that is kept', () => {
    expect(faults({ html: MOST.html + 1 })).toContain('a/: its HTML weighs 20001 B');
    expect(faults({ css: MOST.css + 1 })).toContain('a/: its CSS');
    expect(faults({ js: MOST.script + 1 })).toContain('a/: its JavaScript');
    expect(faults({}, MOST.kept + 1)).toContain('without a network');
  });
  test('a page that may weigh more is bounded too', () => {
    const path = 'first-batch/';
    expect(faults({ path, js: MOST.script + 1 })).toBe('');
    expect(faults({ path: 'bench/run/', js: 100_000 })).toContain('bench/run/: its JavaScript');
  });
  test('a page of prose has a smaller allowance, home a smaller first view', () => {
    expect(faults({ js: MOST.prose + 1 })).toBe('');
    expect(faults({ js: MOST.prose + 1, islands: 0 })).toContain('its JavaScript');
    expect(faults({ path: '', html: MOST.home, css: 1 })).toContain('home');
  });
});

describe('a page is weighed with all its worksheets fetch', () => {
  let folder: string;
  const scripts: Record<string, string> = {
    'page.a.js': 'import"./Wake.b.js";const page=1;',
    'Wake.b.js':
      'const t={"./listed/foam.ts":()=>import("./foam.i.js"),"./listed/live.ts":()=>import("./live.j.js")};import("./mount.e.js");',
    'foam.i.js': 'const f={"../../../worksheets/foam/one.tsx":()=>import("./one.c.js")};',
    'live.j.js': 'const l={"../../../worksheets/live/one.tsx":()=>import("./other.d.js")};',
    'one.c.js':
      'import{a}from"./shared.f.js";const one=2;import("./late.g.js");import("./papaparse.h.js")',
    'other.d.js': 'const other=3;',
    'mount.e.js': 'import{a}from"./shared.f.js";const mount=4;',
    'shared.f.js': 'const a=5;export{a};',
    'late.g.js': 'const late=6;',
    'papaparse.h.js': 'const csv=7;',
  };
  const size = (...names: string[]) =>
    names.reduce((sum, name) => sum + gzipSync(scripts[name]!, { level: 9 }).length, 0);

  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'weights-'));
    mkdirSync(join(folder, '_astro'));
    for (const [name, text] of Object.entries(scripts))
      writeFileSync(join(folder, '_astro', name), text);
    const page = (body: string) =>
      `<!doctype html><script type="module" src="/x/_astro/page.a.js"></script>${body}`;
    writeFileSync(join(folder, 'index.html'), page('<i data-island="foam/one"></i>'));
    writeFileSync(join(folder, '404.html'), page(''));
  });
  afterEach(() => rmSync(folder, { recursive: true, force: true }));

  test('counts imported and late scripts, and separately those on demand', () => {
    const { pages } = weighSite(folder, '/x/');
    const [prose, live] = pages;
    expect(prose).toMatchObject({ path: '404.html', js: size('page.a.js', 'Wake.b.js') });
    expect(live).toMatchObject({
      path: '',
      islands: 1,
      js: size(
        ...['page.a.js', 'Wake.b.js', 'foam.i.js', 'one.c.js', 'mount.e.js', 'shared.f.js'],
        'late.g.js',
      ),
      request: size('papaparse.h.js'),
    });
  });

  test('a worksheet without a script is found', () => {
    writeFileSync(join(folder, '404.html'), '<i data-island="foam/none"></i>');
    expect(() => weighSite(folder, '/x/')).toThrow("404.html: no script is listed for 'foam/none'");
  });
});
