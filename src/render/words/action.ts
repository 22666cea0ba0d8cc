import { CAUTIONS } from '#model/cautions.ts';

export interface ActionParts {
  readonly advice: string;
  /** The cautions that stand in it, each once. */
  readonly cautions: readonly string[];
}

/** What a problem asks for, and the cautions in it apart from that: they are read first, and are long. */
export function actionParts(action: string): ActionParts {
  const cautions = Object.values<string>(CAUTIONS).filter((caution) => action.includes(caution));
  const advice = cautions.reduce((rest, caution) => rest.replaceAll(caution, ''), action);
  return { advice: advice.replace(/ {2,}/g, ' ').trim(), cautions };
}
