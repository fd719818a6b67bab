// Runs every check of the project, goes on after a failure, and ends with one line that counts:
// each test is one check, and so is each stage that is not made of tests.

import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { timeFaults } from './site/rules/time.mjs';
import { tested } from './tested.mjs';
import { root, run } from './tools.mjs';

/** @typedef {{ passed: number, failed: number }} Count */

/**
 * Counts a stage that either holds or does not.
 * @param {boolean} holds
 * @returns {Count}
 */
const one = (holds) => ({ passed: holds ? 1 : 0, failed: holds ? 0 : 1 });

/**
 * Runs one project of Vitest and counts its tests from its own report. A file that cannot be
 * read, a crash beside the tests, and a run of no tests at all each count as a failure.
 * @param {string} project
 * @param {Record<string, string>} [env]
 * @returns {Promise<Count>}
 */
async function vitest(project, env = {}) {
  const report = join(root, '.build/reports', `${project}.json`);
  rmSync(report, { force: true });
  const { code } = await run(
    'vitest',
    [
      ...['run', '--project', project, '--allowOnly=false'],
      ...['--reporter=default', '--reporter=json', `--outputFile.json=${report}`],
    ],
    { env },
  );
  try {
    const { numPassedTests, numFailedTests, testResults } = JSON.parse(
      readFileSync(report, 'utf8'),
    );
    const broken = testResults.filter(
      (/** @type {{ status: string, assertionResults: { status: string }[] }} */ file) =>
        file.status === 'failed' && !file.assertionResults.some((test) => test.status === 'failed'),
    ).length;
    const failed = numFailedTests + broken;
    const unexplained = failed === 0 && (code !== 0 || numPassedTests === 0) ? 1 : 0;
    return { passed: numPassedTests, failed: failed + unexplained };
  } catch {
    console.error(`The ${project} tests left no report.`);
    return one(false);
  }
}

/** @param {readonly string[]} args @param {string} tool */
const tool = async (tool, args) => one((await run(tool, args)).code === 0);

/** A tool that runs beside another stage: what it says is said in one piece. @type {typeof tool} */
async function toolBeside(tool, args) {
  const { code, output } = await run(tool, args, { quiet: true });
  console.log(output);
  return one(code === 0);
}

/** What the build of the tested site took, s. */
let buildSeconds = Number.POSITIVE_INFINITY;

async function buildTested() {
  const { buildSite } = await import('./build.mjs');
  const begun = performance.now();
  try {
    await buildSite(tested);
    buildSeconds = (performance.now() - begun) / 1000;
    return one(true);
  } catch (error) {
    console.error(/** @type {Error} */ (error).message);
    return one(false);
  }
}

/** A slow build is a failure of its own: the browser tests need the site, not its haste. */
function buildInTime() {
  const faults = timeFaults(buildSeconds);
  for (const fault of faults) console.error(fault);
  return one(faults.length === 0);
}

/** A stage that breaks down has failed; the others still run. @param {unknown} error */
function crashed(error) {
  console.error(error);
  return one(false);
}

/**
 * A stage begins when the one before it has ended; one that runs `beside` the next, with it: checking
 * the types takes one core for a while, and the unit tests take what there is.
 * @type {{ name: string, work: () => Promise<Count>, needs?: string, beside?: true }[]}
 */
const stages = [
  {
    name: 'format and lint',
    work: () => tool('@biomejs/biome', ['check', '--error-on-warnings', '.']),
  },
  // Files, exports and packages that nothing uses.
  {
    name: 'dead code',
    work: () => tool('knip', ['--no-progress', '--treat-config-hints-as-errors']),
  },
  {
    name: 'types',
    beside: true,
    work: () => toolBeside('astro', ['check', '--minimumFailingSeverity', 'warning']),
  },
  { name: 'unit tests', work: () => vitest('unit') },
  { name: 'build', work: buildTested },
  { name: 'build in time', needs: 'build', work: async () => buildInTime() },
  {
    name: 'browser tests',
    // An old build would be tested in place of the one that failed.
    needs: 'build',
    work: () => vitest('browser', { TESTED_SITE: tested.into, TESTED_BASE: tested.base }),
  },
  {
    // After the others: what is timed runs alone.
    name: 'speed',
    needs: 'build',
    work: () => vitest('speed', { TESTED_SITE: tested.into, TESTED_BASE: tested.base }),
  },
];

mkdirSync(join(root, '.build/reports'), { recursive: true });
/** @type {{ name: string, count: Count, seconds: number }[]} */
const results = [];

/** @param {(typeof stages)[number]} stage */
async function runStage({ name, work, needs }) {
  console.log(`\n── ${name} ──`);
  const begun = performance.now();
  const ready = !needs || results.some((done) => done.name === needs && done.count.failed === 0);
  if (!ready) console.error(`Not run: the ${needs} failed.`);
  const count = ready ? await work().catch(crashed) : one(false);
  results.push({ name, count, seconds: (performance.now() - begun) / 1000 });
}

/** @type {Promise<void>[]} */
const running = [];
for (const stage of stages) {
  running.push(runStage(stage));
  if (!stage.beside) await Promise.all(running);
}
await Promise.all(running);

console.log('\n── in all ──');
for (const { name, count, seconds } of results) {
  const outcome = count.failed === 0 ? 'passed' : 'FAILED';
  const tests = `${count.passed} passed, ${count.failed} failed`;
  console.log(`  ${name.padEnd(16)} ${outcome}  ${seconds.toFixed(0).padStart(4)} s  ${tests}`);
}
const passed = results.reduce((sum, { count }) => sum + count.passed, 0);
const failed = results.reduce((sum, { count }) => sum + count.failed, 0);
process.exitCode = failed === 0 ? 0 : 1;
console.log(`${passed} passed, ${failed} failed`);
