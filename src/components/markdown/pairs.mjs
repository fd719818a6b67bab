import { defineHastPlugin } from 'satteri';

const NUMBER = '[−-]?\\d[\\d.,]*(?<![.,])';
const METRIC = '(?:°C|[kM]Pa|bar|kg/m[²³]|g/L|mg/L|m?g|kg|[cm]?m|m[²³]|km/h|L|kJ|kW|m²·K/W)';
const US = '(?:°F|psi|lb/ft[²³]|lb|oz|in|ft[²³]?|mph|gal|qt|Btu|h·ft²·°F/Btu)';
const amounts = (/** @type {string} */ number) =>
  `${number}[ \u00a0]${METRIC} \\(${number}[ \u00a0]${US}\\)`;
/** The same amount in both systems: one number each, or two each with the same word between. */
const PAIR = new RegExp(
  `(?<![\\d.,–−-])(?:${[' to ', ' or ', ' and ', '–']
    .map((between) => amounts(NUMBER + between + NUMBER))
    .concat(amounts(NUMBER))
    .join('|')})`,
  'g',
);

/**
 * Splits a text at the amounts it gives in both systems: `600 kg/m³ (37.5 lb/ft³)`.
 * @param {string} text
 * @returns {{ readonly text: string, readonly pair: boolean }[]}
 */
export function cutAtPairs(text) {
  const found = [...text.matchAll(PAIR)];
  const ends = [0, ...found.map(({ index, 0: { length } }) => index + length)];
  return [
    ...found.flatMap((pair, i) => [
      { text: text.slice(ends[i], pair.index), pair: false },
      { text: pair[0], pair: true },
    ]),
    { text: text.slice(ends.at(-1)), pair: false },
  ].filter(({ text }) => text);
}

/** Marks the amounts given in both systems, so that the reader's own system comes first. */
export const turningPairs = () =>
  defineHastPlugin({
    name: 'turning-pairs',
    text(node, ctx) {
      const parts = cutAtPairs(node.value);
      if (!parts.some(({ pair }) => pair)) return;
      ctx.replaceNode(
        node,
        parts.map(({ text, pair }) => {
          const value = /** @type {const} */ ({ type: 'text', value: text });
          return pair
            ? {
                type: 'element',
                tagName: 'span',
                properties: { className: ['amount'] },
                children: [value],
              }
            : value;
        }),
      );
    },
  });
