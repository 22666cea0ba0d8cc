import { mould as rule } from '../../condition/rules/mould.ts';
import { findingCheck } from '../finding-check.ts';

export const mould = findingCheck({ code: 'condition/mould', rule, restsOn: 'condition' });
