// Subsets the fonts to the characters the handbook uses. The results are stored in
// src/styles/fonts, so this runs only if they are missing, or by hand: node scripts/fonts.mjs

import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import subsetFont from 'subset-font';
import { isMain, root } from './tools.mjs';

/** The maximum weight of all faces together. */
const budget = 90_000;

/** @param {number} from @param {number} to both ends included */
const range = (from, to) =>
  Array.from({ length: to - from + 1 }, (_, i) => String.fromCodePoint(from + i)).join('');

const basic = range(0x20, 0x7e);
const spaces = '\u00a0\u2009\u202f';
const text = `${basic}${range(0xa0, 0xff)}${spaces}–—‘’“”…−€↑↓`;
/** Characters set in italics: words, and numbers among them. */
const italicText = `${basic}${spaces}–—‘’“”…−°·×²³µé`;

const greekSmall = 'αβγδεηθκλμνξπρστφχψω';
const greek = `${greekSmall}ϵϕΓΔΘΛΞΠΣΦΨΩ`;
/**
 * A single letter in a formula is shown by its italic twin, which has its own code point. Capital
 * Greek stays upright.
 */
const twins = [...greekSmall].map((letter) =>
  String.fromCodePoint(0x1d6fc + (letter.codePointAt(0) ?? 0) - 0x3b1),
);
const formulaLetters = `${range(0x1d434, 0x1d467)}ℎ${twins.join('')}𝜖𝜙`;
const formula = `${basic}${spaces}${formulaLetters}${greek}−×÷·±√≤≥≈≠∼∝∞∂∫∑∏∆′″∘⋅…∣→←↑↓⇒✓°\u2061\u2062\u2063\u2064`;

/**
 * @typedef {object} Face
 * @property {string} file     name in src/styles/fonts
 * @property {string} from     file in node_modules
 * @property {string} text     the characters kept, where the font has them
 * @property {string[]} features  OpenType features kept
 * @property {Record<string, number | { min: number, max: number }>} [axes]
 */

const serif = '@fontsource-variable/vollkorn/files/vollkorn-latin-wght';
const sans = '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin';
const figures = ['kern', 'liga', 'mark', 'ccmp', 'lnum', 'tnum'];

/** @type {readonly Face[]} */
const faces = [
  {
    file: 'vollkorn.woff2',
    from: `${serif}-normal.woff2`,
    text,
    features: figures,
    axes: { wght: { min: 400, max: 700 } },
  },
  {
    file: 'vollkorn-italic.woff2',
    from: `${serif}-italic.woff2`,
    text: italicText,
    features: figures,
    axes: { wght: 400 },
  },
  {
    file: 'atkinson-400.woff2',
    from: `${sans}-400-normal.woff2`,
    text,
    features: [...figures, 'frac'],
  },
  {
    file: 'atkinson-700.woff2',
    from: `${sans}-700-normal.woff2`,
    text,
    features: [...figures, 'frac'],
  },
  {
    file: 'maths.woff2',
    from: '@fontsource/noto-sans-math/files/noto-sans-math-latin-400-normal.woff2',
    text: formula,
    features: ['ccmp', 'kern', 'mark', 'ssty', 'dtls', 'flac', 'rtlm'],
  },
];

const licences = {
  'vollkorn-OFL.txt': '@fontsource-variable/vollkorn/LICENSE',
  'atkinson-OFL.txt': '@fontsource/atkinson-hyperlegible-next/LICENSE',
  'maths-OFL.txt': '@fontsource/noto-sans-math/LICENSE',
};

/**
 * Whether an SFNT font has a table.
 * @param {Buffer} font
 * @param {string} tag
 */
function hasTable(font, tag) {
  const count = font.readUInt16BE(4);
  for (let i = 0; i < count; i += 1) {
    if (font.toString('latin1', 12 + 16 * i, 16 + 16 * i) === tag) return true;
  }
  return false;
}

/** Writes every face and its licence; throws if the faces exceed the budget. */
export async function makeFonts() {
  const into = join(root, 'src/styles/fonts');
  // The licences are copied unchanged; each face gets a name with a hash of its content.
  const beside = join(root, 'public/licences');
  for (const folder of [into, beside]) mkdirSync(folder, { recursive: true });
  const sizes = [];
  for (const { file, from, text: kept, features, axes } of faces) {
    const whole = readFileSync(join(root, 'node_modules', from));
    const options = {
      keepFeatures: features,
      noHinting: true,
      ...(axes ? { variationAxes: axes } : {}),
    };
    const cut = await subsetFont(whole, kept, { ...options, targetFormat: 'woff2' });
    if (file === 'maths.woff2') {
      const plain = await subsetFont(whole, kept, { ...options, targetFormat: 'sfnt' });
      // Without this table a browser cannot place a fraction bar or stretch a root.
      if (!hasTable(plain, 'MATH')) throw new Error('The maths face lost its MATH table.');
    }
    writeFileSync(join(into, file), cut);
    sizes.push({ file, bytes: cut.length });
  }
  for (const [file, from] of Object.entries(licences)) {
    copyFileSync(join(root, 'node_modules', from), join(beside, file));
  }
  const total = sizes.reduce((sum, { bytes }) => sum + bytes, 0);
  if (total > budget) throw new Error(`The fonts weigh ${total} bytes, more than ${budget}.`);
  return { sizes, total };
}

if (isMain(import.meta)) {
  const { sizes, total } = await makeFonts();
  for (const { file, bytes } of sizes)
    console.log(`${file.padEnd(24)} ${String(bytes).padStart(6)}`);
  console.log(`${'in all'.padEnd(24)} ${String(total).padStart(6)} bytes of ${budget}`);
}
