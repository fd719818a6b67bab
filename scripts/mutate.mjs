// Mutation testing of core: breaks the arithmetic in one small way after another and asks whether a
// test beside it notices. Run by hand: npm run mutate [-- subject …] [--lines 200] [--all] [--in heat/cells].
// A subject is a folder of src/core; its tests are tests/core/<subject> and the published rows. The files
// that lie in none are the subject `core`.

import { mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { parseArgs } from 'node:util';
import ts from 'typescript';
import { root, run } from './tools.mjs';

/** Drawn anew only when the sources change, so that two runs can be compared. */
const seed = 20261125;

/**
 * Mulberry32: numbers from 0 to 1 that are the same in every run.
 * @param {number} state
 */
function random(state) {
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** @typedef {{ file: string, from: number, to: number }} Piece */

/**
 * The functions, classes and tables of a file, as lines counted from 1. Types compute nothing.
 * @param {string} file
 * @returns {Piece[]}
 */
function pieces(file) {
  const parsed = ts.createSourceFile(
    file,
    readFileSync(join(root, file), 'utf8'),
    ts.ScriptTarget.Latest,
  );
  const line = (/** @type {number} */ at) => parsed.getLineAndCharacterOfPosition(at).line + 1;
  return parsed.statements
    .filter(
      (statement) =>
        ts.isFunctionDeclaration(statement) ||
        ts.isClassDeclaration(statement) ||
        ts.isVariableStatement(statement),
    )
    .map((statement) => ({
      file,
      from: line(statement.getStart(parsed)),
      to: line(statement.getEnd()),
    }));
}

/**
 * A random choice of pieces of about so many lines in all.
 * @param {readonly Piece[]} all
 * @param {number} lines
 */
function sample(all, lines) {
  const draw = random(seed);
  const shuffled = all
    .map((piece) => ({ piece, at: draw() }))
    .toSorted((a, b) => a.at - b.at)
    .map(({ piece }) => piece);
  let left = lines;
  return shuffled.filter(({ from, to }) => {
    const taken = left > 0;
    if (taken) left -= to - from + 1;
    return taken;
  });
}

/** The files of core that lie in no folder, as a subject. */
const TOP = 'core';

/** @param {string} subject */
const filesOf = (subject) =>
  readdirSync(join(root, 'src/core', subject === TOP ? '' : subject), {
    recursive: subject !== TOP,
    withFileTypes: true,
  })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.ts'))
    .map((entry) => relative(root, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .toSorted();

/** @typedef {{ status: string, mutatorName: string, replacement?: string, location: { start: { line: number, column: number }, end: { line: number, column: number } } }} Mutant */

/**
 * Breaks one subject, prints what no test noticed, and counts.
 * @param {string} subject
 * @param {number} lines
 */
async function mutate(subject, lines) {
  const files = filesOf(subject).filter((file) => file.includes(values.in));
  if (files.length === 0)
    throw new Error(`${subject} has no file with '${values.in}' in its path.`);
  const chosen = sample(files.flatMap(pieces), lines);
  const report = join('.build/mutation', `${subject}.json`);
  const { code, output } = await run(
    '@stryker-mutator/core',
    ['run', 'scripts/mutate.config.mjs'],
    {
      tool: 'stryker',
      quiet: true,
      env: {
        SUBJECT: subject,
        MUTATE: chosen.map(({ file, from, to }) => `${file}:${from}-${to}`).join(','),
        REPORT: report,
      },
    },
  );
  if (code !== 0) throw new Error(`${subject}: the mutation run broke down.\n${output}`);
  /** @type {Record<string, { source: string, mutants: Mutant[] }>} */
  const broken = JSON.parse(readFileSync(join(root, report), 'utf8')).files;
  const counts = { killed: 0, survived: 0, unreached: 0 };
  for (const [file, { source, mutants }] of Object.entries(broken)) {
    for (const { status, mutatorName, replacement = '', location } of mutants) {
      if (status === 'Killed' || status === 'Timeout') counts.killed += 1;
      if (status !== 'Survived' && status !== 'NoCoverage') continue;
      counts[status === 'Survived' ? 'survived' : 'unreached'] += 1;
      const { line } = location.start;
      const text = source.split('\n')[line - 1]?.trim() ?? '';
      const change = replacement.replace(/\s+/g, ' ').slice(0, 100);
      const unreached = status === 'NoCoverage' ? ' (no test reaches it)' : '';
      console.log(`  ${file}:${line} ${mutatorName}${unreached}\n    ${text}\n    → ${change}`);
    }
  }
  return counts;
}

const subjects = [
  TOP,
  ...readdirSync(join(root, 'src/core'), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name),
];
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    lines: { type: 'string', default: '150' },
    all: { type: 'boolean', default: false },
    /** Only files with this in their path. */
    in: { type: 'string', default: '' },
  },
});
const strange = positionals.filter((name) => !subjects.includes(name));
if (strange.length > 0) {
  throw new Error(`No subject of core: ${strange.join(', ')}. There are ${subjects.join(', ')}.`);
}
mkdirSync(join(root, '.build/mutation'), { recursive: true });

const table = [];
for (const subject of positionals.length > 0 ? positionals : subjects) {
  console.log(`── ${subject} ──`);
  const counts = await mutate(
    subject,
    values.all ? Number.POSITIVE_INFINITY : Number(values.lines),
  );
  table.push({ subject, ...counts });
}
const sum = table.reduce(
  (total, { killed, survived, unreached }) => ({
    subject: 'in all',
    killed: total.killed + killed,
    survived: total.survived + survived,
    unreached: total.unreached + unreached,
  }),
  { subject: 'in all', killed: 0, survived: 0, unreached: 0 },
);
console.log('\nsubject       mutants  noticed  score');
for (const { subject, killed, survived, unreached } of [...table, sum]) {
  const tried = killed + survived + unreached;
  const score = tried === 0 ? '–' : `${((100 * killed) / tried).toFixed(0)} %`;
  console.log(
    `${subject.padEnd(14)}${String(tried).padStart(6)} ${String(killed).padStart(8)}  ${score.padStart(5)}`,
  );
}
