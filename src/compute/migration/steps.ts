/** A text file of a collection; `path` is relative to it, with `/`. */
export interface EntryFile {
  readonly path: string;
  readonly text: string;
}

/** From one version of the entries' form to the next. */
export interface MigrationStep {
  readonly from: number;
  readonly to: number;
  /** One sentence for the owner: what changes, and why. */
  readonly about: string;
  /** The file's text as the next version has it; the same text where nothing changes. Asked twice it changes nothing more,
   * so that a migration that was cut off can be begun again. */
  readonly move: (file: EntryFile) => string;
}

/** Every step there has been, oldest first. None yet: the first version of the form is the only one. */
export const STEPS: readonly MigrationStep[] = [];

export interface Migrated {
  readonly steps: readonly MigrationStep[];
  readonly to: number;
  /** Files whose text changes, by path. */
  readonly changed: readonly (EntryFile & { readonly before: string })[];
}

/** A collection moved forward from one version as far as the steps lead. */
export function migrateFiles(
  files: readonly EntryFile[],
  from: number,
  steps: readonly MigrationStep[] = STEPS,
): Migrated {
  const path: MigrationStep[] = [];
  let to = from;
  for (let step = stepFrom(steps, to); step !== undefined; step = stepFrom(steps, to)) {
    path.push(step);
    to = step.to;
  }
  const changed = files.flatMap((file) => {
    const text = path.reduce((so, step) => step.move({ path: file.path, text: so }), file.text);
    return text === file.text ? [] : [{ path: file.path, text, before: file.text }];
  });
  return { steps: path, to, changed };
}

const stepFrom = (steps: readonly MigrationStep[], version: number) =>
  steps.find(({ from, to }) => from === version && to > version);
