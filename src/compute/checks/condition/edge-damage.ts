import { edgeDamage as rule } from '../../condition/rules/edge-damage.ts';
import { findingCheck } from '../finding-check.ts';

export const edgeDamage = findingCheck({ code: 'condition/edge-damage', rule, restsOn: 'condition' });
