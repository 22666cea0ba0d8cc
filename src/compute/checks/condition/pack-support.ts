import { packSupport as rule } from '../../condition/rules/pack-support.ts';
import { findingCheck } from '../finding-check.ts';

export const packSupport = findingCheck({ code: 'condition/pack-support', rule, restsOn: 'place' });
