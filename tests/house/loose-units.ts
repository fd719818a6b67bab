import ts from 'typescript';
import { keptTogether } from '../../src/components/markdown/kept-together.ts';

/** A piece of text in a source file where a unit could begin a line, and the same kept together. */
export interface Loose {
  readonly start: number;
  readonly end: number;
  readonly text: string;
  readonly kept: string;
}

/** What is read as an amount and not shown as text. */
const ENTERED = /^(?:example|min|max|plusMinus)$/;
const AMOUNT = /^[-−]?[\d.,]+ \S+(?: CaCO3)?$/;
/** Attributes of drawings, where `0 L5` is a line. */
const DRAWN = /^(?:d|points|transform|viewBox|class)$/;

const isTemplatePart = (node: ts.Node): boolean =>
  ts.isTemplateMiddle(node) || ts.isTemplateTail(node);

/** Every text of a worksheet's file in which a number could part from its unit once a browser draws it. */
export function looseUnits(file: string, code: string): readonly Loose[] {
  const source = ts.createSourceFile(file, code, ts.ScriptTarget.Latest, true);
  const found: Loose[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node)) return;
    if (ts.isTaggedTemplateExpression(node)) return;
    if (ts.isPropertyAssignment(node) && ENTERED.test(node.name.getText())) return;
    if (ts.isJsxAttribute(node) && DRAWN.test(node.name.getText())) return;
    const shown =
      ts.isStringLiteralLike(node) ||
      ts.isTemplateHead(node) ||
      isTemplatePart(node) ||
      ts.isJsxText(node);
    if (shown) {
      const start = ts.isJsxText(node) ? node.pos : node.getStart() + 1;
      const end = node.end - (ts.isJsxText(node) ? 0 : closing(node));
      const text = code.slice(start, end);
      // What stands before the rest of a template is taken for a number.
      const before = isTemplatePart(node) ? '0' : '';
      const kept = keptTogether(before + text).slice(before.length);
      if (kept !== text && !AMOUNT.test(text)) found.push({ start, end, text, kept });
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

/** How much of a literal's end is its closing mark: `${` or one quotation mark. */
const closing = (node: ts.Node): number =>
  ts.isTemplateHead(node) || ts.isTemplateMiddle(node) ? 2 : 1;
