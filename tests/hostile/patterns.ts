import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';

/** A regular expression as it is written in a file of ours. */
export interface Pattern {
  readonly where: string;
  readonly literal: string;
}

const ROOT = join(import.meta.dirname, '..', '..');

/** Every literal regular expression in the program, those in the scripts of pages included. */
export function patternsInSource(): readonly Pattern[] {
  const files = globSync('src/**/*.{ts,mjs,astro}', { cwd: ROOT }).sort();
  return files.flatMap((file) => {
    const text = readFileSync(join(ROOT, file), 'utf8');
    return file.endsWith('.astro') ? inAstro(file, text) : inScript(file, text);
  });
}

function inScript(file: string, text: string): Pattern[] {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  const found: Pattern[] = [];
  const visit = (node: ts.Node) => {
    if (ts.isRegularExpressionLiteral(node)) {
      const { line } = source.getLineAndCharacterOfPosition(node.getStart());
      found.push({ where: `${file}:${line + 1}`, literal: node.text });
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

/** The part between the fences is a script; the markup below is read as TSX, which is close enough to find a pattern. */
function inAstro(file: string, text: string): Pattern[] {
  const [, front = '', markup = ''] = /^---\n([\s\S]*?)\n---\n([\s\S]*)$/.exec(text) ?? [];
  return [...inScript(file, front), ...inScript(file.replace(/astro$/, 'tsx'), `<>${markup}</>`)];
}
