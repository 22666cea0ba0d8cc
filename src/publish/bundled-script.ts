import { build } from 'esbuild';

/** A script for the browser with all that it imports, to stand inside a page. It may not hold the words by which the
 * age command finds the sealed text in that page, nor what ends a script. */
export async function bundledScript(entry: string, define: Readonly<Record<string, string>> = {}): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: [entry],
    define: { ...define },
    bundle: true,
    minify: true,
    write: false,
    format: 'iife',
    target: 'es2022',
    charset: 'ascii',
    legalComments: 'none',
    logLevel: 'error',
  });
  const [file] = outputFiles;
  if (file === undefined) throw new Error(`fault: ${entry} gave no script`);
  return file.text
    .trim()
    .replaceAll('BEGIN AGE', 'BEGIN\\x20AGE')
    .replaceAll('END AGE', 'END\\x20AGE')
    .replaceAll('</', '<\\/');
}
