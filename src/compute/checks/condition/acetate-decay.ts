import { acetateDecay as rule } from '../../condition/rules/acetate-decay.ts';
import { findingCheck } from '../finding-check.ts';

export const acetateDecay = findingCheck({ code: 'condition/acetate-decay', rule, restsOn: 'stock' });
