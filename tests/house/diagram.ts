import { posix } from 'node:path';

/** The boxes and arrows of a Mermaid flowchart, as far as DEVELOPERS.md uses the language. */
export interface Diagram {
  /** The paths each box stands for. */
  boxes: ReadonlyMap<string, readonly string[]>;
  arrows: readonly (readonly [from: string, to: string])[];
}

/** Reads the one Mermaid block of a text; lines such as `a["src/a<br>src/b"] --> c`. */
export function readDiagram(text: string): Diagram {
  const blocks = [...text.matchAll(/```mermaid\n([\s\S]*?)```/g)].map((match) => match[1] ?? '');
  if (blocks.length !== 1) throw new Error(`There are ${blocks.length} diagrams, not one.`);
  const boxes = new Map<string, string[]>();
  const arrows: [string, string][] = [];
  const [first, ...lines] = (blocks[0] ?? '').trim().split('\n');
  if (!first?.startsWith('flowchart')) throw new Error('The diagram is no flowchart.');
  for (const line of lines) {
    const box = String.raw`(\w+)(?:\["([^"]+)"\])?`;
    const found = new RegExp(`^\\s*${box} --> ${box}$`).exec(line);
    if (!found) throw new Error(`The diagram has a line that is not understood: ${line}`);
    for (const i of [1, 3]) {
      const paths = found[i + 1];
      if (paths) boxes.set(found[i] ?? '', paths.split('<br>'));
    }
    arrows.push([found[1] ?? '', found[3] ?? '']);
  }
  const nameless = arrows.flat().filter((name) => !boxes.has(name));
  if (nameless.length > 0) throw new Error(`Boxes without a path: ${nameless.join(', ')}`);
  return { boxes, arrows };
}

export const within = (path: string, place: string) =>
  path === place || path.startsWith(`${place}/`);

/** The box a path lies in: the one that names it most closely. */
export function boxOf(path: string, { boxes }: Diagram): string | undefined {
  return [...boxes]
    .flatMap(([name, places]) => places.map((place) => ({ name, place })))
    .filter(({ place }) => within(path, place))
    .toSorted((a, b) => b.place.length - a.place.length)[0]?.name;
}

/** One circle of arrows, or nothing. */
export function circle({ boxes, arrows }: Diagram): readonly string[] | undefined {
  const walk = (trail: readonly string[]): readonly string[] | undefined => {
    const last = trail.at(-1);
    for (const [from, to] of arrows) {
      if (from !== last) continue;
      if (trail.includes(to)) return [...trail, to];
      const found = walk([...trail, to]);
      if (found) return found;
    }
    return undefined;
  };
  for (const name of boxes.keys()) {
    const found = walk([name]);
    if (found) return found;
  }
  return undefined;
}

/** The modules a file imports, re-exports or globs, types included. */
export function importsOf(text: string): string[] {
  const bare = text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/^\s*\/\/.*$/gm, '');
  const forms = [
    /\b(?:import|export)\s[^'"`;]*?\bfrom\s*['"]([^'"]+)['"]/g,
    /\bimport\s*['"]([^'"]+)['"]/g,
    /\bimport\s*\(\s*['"]([^'"]+)['"]/g,
  ];
  return forms.flatMap((form) => [...bare.matchAll(form)].map((match) => match[1] ?? ''));
}

/** The files a file globs: the folder before the first star. */
export function globsOf(text: string): string[] {
  return [...text.matchAll(/\bimport\.meta\.glob[^('"]*\(\s*['"]([^'"*]+)\//g)].map(
    (match) => match[1] ?? '',
  );
}

/** Where an import of a file leads, from the project's folder; nothing for a package. */
export function targetOf(file: string, specifier: string): string | undefined {
  if (!/^[.~/]/.test(specifier)) return undefined;
  const plain = specifier.replace(/\?\w+$/, '');
  return plain.startsWith('~/')
    ? `src/${plain.slice(2)}`
    : posix.normalize(posix.join(posix.dirname(file), plain));
}
