import ts from 'typescript';

/** What a file declares or runs at its top: each name, and the names it stands on, by file: `src/a.ts#b`. */
type Uses = ReadonlyMap<string, ReadonlySet<string>>;

/** The name under which what a file runs at its top, and what it imports whole, is kept. */
export const ALL = '*';

export interface Parsed {
  readonly file: string;
  readonly source: ts.SourceFile;
  /** What each imported name is: the file, and its name there (`ALL` for the whole). */
  readonly imports: ReadonlyMap<string, readonly [file: string, name: string]>;
  /** The names the file itself declares at its top. */
  readonly own: ReadonlySet<string>;
}

/** Reads a file's imports and declarations. `targetOf` says which file a specifier means, if it is ours. */
export function parse(
  file: string,
  text: string,
  targetOf: (file: string, specifier: string) => string | undefined,
): Parsed {
  const kind = file.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true, kind);
  const imports = new Map<string, readonly [string, string]>();
  const own = new Set<string>();
  for (const statement of source.statements) {
    if (ts.isImportDeclaration(statement)) {
      const target = targetOf(file, (statement.moduleSpecifier as ts.StringLiteral).text);
      const clause = statement.importClause;
      if (!target || !clause) continue;
      if (clause.name) imports.set(clause.name.text, [target, 'default']);
      const named = clause.namedBindings;
      if (named && ts.isNamespaceImport(named)) imports.set(named.name.text, [target, ALL]);
      else
        for (const { name, propertyName } of named?.elements ?? [])
          imports.set(name.text, [target, (propertyName ?? name).text]);
    } else for (const name of namesOf(statement)) own.add(name);
  }
  return { file, source, imports, own };
}

function namesOf(statement: ts.Statement): readonly string[] {
  if (ts.isVariableStatement(statement))
    return statement.declarationList.declarations.flatMap(({ name }) => boundBy(name));
  if (ts.isFunctionDeclaration(statement) || ts.isClassDeclaration(statement))
    return [statement.name?.text ?? 'default'];
  return [];
}

const boundBy = (name: ts.BindingName): string[] =>
  ts.isIdentifier(name)
    ? [name.text]
    : name.elements.flatMap((element) =>
        ts.isOmittedExpression(element) ? [] : boundBy(element.name),
      );

/** The names of its own file and of others that a piece of a file stands on. Types are none. */
export function usedBy({ file, imports, own }: Parsed, piece: ts.Node): ReadonlySet<string> {
  const used = new Set<string>();
  const visit = (node: ts.Node): void => {
    if (ts.isTypeNode(node) || ts.isInterfaceDeclaration(node)) return;
    if (ts.isPropertyAccessExpression(node)) {
      const whole = ts.isIdentifier(node.expression) && imports.get(node.expression.text);
      if (whole && whole[1] === ALL) {
        used.add(`${whole[0]}#${node.name.text}`);
        return;
      }
      visit(node.expression);
      return;
    }
    // Of what only names a part or a place, the value alone: `{ name: value }`, `({ name: local = value })`.
    if (ts.isPropertyAssignment(node) || ts.isBindingElement(node) || ts.isParameter(node)) {
      if (!ts.isPropertyAssignment(node) && !ts.isIdentifier(node.name)) visit(node.name);
      if (node.initializer) visit(node.initializer);
      return;
    }
    if (ts.isIdentifier(node)) {
      const imported = imports.get(node.text);
      if (imported) used.add(`${imported[0]}#${imported[1]}`);
      else if (own.has(node.text)) used.add(`${file}#${node.text}`);
      return;
    }
    ts.forEachChild(node, visit);
  };
  visit(piece);
  return used;
}

/** What every name at the top of some files stands on. */
export function usesOf(files: readonly Parsed[]): Uses {
  const uses = new Map<string, Set<string>>();
  for (const parsed of files)
    for (const statement of parsed.source.statements) {
      if (ts.isImportDeclaration(statement)) continue;
      const names = namesOf(statement);
      for (const name of names.length > 0 ? names : ['default', ALL]) {
        const key = `${parsed.file}#${name}`;
        const before = uses.get(key) ?? new Set();
        uses.set(key, before.union(usedBy(parsed, statement)));
      }
    }
  return uses;
}

/** All that some names stand on, themselves counted. What is imported whole is all its names. */
export function reached(uses: Uses, from: Iterable<string>): ReadonlySet<string> {
  const found = new Set<string>();
  const todo = [...from];
  for (let name = todo.pop(); name !== undefined; name = todo.pop()) {
    if (found.has(name)) continue;
    found.add(name);
    todo.push(...(uses.get(name) ?? []));
    const [file] = name.split('#');
    if (name.endsWith(`#${ALL}`))
      todo.push(...[...uses.keys()].filter((key) => key.startsWith(`${file}#`)));
  }
  return found;
}
