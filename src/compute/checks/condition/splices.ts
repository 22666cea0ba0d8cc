import { splices as rule } from '../../condition/rules/splices.ts';
import { findingCheck } from '../finding-check.ts';

export const splices = findingCheck({ code: 'condition/splices', rule, restsOn: 'splices' });
