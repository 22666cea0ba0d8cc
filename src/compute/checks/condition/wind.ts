import { wind as rule } from '../../condition/rules/wind.ts';
import { findingCheck } from '../finding-check.ts';

export const wind = findingCheck({ code: 'condition/wind', rule, restsOn: 'condition' });
