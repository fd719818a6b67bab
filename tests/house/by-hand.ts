import ts from 'typescript';
import { KINDS } from '../../src/core/quantity/kinds.ts';

/** A number whose digits were set without `say` or `formatNumber`. */
const SET = /^(?:toFixed|toPrecision)$/;
/** A unit behind it, or what holds one: letters, `%`, `°C`. */
const UNIT = /^(?:\u00a0|&nbsp;| (?=[%°]))[\p{L}%°]/u;

/** Through brackets, `String(…)`, `+x` and `Number(…)`, down to what sets a number. */
function inner(node: ts.Expression): ts.Expression {
  if (ts.isParenthesizedExpression(node)) return inner(node.expression);
  if (ts.isPrefixUnaryExpression(node)) return inner(node.operand);
  if (
    ts.isCallExpression(node) &&
    ts.isIdentifier(node.expression) &&
    /^(?:Number|String)$/.test(node.expression.text) &&
    node.arguments[0]
  )
    return inner(node.arguments[0]);
  return node;
}

/** Every number in a worksheet’s file that is set by hand with a unit behind it, as it stands there. */
export function byHand(file: string, code: string): readonly string[] {
  const source = ts.createSourceFile(file, code, ts.ScriptTarget.Latest, true);
  /** Constants and helpers of this file that are such a number. */
  const named = new Set<string>();
  const isSet = (expression: ts.Expression): boolean => {
    const node = inner(expression);
    if (ts.isConditionalExpression(node)) return isSet(node.whenTrue) || isSet(node.whenFalse);
    if (ts.isIdentifier(node)) return named.has(node.text);
    if (!ts.isCallExpression(node)) return false;
    const called = node.expression;
    if (ts.isPropertyAccessExpression(called)) return SET.test(called.name.text);
    return ts.isIdentifier(called) && named.has(called.text);
  };
  const name = (node: ts.Node): void => {
    if (ts.isVariableDeclaration(node) && ts.isIdentifier(node.name) && node.initializer) {
      const value = node.initializer;
      const body = ts.isArrowFunction(value) && !ts.isBlock(value.body) ? value.body : value;
      if (isSet(body as ts.Expression)) named.add(node.name.text);
    }
    ts.forEachChild(node, name);
  };
  name(source);
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isTemplateExpression(node))
      node.templateSpans.forEach(({ expression, literal }, i) => {
        const unit = node.templateSpans[i + 1]?.expression.getText() ?? '';
        const behind =
          UNIT.test(literal.text) || (literal.text === '\u00a0' && /unit|symbol/i.test(unit));
        if (behind && isSet(expression))
          found.push(`${expression.getText()} ${literal.text.trim() || unit}`);
      });
    if (ts.isJsxExpression(node) && node.expression && isSet(node.expression)) {
      const behind = code.slice(node.end, node.end + 8);
      if (UNIT.test(behind)) found.push(node.getText());
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

/** The units a reader of the other system would read another amount in; an inch is also a word. */
const TURNED = Object.values(KINDS)
  .filter(({ shown }) => shown.metric !== shown.us)
  .flatMap(({ units }) => units.map(({ symbol }) => symbol))
  .filter((symbol) => symbol && symbol !== 'in')
  .map((symbol) => symbol.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&'))
  .toSorted((a, b) => b.length - a.length);
const IN_TEXT = new RegExp(
  String.raw`\{([^{}]*\.to(?:Fixed|Precision)\([^{}]*)\}(?:[ \u00a0]|&nbsp;)(${TURNED.join('|')})(?![\p{L}/·])`,
  'gu',
);

/** The same in a chapter: a number and a unit that should be an `Amount`. */
export const byHandInText = (text: string): readonly string[] =>
  [...text.matchAll(IN_TEXT)].map(([, number, unit]) => `${number} ${unit}`);
