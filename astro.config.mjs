// For the checker and the editor only: the site is built by src/publish, with the same source folder.
import { defineConfig } from 'astro/config';

export default defineConfig({ srcDir: './src/render', publicDir: './public', outDir: './.cache/astro-check' });
